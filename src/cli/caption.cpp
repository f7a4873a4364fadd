#include "cli/caption.h"

namespace dyeleaf {

DisplayList set_caption(const std::string& text, const Typesetter& typesetter, Length size) {
    const Font font{"Inter", 400, false, 0, false};
    const FontMetrics metrics = typesetter.metrics(font);
    const auto paragraph = typesetter.set(text, font, std::nullopt, false);
    DisplayList list{{size * paragraph->width, size * (metrics.ascent + metrics.descent)}, {}};
    for (const TextLine& line : paragraph->lines) {
        for (const PlacedRun& placed : line.runs)
            list.items.emplace_back(DrawRun{placed.run, {size * placed.x, size * metrics.ascent}, size, Rgb{}});
    }
    return list;
}

} // namespace dyeleaf
