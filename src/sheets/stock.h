// Paper and card by their geometry, read from a short YAML file.
#pragma once

#include "base/diagnostic.h"
#include "base/geometry.h"
#include "source/document.h"

#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

// Ready-cut cells in a regular grid.
struct CellGrid {
    int columns = 1, rows = 1;
    Size cell;
    bool round = false;  // the cell is the ellipse inside its rectangle
    Point first;         // top left corner of the first cell
    Length across, down; // pitch: from one cell's left edge to the next one's, and top to top
    Length corner = {};  // radius
};

// How labels are cut from plain card: along marks at their corners; along grey lines across the sheet; or with one cut
// between neighbours that touch, along marks at the sheet's edges.
enum class Cut { corner_marks, full_lines, single_cuts };

// One label a page, every page as wide as the roll.
struct Roll {
    Length width;
    std::optional<Length> length; // of labels that come ready cut; none: a page is as long as its label and the gap
};

// A pouch into which cards are laid once they are cut out, and the film that is left round each when it is trimmed.
struct Laminate {
    Size pouch;
    Length film;
    bool one_each = false; // a card a pouch; else the cards of one sheet lie in it as they were printed
};

struct Stock {
    std::string name;  // "a4-card"
    std::string about; // one line for people
    Size paper;
    Length margin;                 // that the printer cannot reach, all round
    Length gap;                    // between labels cut from plain card, or along a roll
    bool may_turn = true;          // plain card: the sheet may lie on its side when more labels fit; a label on a roll
    std::optional<CellGrid> cells; // none: plain card, cut along marks
    bool page_per_label = false;   // the page is the label with its bleed: `paper` is not used
    bool page_marks = false;       // then: room around it with cut marks
    Cut cut = Cut::corner_marks;   // of plain card
    std::optional<Roll> roll;      // then `page_per_label` as well
    std::optional<Laminate> laminate; // plain card
    bool in_inches = false;           // a length of it was written so: its measures are shown so
    Spot spot;
};

// Named sizes, upright: ISO 216 A3 to A8, SRA4 and SRA3 (ISO 217), US Letter, half-letter and Legal (ANSI); and ID-1
// (ISO/IEC 7810), which lies on its side. In any case of letters; nothing for other names.
std::optional<Size> find_paper(std::string_view name);
std::vector<std::string> paper_names();
// Laminating pouches by the paper that they are made for.
std::optional<Size> find_pouch(std::string_view name);
std::vector<std::string> pouch_names();

// "40 × 60 mm".
std::string measures(Size size);

// A stock file, or nothing and errors: unknown keys, sizes without units, cells that overlap, lie off the sheet or do
// not add up with its margins and gutters, a pouch too small for its sheet: each with its arithmetic.
std::optional<Stock> read_stock(const Node& node, Diagnostics& diagnostics);

} // namespace dyeleaf
