#include "symbols/care.h"
#include "symbols/care_parts.h"
#include "symbols/figures.h"

namespace dyeleaf::drawing {

namespace {

constexpr double tub_width = 104;

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
    append(ink, bars(bar_count, tub_width / 2, 68));
    return care_sheet(tub_width, std::move(ink));
}

} // namespace

DisplayList wash(std::string_view temperature, int bar_count) {
    Ink ink = tub_with_water();
    ink.emplace_back(care_line(figures_path(temperature, at(tub_width / 2, 51))));
    return tub_sheet(std::move(ink), bar_count);
}

// The hand reaches in from above; the water stops at the arm.
DisplayList hand_wash(int bar_count) {
    Ink ink = tub();
    ink.emplace_back(care_line("M 8.4 18 C 13.7 18 17.6 26 22.9 26 C 28.2 26 32.1 18 37.4 18 C 39 18 40.6 18.8 42 20 "
                               "M 87.6 23.4 C 90.4 20.8 92.4 18 95.6 18"));
    // Pointing down, from the pinky's side to the thumb; its lines are a little finer, for they stand close.
    const Path hand = outline("M 60.5 3.1 V 28 C 60.5 33 67 36 67 45 V 62 C 67 67.6 58.5 67.6 58.5 62 "
                              "V 50 M 58.5 62 V 68 C 58.5 73.6 50 73.6 50 68 V 50 M 50 68 V 69 C 50 "
                              "74.6 41.5 74.6 41.5 69 V 50 M 41.5 65 C 41.5 70.6 33 70.6 33 65 V 48 L "
                              "27.6 56.4 C 24.4 61 18.4 57 21 52 L 31.4 34 C 34 29.6 39.5 30 39.5 24 V "
                              "10.7");
    ink.emplace_back(stroked(transformed(hand, turned_by(20, at(10, -3))), units(4.2)));
    return tub_sheet(std::move(ink), bar_count);
}

DisplayList no_wash() {
    Ink ink = tub_with_water();
    append(ink, cross(tub_width));
    return care_sheet(tub_width, std::move(ink));
}

} // namespace dyeleaf::drawing
