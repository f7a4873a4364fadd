// How a reader finds her way: page labels, and an outline with an entry for each label or sheet.
#pragma once

#include "finish/finish_pdf.h"
#include "finish/qpdf_objects.h"

#include <vector>

namespace dyeleaf {

// `pages[i]` tells of `objects[i]`.
void add_page_labels(PdfObject catalog, const std::vector<PdfPage>& pages);
void add_outline(QPDF& document, const std::vector<PdfPage>& pages, const std::vector<PdfObject>& objects);

} // namespace dyeleaf
