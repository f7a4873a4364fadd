// A date's other forms, for layouts to choose from.
#pragma once

#include "facts/rows.h"
#include "facts/wording.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace dyeleaf {

enum class DateForm { brief, full, month, iso };

std::string date_words(const Language& language, const Date& date, DateForm form);

// "short: 2 Nov 2026".
std::string meaning_of(DateForm form);

// The four forms of one date. `find` takes the view and gives the date, or nothing where none is known; `how` it comes
// by it.
template <class View, class Find>
std::vector<FactRow> date_rows(const std::string& name, Find find, const std::string& how = "as recorded") {
    const auto row = [&](std::string_view ending, DateForm form) {
        return Rows<View>::text(name + std::string{ending}, "the same, " + meaning_of(form),
                                [find, form](const View& view, const Manner& manner) -> std::optional<std::string> {
                                    const std::optional<Date> date = find(view);
                                    if (!date) return std::nullopt;
                                    return date_words(manner.language, *date, form);
                                },
                                {"", how, form == DateForm::iso ? "ISO 8601, calendar dates" : ""});
    };
    return {row(".short", DateForm::brief), row(".long", DateForm::full), row(".month", DateForm::month),
            row(".iso", DateForm::iso)};
}

} // namespace dyeleaf
