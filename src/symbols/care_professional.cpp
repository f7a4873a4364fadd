#include "symbols/care_groups.h"
#include "symbols/care_ink.h"
#include "symbols/digits.h"

namespace dyeleaf::care {

namespace {

// A circle looks smaller than a square of its height; it reaches a little beyond both lines.
constexpr Length radius = (baseline - body_top) / 2 + mm(0.08);

DisplayList circle(std::string_view letter, Length width) {
    DisplayList list = blank(width);
    const Point centre{width / 2, (body_top + baseline) / 2};
    stroke(list, circle_path(centre, radius));
    if (!letter.empty()) stroke(list, lettering(letter, centre, mm(3.2)), lettering_width);
    return list;
}

DisplayList cleaning(std::string_view letter, Mildness mildness = Mildness::normal) {
    DisplayList list = circle(letter, radius * 2 + pen_width);
    bars(list, mildness);
    return list;
}

DisplayList not_allowed(std::string_view letter) {
    DisplayList list = circle(letter, cross_width);
    cross_out(list);
    return list;
}

} // namespace

std::vector<NamedDrawing> professional_symbols() {
    using enum Mildness;
    return {{"dry clean P", cleaning("P")},
            {"dry clean P gentle", cleaning("P", mild)},
            {"dry clean F", cleaning("F")},
            {"dry clean F gentle", cleaning("F", mild)},
            {"no dry clean", not_allowed("")},
            {"wet clean", cleaning("W")},
            {"wet clean gentle", cleaning("W", mild)},
            {"wet clean very gentle", cleaning("W", very_mild)},
            {"no wet clean", not_allowed("W")}};
}

} // namespace dyeleaf::care
