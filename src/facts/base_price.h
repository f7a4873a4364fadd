// What a skein of a base costs, for signs that stand for every lot of it.
#pragma once

#include "records/records.h"

#include <optional>

namespace dyeleaf {

struct PriceSpan {
    Price least, most;
    [[nodiscard]] bool is_one() const { return least.minor == most.minor; }
};

// Of its lots whose skeins are of the base's own size and have a price; nothing where there is none.
std::optional<PriceSpan> prices_on(const Records& records, const Base& base);

} // namespace dyeleaf
