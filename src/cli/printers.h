// What the record of a printer changes on the sheets that it prints, and what the dyer is told of it.
#pragma once

#include "base/diagnostic.h"
#include "base/geometry.h"
#include "calibration/misprint.h"
#include "records/records.h"
#include "sheets/impose.h"

#include <optional>
#include <string>

namespace dyeleaf {

// "workroom, rear".
std::string name_of(const Printer& printer);

// `backs` is how the printer turns paper, unless its own record says so.
Measured measured_by(const Printer& printer, std::optional<Backs> backs);

// Of a sheet that lies like this before the reader.
Passage passage(Side side, std::optional<Backs> backs, Size paper);

// What to correct; a back that was not measured keeps its place and gets the front's scale.
Misprint misprint_of(const Measured& measured, Passage passage);

// "corrected for workroom, rear: fronts 0.5 mm right, backs 0.2 mm up, 0.3 % wider"; without a back, no `back`.
std::string correction_words(const Printer& printer, const Measured& measured, std::optional<Passage> back);

// Where correcting moves labels to an edge that many printers leave white. `labels` lie on pages that stand.
void check_reach(const Printer& printer, const Misprint& misprint, Rect labels, Size paper, Diagnostics& diagnostics);

} // namespace dyeleaf
