#include "facts/yarn_count.h"

#include "base/imperial.h"

namespace dyeleaf {

namespace {

double hanks_in_a_pound(double hank_in_yards, Length in_a_pound) {
    return in_a_pound / (yard * hank_in_yards);
}

} // namespace

// Tex and its multiples: ISO 1144. The older systems by their definitions; for the hanks of the English ones ISO 2947.
YarnCounts yarn_counts(Mass mass, Length length) {
    const double tex = mass.number() / (length.in_m() / 1000);
    const Length in_a_pound = length_in(pound, mass, length);
    return {tex, 10 * tex, 9 * tex, 1000 / tex, hanks_in_a_pound(560, in_a_pound), hanks_in_a_pound(840, in_a_pound)};
}

Length length_in(Mass mass, Mass skein_mass, Length skein_length) {
    return skein_length * (mass / skein_mass);
}

} // namespace dyeleaf
