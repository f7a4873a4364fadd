// Layout files, and the label that a sound one makes of the first of its items.
#include "design/read_design.h"
#include "english.h"
#include "input.h"
#include "layout/layout.h"
#include "sample_records.h"

using namespace dyeleaf;

namespace {

// It keeps what it has measured, so it is made anew now and then.
const Typesetter& typesetter() {
    static std::optional<Typesetter> one;
    static int asked = 0;
    if (asked++ % 1000 == 0) {
        Diagnostics diagnostics;
        one.emplace(std::vector{fonts_folder()}, diagnostics);
    }
    return *one;
}

void place(const Design& design, const Typesetter& typesetter, Diagnostics& diagnostics) {
    static const Records records = sample_records();
    const Printing printing{{english()}, nullptr, {2026, 11, 9}};
    const auto items = make_items(records, design.items, design.grouping, {}, printing, diagnostics);
    if (items.empty()) return;
    if (const auto size = label_size(design, items.front(), diagnostics))
        (void)place_label(design, items.front(), *size, typesetter, diagnostics);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    Diagnostics diagnostics;
    if (const auto node = parse_document(as_file(data, size), diagnostics)) {
        const Typesetter& words = typesetter();
        const auto design = read_design(*node, {}, words.families(), diagnostics);
        if (design && diagnostics.errors() == 0) place(*design, words, diagnostics);
        Diagnostics of_styles;
        (void)read_style_file(*node, words.families(), of_styles);
        tell(of_styles);
    }
    tell(diagnostics);
    return 0;
}
