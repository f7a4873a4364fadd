#include "facts/palette.h"

#include "colour/shade_curve.h"
#include "colour/spaces.h"
#include "facts/dyes_in.h"
#include "facts/names.h"
#include "facts/ramp.h"
#include "facts/rows.h"
#include "facts/swatches.h"
#include "facts/wording.h"

#include <utility>

namespace dyeleaf {

namespace {

using Text = std::optional<std::string>;

// What `patch` shows is not how the dye looks so deep on this base.
Patch marked(const Language& language, Patch patch, Percent depth, const Base& base) {
    if (patch.kind == Patch::Kind::recorded) patch.kind = Patch::Kind::estimated;
    patch.description =
        language.say("palette.not at depth",
                     {{"swatch", patch.description}, {"depth", percent_words(language, depth)}, {"base", base.name}});
    return patch;
}

Patch at_depth(const Language& language, const Records& records, const Dye& dye, Percent depth,
               const std::string& base_id) {
    const Swatch* swatch = swatch_at(dye, depth, base_id);
    if (swatch != nullptr && swatch->colour) return patch_of(language, records, dye, *swatch);
    const std::vector<Shade> shades = recorded_shades(dye, base_id);
    const bool between = shades.size() > 1 && shades.front().depth < depth && depth < shades.back().depth;
    if (between && dye.fluorescent != true) {
        return {Patch::Kind::estimated, to_rgb(ShadeCurve{shades}.at(depth)).colour,
                estimated_words(language, records, dye, depth, base_id)};
    }
    const Base& base = records.base(base_id);
    if (shades.empty()) return marked(language, deepest_patch(language, records, dye), depth, base);
    const Shade& nearest = depth < shades.back().depth ? shades.front() : shades.back();
    return marked(language, patch_at(language, records, dye, nearest.depth, base_id), depth, base);
}

} // namespace

std::vector<PaletteColour> palette_of(const LotView& lot) {
    const Records& records = *lot.records;
    std::vector<PaletteColour> bath;
    std::vector<PaletteColour> shaken_on;
    for (const RecipeLine& line : lot.lot->recipe.lines) {
        if (const auto* dye = std::get_if<DyeLine>(&line.what)) {
            bath.push_back({lot, &records.dye(dye->dye.value), dye->depth});
            continue;
        }
        for (const Dye* dye : dyes_in(records, records.jar(std::get<JarLine>(line.what).jar.value)))
            shaken_on.push_back({lot, dye, {}});
    }
    bath.insert(bath.end(), shaken_on.begin(), shaken_on.end());
    return bath;
}

Patch palette_patch(const Language& language, const PaletteColour& colour) {
    const Records& records = *colour.of.records;
    if (!colour.depth) return deepest_patch(language, records, *colour.dye);
    return at_depth(language, records, *colour.dye, *colour.depth, colour.of.lot->base.value);
}

const Vocabulary& palette_vocabulary() {
    using Row = Rows<PaletteColour>;
    static const Vocabulary vocabulary{
        "colour of a palette",
        {
            Row::patch("colour.patch", "what it looks like; estimated where no swatch has this depth",
                       [](const PaletteColour& v, const Manner& m) { return palette_patch(m.language, v); },
                       {"",
                        "the swatch of this depth on the lot's base, else estimated between two, else the nearest; "
                        "of what is shaken on, the deepest",
                        "Kubelka and Munk between swatches"}),
            Row::text("colour.name", "the dye",
                      [](const PaletteColour& v) { return distinct_name(*v.of.records, *v.dye); }),
            Row::text("colour.code", "its short code", [](const PaletteColour& v) { return v.dye->code; }),
            Row::text("colour.depth", "dye on dry weight; of what is shaken on, none",
                      [](const PaletteColour& v, const Manner& m) -> Text {
                          if (!v.depth) return std::nullopt;
                          return percent_words(m.language, *v.depth);
                      }),
            Row::text("colour.how", "how it is laid on: its depth in the bath, or that it is speckled",
                      [](const PaletteColour& v, const Manner& m) {
                          return v.depth ? percent_words(m.language, *v.depth) : m.language.say("palette.speckled");
                      },
                      {"", "from the line of the recipe: a dye, or a jar", ""}),
        }};
    return vocabulary;
}

} // namespace dyeleaf
