// Patches of different dyes or lots that are hardly to be told apart.
#pragma once

#include "layout/box.h"

namespace dyeleaf {

// From which difference (ΔE00) on two patches of one label are told apart without a word (common practice).
inline constexpr double least_difference = 3;

// Lets every patch carry its code that has another one nearer than that on the label, of something with another code.
// What counts is the colour as it prints.
void mark_look_alikes(FilledBox& label);

} // namespace dyeleaf
