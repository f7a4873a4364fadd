#include "symbols/care_groups.h"
#include "symbols/care_ink.h"
#include "symbols/digits.h"

namespace dyeleaf::care {

namespace {

// A circle looks smaller than a square of its height; it reaches a little beyond both lines.
constexpr Length radius = (baseline - body_top) / 2 + mm(0.08);
constexpr Length width = radius * 2 + pen_width;
constexpr Point centre{width / 2, (body_top + baseline) / 2};

DisplayList circle(std::string_view letter, Mildness mildness = Mildness::normal) {
    DisplayList list = blank(width);
    stroke(list, circle_path(centre, radius));
    stroke(list, lettering(letter, centre, mm(3.2)));
    bars(list, mildness);
    return list;
}

DisplayList not_allowed(std::string_view letter) {
    DisplayList list = circle(letter);
    cross_out(list);
    return list;
}

} // namespace

std::vector<NamedDrawing> professional_symbols() {
    using enum Mildness;
    return {{"dry clean P", circle("P")},
            {"dry clean P gentle", circle("P", mild)},
            {"dry clean F", circle("F")},
            {"dry clean F gentle", circle("F", mild)},
            {"no dry clean", not_allowed("")},
            {"wet clean", circle("W")},
            {"wet clean gentle", circle("W", mild)},
            {"wet clean very gentle", circle("W", very_mild)},
            {"no wet clean", not_allowed("W")}};
}

} // namespace dyeleaf::care
