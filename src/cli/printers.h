// Which of the recorded printers prints, what that changes, and what the dyer is told of it.
#pragma once

#include "base/diagnostic.h"
#include "base/geometry.h"
#include "calibration/misprint.h"
#include "cli/options.h"
#include "records/records.h"
#include "sheets/impose.h"

#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

// Complains of papers that are none, of lines that no printer draws so long, and of a tray that is recorded twice.
void check_printers(const std::vector<Printer>& printers, Diagnostics& diagnostics);

// Whether no correction is wanted: --printer none.
bool is_none(const WantedPrinter& wanted);

// Of those that were measured on this paper, the one that is wanted, or the only one. Nothing, with a remark, where
// several would do, or where only others were measured. A name that is none is an error.
struct ChosenPrinter {
    const Printer* printer = nullptr;
    std::string remark;
};
ChosenPrinter choose_printer(const std::vector<Printer>& printers, const WantedPrinter& wanted, Size paper,
                             Diagnostics& diagnostics);

// `backs` is how the printer turns paper, unless its own record says so.
Measured measured_by(const Printer& printer, std::optional<Backs> backs);

// Of a sheet that lies like this before the reader.
Passage passage(Side side, std::optional<Backs> backs, Size paper);

// What to correct; a back that was not measured keeps its place and gets the front's scale.
Misprint misprint_of(const Measured& measured, Passage passage);

// "corrected for workroom, rear: fronts moved 0.5 mm right, backs 0.2 mm up; 0.3 % wider"; without a back, no `back`.
std::string correction_words(const Printer& printer, const Measured& measured, std::optional<Passage> back);

// Where correcting moves labels to an edge that many printers leave white. `labels` lie on pages that stand.
void check_reach(const Printer& printer, const Misprint& misprint, Rect labels, Size paper, Diagnostics& diagnostics);

} // namespace dyeleaf
