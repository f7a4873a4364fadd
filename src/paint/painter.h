// Draws display lists with Cairo: the only room that includes its headers, and the only place where millimetres become
// points or pixels. Every Cairo status is checked; a failing one is thrown as PaintError.
#pragma once

#include "display/display_list.h"

#include <memory>
#include <stdexcept>
#include <string>

namespace dyeleaf {

class PaintError : public std::runtime_error {
  public:
    using std::runtime_error::runtime_error;
};

// A PDF of any number of pages, each of its own size; text stays text, fonts are embedded and subset.
class PdfPainter {
  public:
    PdfPainter();
    ~PdfPainter();
    PdfPainter(const PdfPainter&) = delete;
    PdfPainter& operator=(const PdfPainter&) = delete;

    // Returns what of the page is tagged, for the finished file to say.
    TaggedPage page(const DisplayList& list);
    // The whole file. Nothing may be painted afterwards.
    std::string finish();

  private:
    struct Surface;
    std::unique_ptr<Surface> surface_;
};

// One page as PNG on white, `dpi` dots to the inch, and as SVG with glyphs as outlines; both return the file's bytes.
std::string paint_png(const DisplayList& list, double dpi);
std::string paint_svg(const DisplayList& list);

} // namespace dyeleaf
