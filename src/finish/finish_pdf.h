// Adds to a PDF what the drawing library cannot, with qpdf.
#pragma once

#include <string>

namespace dyeleaf {

struct PdfDetails {
    std::string title;
    std::string author;   // the studio
    std::string language; // BCP 47: "en"
};

// The same pages with title, author, language and an id made from the contents alone: same input, same bytes.
std::string finish_pdf(const std::string& pdf, const PdfDetails& details);

} // namespace dyeleaf
