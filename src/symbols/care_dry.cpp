#include "symbols/care.h"
#include "symbols/care_parts.h"

namespace dyeleaf::drawing {

namespace {

constexpr double dry_width = 84;

Ink square() {
    return {care_line("M 6.5 6.5 H 77.5 V 77.5 H 6.5 Z")};
}

std::string_view lines_of(Drying drying) {
    switch (drying) {
    case Drying::line: return "M 42 19 V 65";
    case Drying::drip_line: return "M 33 19 V 65 M 51 19 V 65";
    case Drying::flat: return "M 19 42 H 65";
    case Drying::drip_flat: return "M 19 33 H 65 M 19 51 H 65";
    }
    return {};
}

} // namespace

DisplayList tumble(int dot_count) {
    Ink ink = square();
    ink.emplace_back(care_line(circle_path(at(42, 42), units(28))));
    append(ink, dots(dot_count, at(42, 42)));
    if (dot_count == 0) append(ink, cross(dry_width));
    return care_sheet(dry_width, std::move(ink));
}

DisplayList natural_drying(Drying drying, bool shade) {
    Ink ink = square();
    ink.emplace_back(care_line(lines_of(drying)));
    if (shade) ink.emplace_back(care_line("M 6.5 27 L 27 6.5"));
    return care_sheet(dry_width, std::move(ink));
}

} // namespace dyeleaf::drawing
