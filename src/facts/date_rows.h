// A date's other forms, for layouts to choose from.
#pragma once

#include "facts/rows.h"
#include "facts/wording.h"

#include <optional>
#include <string>
#include <utility>

namespace dyeleaf {

enum class DateForm { brief, full, month, iso };

std::string date_words(const Language& language, const Date& date, DateForm form);

// "short: 2 Nov 2026".
std::string meaning_of(DateForm form);

// `find` takes the view and gives the date, or nothing where none is known; `how` it comes by it.
template <class View, class Find>
FactRow date_row(std::string name, DateForm form, Find find, std::string how = "as recorded") {
    return Rows<View>::text(std::move(name), "the same, " + meaning_of(form),
                            [find, form](const View& view, const Manner& manner) -> std::optional<std::string> {
                                const std::optional<Date> date = find(view);
                                if (!date) return std::nullopt;
                                return date_words(manner.language, *date, form);
                            },
                            {"", std::move(how), form == DateForm::iso ? "ISO 8601, calendar dates" : ""});
}

} // namespace dyeleaf
