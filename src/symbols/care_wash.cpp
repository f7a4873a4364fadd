#include "symbols/care.h"
#include "symbols/care_parts.h"
#include "symbols/figures.h"

namespace dyeleaf {

namespace {

constexpr double width = 104;

// Open at the top.
Ink tub() {
    return {care_line("M 6.5 6.5 L 18 77.5 H 86 L 97.5 6.5")};
}

// From wall to wall in three waves.
Ink tub_with_water() {
    Ink ink = tub();
    ink.emplace_back(care_line("M 8.4 18 C 13.7 18 17.6 26 22.9 26 C 28.2 26 32.1 18 37.4 18 C 42.7 18 46.7 26 52 26 "
                               "C 57.3 26 61.3 18 66.6 18 C 71.9 18 75.8 26 81.1 26 C 86.4 26 90.3 18 95.6 18"));
    return ink;
}

DisplayList tub_sheet(Ink ink, int bar_count) {
    append(ink, bars(bar_count, width / 2, 68));
    return care_sheet(width, std::move(ink));
}

} // namespace

DisplayList wash(std::string_view temperature, int bar_count) {
    Ink ink = tub_with_water();
    ink.emplace_back(care_line(figures_path(temperature, at(width / 2, 51))));
    return tub_sheet(std::move(ink), bar_count);
}

// The hand reaches in from above; the water stops at the arm.
DisplayList hand_wash(int bar_count) {
    Ink ink = tub();
    ink.emplace_back(care_line("M 8.4 18 C 13.7 18 17.6 26 22.9 26 C 28.2 26 32.1 18 37.4 18 C 39 18 40.6 18.8 42 20 "
                               "M 87.6 23.4 C 90.4 20.8 92.4 18 95.6 18"));
    // Pointing down, from the pinky's side to the thumb; its lines are a little finer, for they stand close.
    const Path hand = path_of("M 10.5 -46.9 V -22 C 10.5 -17 17 -14 17 -5 V 12 C 17 17.6 8.5 17.6 8.5 12 V 0 "
                              "M 8.5 12 V 18 C 8.5 23.6 0 23.6 0 18 V 0 M 0 18 V 19 C 0 24.6 -8.5 24.6 -8.5 19 V 0 "
                              "M -8.5 15 C -8.5 20.6 -17 20.6 -17 15 V -2 L -22.4 6.4 C -25.6 11 -31.6 7 -29 2 "
                              "L -18.6 -16 C -16 -20.4 -10.5 -20 -10.5 -26 V -39.3");
    ink.emplace_back(stroked(transformed(hand, Transform::move(at(60, 47)).after(turned_about({}, 20))), units(4.2)));
    return tub_sheet(std::move(ink), bar_count);
}

DisplayList no_wash() {
    Ink ink = tub_with_water();
    append(ink, cross(width));
    return care_sheet(width, std::move(ink));
}

} // namespace dyeleaf
