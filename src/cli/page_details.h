// What a PDF says of each of its pages: where to cut, what to call it, which entry in the outline leads there.
#pragma once

#include "facts/items.h"
#include "language/language.h"
#include "pdf/pdf_details.h"
#include "sheets/impose.h"

#include <vector>

namespace dyeleaf {

// All that prints: `trims[i]` belongs to `items[i]`.
struct PrintRun {
    const std::vector<SheetPlan>& plans;
    const Items& items;
    const Trims& trims;
    const Stock& stock;
    const Language& language;
    bool two_sided = false;
};

// One side of `run.plans[sheet]`, on a page of size `page`. An entry for each sheet or, with a page a label, for each
// label's first page.
PdfPage page_details(const PrintRun& run, std::size_t sheet, Side side, Size page, TaggedPage tagged);

} // namespace dyeleaf
