#include "facts/skein_size.h"

#include "facts/yarn_count.h"

#include <algorithm>

namespace dyeleaf {

namespace {

const OddSkein* odd_skein(const Lot& lot, int number) {
    const auto odd = std::ranges::find(lot.odd_skeins, number, &OddSkein::number);
    return odd == lot.odd_skeins.end() ? nullptr : &*odd;
}

} // namespace

SkeinSize skein_of(const SkeinSize& yarn, const SkeinFigure<Mass>& mass) {
    if (mass.value == yarn.mass.value || yarn.mass.value <= Mass{}) return {mass, yarn.length};
    return {mass, {length_in(mass.value, yarn.mass.value, yarn.length.value), {}, {}}};
}

SkeinSize skein_size(const Base& base, const Lot& lot) {
    return lot.skein_mass ? skein_of(base.skein, *lot.skein_mass) : base.skein;
}

SkeinSize skein_size(const Base& base, const Lot& lot, int number) {
    const OddSkein* odd = odd_skein(lot, number);
    return odd == nullptr ? skein_size(base, lot) : skein_of(base.skein, odd->mass);
}

std::optional<Price> skein_price(const Lot& lot, int number) {
    const OddSkein* odd = odd_skein(lot, number);
    return odd == nullptr ? lot.price : odd->price;
}

} // namespace dyeleaf
