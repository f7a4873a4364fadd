// How figures that are worked out are rounded, each rule once with its ground. What the dyer recorded is stated as she
// wrote it, and a rounded figure is never worked with again.
#pragma once

#include "base/length.h"
#include "base/quantity.h"

#include <cstdint>

namespace dyeleaf {

// Down to a multiple of `step`. Undoes the binary error of figures such as 455 yd, which must not fall to the step
// below.
double rounded_down(double value, double step);

// Metres or yards of a skein: down, so that no skein is shorter than its tag; to 5, below 50 to 1 (common practice).
int rounded_length(double units);

// What a scale with steps of `step` can show: the nearest, and at least one step, since none would be no dye at all;
// the mass itself where the step is not positive.
Mass rounded_to(Mass mass, Mass step);

// What a syringe or a measuring cylinder can show: the nearest millilitre, below 10 mL the nearest tenth, and at least
// that (common practice).
Volume measurable(Volume volume);

// Of a label that is cut: the nearest tenth of a millimetre, the finest that a guillotine holds (common practice).
Length cuttable(Length length);

// The quotient, half up, as shops round money. Requires: `dividend` not negative, `divisor` positive, and twice their
// sum within the type.
std::int64_t rounded_half_up(std::int64_t dividend, std::int64_t divisor);

// Nominal weights added up are stated no finer (common practice): four ounces are 113.4 g.
inline constexpr Mass nominal_step = grams(0.1);

// Significant figures of what is worked out: of strengths, which no kitchen scale makes truer than that, and of yarn
// counts, which spinners state no finer (both common practice).
inline constexpr int strength_figures = 2;
// Where two would make a whole of what is none: 99.6 %.
inline constexpr int most_strength_figures = 5;
inline constexpr int count_figures = 3;

} // namespace dyeleaf
