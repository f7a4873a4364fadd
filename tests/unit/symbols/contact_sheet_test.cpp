// Not run by itself: `build/tests/unit_tests "[contact sheet]"` draws every symbol on one page, to be looked at.
#include "pdf/pdf_writer.h"
#include "symbols/care_symbols.h"
#include "symbols/ghs_pictograms.h"

#include <catch2/catch.hpp>

#include <fstream>
#include <memory>

using namespace dyeleaf;

namespace {

// Rows of symbols as high as `height`, from `top` down; returns where they end.
Length add_rows(DisplayList& page, const std::vector<NamedDrawing>& drawings, Length height, Length top) {
    const double scale = height / symbol_height;
    const Length gap = height * 0.2;
    Length x = mm(5);
    for (const NamedDrawing& drawing : drawings) {
        const Length width = drawing.list.size.width * scale;
        if (!fits(x + width, page.size.width - mm(5))) {
            x = mm(5);
            top += height + gap;
        }
        const auto list = std::make_shared<const DisplayList>(drawing.list);
        page.items.emplace_back(Group{list, Transform{scale, 0, 0, scale, x, top}, std::nullopt});
        x += width + gap;
    }
    return top + height + gap * 2;
}

} // namespace

TEST_CASE("every symbol at its least size and enlarged, as symbols.pdf", "[.][contact sheet]") {
    DisplayList page{{mm(210), mm(297)}, {}};
    Length y = mm(5);
    for (const Length height : {mm(5), mm(6), mm(16)})
        y = add_rows(page, care_symbols(), height, y);
    for (const bool mono : {false, true})
        y = add_rows(page, ghs_pictograms(mono), ghs_height(mm(10)), y);
    add_rows(page, ghs_pictograms(false), ghs_height(mm(16)), y);
    std::ofstream file{"symbols.pdf", std::ios::binary};
    PdfWriter writer{[&](std::string_view bytes) { file << bytes; }};
    writer.page(page, [&](TaggedPage tagged) { return PdfPage{{{}, page.size}, {}, {}, {}, std::move(tagged)}; });
    writer.finish({});
}
