#include "symbols/care_groups.h"
#include "symbols/care_ink.h"
#include "symbols/digits.h"

namespace dyeleaf::care {

namespace {

constexpr Length width = mm(11.4);
constexpr Length middle = width / 2;
constexpr Length rim = pen_width / 2;        // the left rim's middle
constexpr Length foot = rim + mm(1.5);       // the left foot's
constexpr Length water = body_top + mm(1.1); // the water line, about which the waves swing

// `swings` half waves, the first one up.
Path waves(Length from, Length to, int swings, bool up = true) {
    const Length length = (to - from) / swings;
    const Length height = mm(0.55);
    Path path = {MoveTo{{from, water}}};
    for (int i = 0; i < swings; ++i, up = !up) {
        const Length start = from + length * i;
        const Length y = up ? water - height : water + height;
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
    stroke(list, waves(side_at_water, width - side_at_water, 6));
    return list;
}

DisplayList machine(std::string_view degrees, Mildness mildness = Mildness::normal) {
    DisplayList list = full_tub();
    stroke(list, lettering(degrees, {middle, mm(4.75)}, mm(3.2)));
    bars(list, mildness);
    return list;
}

DisplayList hand(Mildness mildness) {
    DisplayList list = full_tub();
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
