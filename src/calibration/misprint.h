// Where a printer lays a page on its paper, and what to send it so that all comes out in its place.
#pragma once

#include "base/geometry.h"

#include <optional>

namespace dyeleaf {

// Read off a measuring sheet. Pages stand, since what a printer does to paper that lies is the driver's secret.
struct Misprint {
    Point middle; // the point of the page that falls on the middle of the paper, from the page's own middle
    double across = 1, down = 1; // length on paper for length on the page
    friend bool operator==(const Misprint&, const Misprint&) = default;
};

// Of one side, from what the measuring sheet's creases cut its scales at: those run from 0 to 20 mm, and 10 mm is the
// page's middle.
Misprint misprint_of_readings(Length across, Length down);
// How long the sheet's two lines are on the page; both lie about its middle.
Size line_lengths(Size paper);

// Where a point of the page falls on paper of this size, and the other way round: what is drawn there falls on the
// point.
Transform as_printed(const Misprint& misprint, Size paper);
Transform correction(const Misprint& misprint, Size paper);

// How a page comes onto its side of the paper.
enum class Passage {
    front,
    by_hand,    // the paper goes through a second time: the printer does what it did to the front
    long_edge,  // the printer turns the paper itself
    short_edge, // so too; it then prints the page upside down, for paper that is turned like the sheet of a pad
};

// What is known of one tray. The readings of a back that the printer turned itself are those of somebody who turns the
// sheet like a page.
struct Measured {
    Misprint front;
    std::optional<Misprint> back;
    bool back_by_hand = false;
};

// Nothing for a back that was not measured, or in another way than it is now turned.
std::optional<Misprint> misprint(const Measured& measured, Passage passage);

} // namespace dyeleaf
