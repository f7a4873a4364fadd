// What is wrong with a placed label, said about the record and the box: what did not fit, what lies where it must not.
#pragma once

#include "base/diagnostic.h"
#include "design/design.h"
#include "facts/items.h"
#include "layout/place.h"

#include <string>
#include <vector>

namespace dyeleaf {

// A part of the label that must stay free of text.
struct Forbidden {
    Rect rect;
    std::string what; // "a fold"
};

// Whether a text keeps its distance from the trim.
bool keeps_inside(const Zone& zone, Size size, const Shape& shape);

bool is_text(const Zone& zone);

// Errors for cautions: one where the label is too small for them, else one for each that is covered or lies on a hole,
// a fold, an overlap, a colour, a picture or another text. Warnings for everything else.
void check_label(const Design& design, const Item& item, Size size, const Placement& placement,
                 const std::vector<Forbidden>& forbidden, Diagnostics& diagnostics);

} // namespace dyeleaf
