// What a PDF says of itself and of its pages besides their ink.
#pragma once

#include "base/geometry.h"
#include "display/tag.h"

#include <string>

namespace dyeleaf {

struct PdfPage {
    Rect trim;         // from the page's top left corner: one label, or the whole sheet
    Length bleed;      // beyond the trim
    std::string label; // what viewers call the page: "3", "3 back"
    std::string entry; // in the outline; empty: none
    TaggedPage tagged; // as it was painted
};

struct PdfDetails {
    std::string title;
    std::string author;   // the studio
    std::string language; // BCP 47: "en"
};

} // namespace dyeleaf
