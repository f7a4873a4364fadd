// Where a print shop's machines find the trim and the bleed of each page.
#pragma once

#include "base/geometry.h"
#include "finish/qpdf_objects.h"

namespace dyeleaf {

// A rectangle on a page, from its top left corner, as PDF counts it: in points from the lower left corner of the page's
// media box, and never outside that (ISO 32000-1, 14.11.2).
PdfObject on_pdf_page(PdfObject page, Rect rect);

// Sets the page's TrimBox to `trim` and its BleedBox to `bleed` beyond it.
void set_page_boxes(PdfObject page, Rect trim, Length bleed);

} // namespace dyeleaf
