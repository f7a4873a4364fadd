// What is decided before the first label is laid out: which labels, how many of each, where on which sheets.
#pragma once

#include "base/date.h"
#include "base/diagnostic.h"
#include "calibration/misprint.h"
#include "cli/choose_printer.h"
#include "cli/library.h"
#include "cli/options.h"
#include "cli/studio.h"
#include "design/design.h"
#include "facts/items.h"
#include "profiles/printer_colours.h"
#include "records/records.h"
#include "sheets/impose.h"
#include "text/typesetter.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

// The items point into the rest, so a job stays where it was made.
struct Job {
    Records records;
    Typesetter typesetter;
    Design design;
    Stock stock;
    Languages languages;
    std::optional<Backs> backs = {}; // none: like a page
    Items items = {};
    Trims trims = {};             // of each item's label
    std::vector<int> copies = {}; // of each
    int unchanged = 0;            // labels left out by --changed
    std::string note = {};        // the new text of the note of what was printed; empty: none is to be kept
    std::vector<SheetPlan> plans = {};
    ChosenPrinter chosen = {};
    Measured measured = {};                        // of the chosen printer
    std::optional<PrinterColours> printed_by = {}; // whose colours are shown; none: as recorded
};

// Nothing where the diagnostics have errors. Without items where all that was asked for is unchanged.
std::unique_ptr<const Job> prepare(const Render& request, const Library& library, const Date& today,
                                   Diagnostics& diagnostics);

// Of the sheets whose cards share a pouch, one for every way in which they lie in it.
std::vector<std::size_t> laying_sheets(const Job& job);

// "12 tags".
std::string count_labels(const Job& job);
std::string count_labels(const Job& job, int labels);
// "12 tags on 2 sheets, front and back, flip on the long edge (a4-3x3-54x86)".
std::string summary(const Job& job);
// What to say below that: how to turn the pile by hand, how to laminate the cards, what is left of the last sheet and
// how to use it, how many labels are unchanged.
std::vector<std::string> remarks(const Job& job, const Render& request);

} // namespace dyeleaf
