// The sheet from which a dyer reads how her printer misprints. Both sides are drawn from her side: she folds it edge on
// edge, and where the crease cuts a scale is where the middle of the paper lies on the page. No edge need be printed
// on, and no sign can be mistaken. Two long lines are for the ruler; F and B, rings and crosses show how fronts and
// backs meet.
#pragma once

#include "calibration/misprint.h"
#include "display/display_list.h"
#include "language/language.h"
#include "text/typesetter.h"

#include <string>

namespace dyeleaf {

struct MeasuringSheet {
    std::string paper;                    // "A4"
    Size size;                            // standing; at least `least_measuring_paper`
    Passage passage = Passage::long_edge; // how its back is printed
    std::string backs = {};               // the same as it is recorded: "long edge"
    std::string printer = {}, tray = {};  // empty: to be written in
    bool proof = false;                   // it will be corrected: every reading should come out right
};

constexpr Size least_measuring_paper = {mm(139), mm(200)};

// Where the scales of either side lie, on the page that is seen when the sheet is turned like a page.
struct ScalePlaces {
    Point across, down; // their middles
};
ScalePlaces scale_places(Size paper);
// Middles of the two rings on the front; the crosses lie behind them.
struct RingPlaces {
    Point first, second;
};
RingPlaces ring_places(Size paper);
constexpr Length ring_radius = mm(2); // as far as a back may land from its front

DisplayList draw_measuring_front(const MeasuringSheet& sheet, const Language& language, const Typesetter& typesetter);
// As the printer wants it: upside down for the short edge, so that it is upright for whoever turns it like a page.
DisplayList draw_measuring_back(const MeasuringSheet& sheet, const Language& language, const Typesetter& typesetter);

} // namespace dyeleaf
