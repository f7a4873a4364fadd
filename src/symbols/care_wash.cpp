#include "symbols/care_groups.h"
#include "symbols/care_ink.h"
#include "symbols/digits.h"

namespace dyeleaf::care {

namespace {

constexpr Length width = mm(11.4);
constexpr Length middle = width / 2;
constexpr Length rim = pen_width / 2;        // the left rim's middle
constexpr Length foot = rim + mm(1.2);       // the left foot's
constexpr Length water = body_top + mm(1.1); // the water line, about which the waves swing

// `swings` half waves, up and down by turns.
Path waves(Length from, Length to, int swings) {
    const Length length = (to - from) / swings;
    const Length height = mm(0.5);
    Path path = {MoveTo{{from, water}}};
    for (int i = 0; i < swings; ++i) {
        const Length start = from + length * i;
        const Length y = i % 2 == 0 ? water - height : water + height;
        path.push_back(CurveTo{{start + length * 0.3642, y}, {start + length * 0.6358, y}, {start + length, water}});
    }
    return path;
}

// How far the left side is from the edge at the water line.
constexpr Length side_at_water = rim + (foot - rim) * ((water - body_top) / (baseline - body_top));

DisplayList tub() {
    DisplayList list = blank(width);
    stroke(list, {MoveTo{{rim, body_top}}, LineTo{{foot, baseline}}, LineTo{{width - foot, baseline}},
                  LineTo{{width - rim, body_top}}});
    return list;
}

DisplayList full_tub() {
    DisplayList list = tub();
    stroke(list, waves(side_at_water, width - side_at_water, 5));
    return list;
}

DisplayList machine(std::string_view degrees, Mildness mildness = Mildness::normal) {
    DisplayList list = full_tub();
    stroke(list, lettering(degrees, {middle, mm(4.95)}, mm(3.2)), lettering_width);
    bars(list, mildness);
    return list;
}

// A hand that reaches in from the upper right, fingers down and the thumb on the left. Drawn upright, across and along
// the arm, then turned.
Path hand_path() {
    const auto on = [](double across, double along) {
        constexpr double sine = 0.41;
        constexpr double cosine = 0.912;
        return at(7.75 + cosine * across - sine * along, 1 + sine * across + cosine * along);
    };
    return {MoveTo{on(1.2, -1.25)},
            LineTo{on(1.2, 1)},
            CurveTo{on(1.2, 2), on(1.72, 2.2), on(1.72, 3.1)},
            LineTo{on(1.72, 4.9)}, // the little finger, and on to the first
            CurveTo{on(1.72, 5.5), on(0.86, 5.5), on(0.86, 4.9)},
            LineTo{on(0.86, 5.6)},
            CurveTo{on(0.86, 6.2), on(0, 6.2), on(0, 5.6)},
            LineTo{on(0, 5.9)},
            CurveTo{on(0, 6.5), on(-0.86, 6.5), on(-0.86, 5.9)},
            LineTo{on(-0.86, 5.7)},
            CurveTo{on(-0.86, 6.3), on(-1.72, 6.3), on(-1.72, 5.7)},
            LineTo{on(-1.72, 3.6)}, // the thumb
            CurveTo{on(-1.9, 4.4), on(-2.2, 5), on(-2.62, 4.95)},
            CurveTo{on(-3.05, 4.9), on(-3, 4.4), on(-2.85, 3.9)},
            CurveTo{on(-2.4, 2.5), on(-1.2, 2.9), on(-1.2, 1.5)},
            LineTo{on(-1.2, -0.15)},
            MoveTo{on(0.86, 4.9)}, // between the fingers
            LineTo{on(0.86, 3.4)},
            MoveTo{on(0, 5.6)},
            LineTo{on(0, 3.3)},
            MoveTo{on(-0.86, 5.7)},
            LineTo{on(-0.86, 3.4)}};
}

DisplayList hand(Mildness mildness) {
    DisplayList list = tub();
    stroke(list, waves(side_at_water, mm(5.92), 3));
    stroke(list, waves(mm(8.67), width - side_at_water, 1));
    stroke(list, hand_path(), mm(0.45));
    bars(list, mildness);
    return list;
}

DisplayList no_wash() {
    DisplayList list = full_tub();
    cross_out(list);
    return list;
}

} // namespace

std::vector<NamedDrawing> wash_symbols() {
    using enum Mildness;
    return {{"wash 95", machine("95")},
            {"wash 70", machine("70")},
            {"wash 60", machine("60")},
            {"wash 60 gentle", machine("60", mild)},
            {"wash 50", machine("50")},
            {"wash 50 gentle", machine("50", mild)},
            {"wash 40", machine("40")},
            {"wash 40 gentle", machine("40", mild)},
            {"wash 40 very gentle", machine("40", very_mild)},
            {"wash 30", machine("30")},
            {"wash 30 gentle", machine("30", mild)},
            {"wash 30 very gentle", machine("30", very_mild)},
            {"hand wash", hand(normal)},
            {"hand wash ambient", hand(mild)},
            {"no wash", no_wash()}};
}

} // namespace dyeleaf::care
