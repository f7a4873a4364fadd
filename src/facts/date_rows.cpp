#include "facts/date_rows.h"

namespace dyeleaf {

std::string date_words(const Language& language, const Date& date, DateForm form) {
    switch (form) {
    case DateForm::brief: return short_date(language, date);
    case DateForm::full: return long_date(language, date);
    case DateForm::month: return month_date(language, date);
    case DateForm::iso: break;
    }
    return to_iso(date);
}

std::string meaning_of(DateForm form) {
    switch (form) {
    case DateForm::brief: return "short: 2 Nov 2026";
    case DateForm::full: return "in full: 2 November 2026";
    case DateForm::month: return "its month: Nov 2026";
    case DateForm::iso: break;
    }
    return "in figures: 2026-11-02";
}

} // namespace dyeleaf
