#include "facts/lot_groups.h"

#include "facts/lot_code.h"

#include <algorithm>
#include <tuple>

namespace dyeleaf {

LotGroups::LotGroups(const Records& records, Before before) : before_(before) {
    lots_.reserve(records.lots.size());
    for (const Lot& lot : records.lots)
        lots_.push_back(&lot);
    std::ranges::stable_sort(lots_, [&](const Lot* one, const Lot* other) { return before_(*one, *other); });
}

std::span<const Lot* const> LotGroups::of(const Lot& lot) const {
    const auto [first, last] = std::equal_range(
        lots_.begin(), lots_.end(), &lot, [&](const Lot* one, const Lot* other) { return before_(*one, *other); });
    return {first, last};
}

LotGroups lots_by_yarn(const Records& records) {
    return {records, [](const Lot& one, const Lot& other) {
                return std::tie(one.colourway, one.base.value) < std::tie(other.colourway, other.base.value);
            }};
}

LotGroups lots_by_reading(const Records& records) {
    return {records, [](const Lot& one, const Lot& other) { return reads_before(one.id.value, other.id.value); }};
}

} // namespace dyeleaf
