#include "facts/unit_price.h"

#include "facts/rounding.h"

#include <cmath>

namespace dyeleaf {

Price price_of_hundred_grams(const Price& price, Mass mass) {
    constexpr std::int64_t hundred_grams = 100'000; // in milligrams: no price hangs on less
    return {rounded_half_up(price.minor * hundred_grams, std::llround(mass.number() * 1000))};
}

} // namespace dyeleaf
