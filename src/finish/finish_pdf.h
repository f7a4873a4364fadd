// Adds to a PDF what the drawing library cannot, with qpdf.
#pragma once

#include "base/geometry.h"
#include "display/tag.h"

#include <string>
#include <vector>

namespace dyeleaf {

struct PdfPage {
    Rect trim;         // from the page's top left corner: one label, or the whole sheet
    Length bleed;      // beyond the trim
    std::string label; // what viewers call the page: "3", "3 back"
    std::string entry; // in the outline; empty: none
    TaggedPage tagged; // as the painter returned it
};

struct PdfDetails {
    std::string title;
    std::string author;   // the studio
    std::string language; // BCP 47: "en"
    std::vector<PdfPage> pages{};
};

// The same pages with all of `details`, an sRGB output intent, and an id made from the contents alone: same input, same
// bytes. Requires: one `details.pages` a page; none leaves the pages as they are.
std::string finish_pdf(const std::string& pdf, const PdfDetails& details);

} // namespace dyeleaf
