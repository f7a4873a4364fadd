// Dates and periods, and the words for them.
#include "english.h"
#include "facts/wording.h"
#include "input.h"
#include "records/read_values.h"

using namespace dyeleaf;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    return read_as_value(data, size, [](const Node& node, Diagnostics& diagnostics) {
        const Date day{2026, 11, 9};
        if (const auto period = read_period(node, "keeps", diagnostics)) (void)add_months(day, period->count);
        const auto date = known_date(read_date(node, "dyed", diagnostics));
        if (!date) return;
        (void)short_date(english(), *date);
        (void)long_date(english(), *date);
        (void)month_date(english(), *date);
        (void)is_over(*date, day);
        for (const int months : {-240, -1, 13, 240})
            (void)to_iso(add_months(*date, months));
    });
}
