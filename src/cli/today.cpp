#include "cli/today.h"

#include "base/words.h"

#include <charconv>
#include <chrono>
#include <ctime>

namespace dyeleaf {

namespace {

std::optional<Date> date_of_epoch(const std::string& text) {
    constexpr long long year_ten_thousand = 253402300800; // where four figures end
    long long seconds = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), seconds);
    if (error != std::errc{} || end != text.data() + text.size() || seconds < 0 || seconds >= year_ten_thousand) {
        return std::nullopt;
    }
    const std::chrono::sys_seconds moment{std::chrono::seconds{seconds}};
    const std::chrono::year_month_day day{std::chrono::floor<std::chrono::days>(moment)};
    return Date{static_cast<int>(day.year()), static_cast<int>(static_cast<unsigned>(day.month())),
                static_cast<int>(static_cast<unsigned>(day.day()))};
}

Date local_date() {
    const std::time_t now = std::time(nullptr);
    std::tm local{};
    localtime_r(&now, &local);
    return {local.tm_year + 1900, local.tm_mon + 1, local.tm_mday};
}

} // namespace

std::optional<Date> today(const std::optional<Date>& asked_for, const std::optional<std::string>& source_date_epoch,
                          Diagnostics& diagnostics) {
    if (asked_for) return asked_for;
    if (!source_date_epoch) return local_date();
    const auto date = date_of_epoch(*source_date_epoch);
    if (!date) {
        diagnostics.error({},
                          "SOURCE_DATE_EPOCH is " + in_quotes(*source_date_epoch) + ", which is no count of seconds",
                          "unset it, or give the day with --date");
    }
    return date;
}

} // namespace dyeleaf
