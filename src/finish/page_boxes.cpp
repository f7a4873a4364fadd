#include "finish/page_boxes.h"

#include <algorithm>

namespace dyeleaf {

PdfObject on_pdf_page(PdfObject page, Rect rect) {
    PdfObject media = page.getKey("/MediaBox");
    const double right = media.getArrayItem(2).getNumericValue();
    const double top = media.getArrayItem(3).getNumericValue();
    // To a ten-thousandth of a point; at the page's edge with the very digits of the media box.
    const auto number = [](double value, double most, const PdfObject& edge) {
        if (value <= 0) return PdfObject::newInteger(0);
        return value > most - 0.001 ? edge : PdfObject::newReal(value, 4);
    };
    const auto x = [&](Length at) { return number(at.in_pt(), right, media.getArrayItem(2)); };
    const auto y = [&](Length at) { return number(top - at.in_pt(), top, media.getArrayItem(3)); };
    return PdfObject::newArray({x(rect.left()), y(rect.bottom()), x(rect.right()), y(rect.top())});
}

void set_page_boxes(PdfObject page, Rect trim, Length bleed) {
    page.replaceKey("/TrimBox", on_pdf_page(page, trim));
    page.replaceKey("/BleedBox", on_pdf_page(page, grown(trim, bleed)));
}

} // namespace dyeleaf
