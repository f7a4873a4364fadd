#include "calibration/misprint.h"

namespace dyeleaf {

Misprint misprint_of_readings(Length across, Length down) {
    constexpr Length middle = mm(10);
    return {{across - middle, down - middle}};
}

Size line_lengths(Size paper) {
    // As long as a common ruler measures at once, and the paper takes.
    return fits(mm(190), paper.width) ? Size{mm(150), mm(200)} : Size{mm(100), mm(150)};
}

// With c the middle, m `middle` and s the scale, a page's point p falls on c + s (p - c - m).
Transform as_printed(const Misprint& misprint, Size paper) {
    const Point c = Rect{{}, paper}.centre();
    const auto& [m, across, down] = misprint;
    return {across, 0, 0, down, c.x - (c.x + m.x) * across, c.y - (c.y + m.y) * down};
}

Transform correction(const Misprint& misprint, Size paper) {
    const Point c = Rect{{}, paper}.centre();
    const auto& [m, across, down] = misprint;
    return {1 / across, 0, 0, 1 / down, c.x + m.x - c.x / across, c.y + m.y - c.y / down};
}

std::optional<Misprint> misprint(const Measured& measured, Passage passage) {
    const auto& back = measured.back;
    switch (passage) {
    case Passage::front: return measured.front;
    case Passage::by_hand: return back && measured.back_by_hand ? *back : measured.front;
    case Passage::long_edge:
    case Passage::short_edge: break;
    }
    if (!back || measured.back_by_hand) return std::nullopt;
    if (passage == Passage::long_edge) return back;
    // The same place on the paper, seen from the page that is upside down on it.
    return Misprint{Point{} - back->middle, back->across, back->down};
}

} // namespace dyeleaf
