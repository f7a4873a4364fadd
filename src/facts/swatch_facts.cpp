#include "facts/swatch_facts.h"

#include "base/words.h"
#include "facts/base_facts.h"
#include "facts/date_rows.h"
#include "facts/dye_wording.h"
#include "facts/illustration.h"
#include "facts/photo_rows.h"
#include "facts/ramp_facts.h"
#include "facts/rows.h"
#include "facts/stock_solution.h"
#include "facts/wording.h"
#include "facts/yarn_wording.h"

namespace dyeleaf {

namespace {

using Text = std::optional<std::string>;

// One depth on one base.
struct CellView {
    DepthView at;
    const Base* base = nullptr;
};

const Vocabulary& cell_vocabulary() {
    using Row = Rows<CellView>;
    static const Vocabulary vocabulary{
        "cell",
        {
            Row::patch("cell.patch", "the colour at this depth on this base; an empty frame where it was not swatched",
                       [](const CellView& v, const Manner& m) {
                           return patch_at(m.language, *v.at.of.records, *v.at.of.dye, v.at.depth, v.base->id.value);
                       },
                       {"", "the last recorded swatch of this depth on this base", ""}),
            Row::text("cell.base", "the base's name", [](const CellView& v) { return v.base->name; }),
            Row::text("cell.base.code", "its short code", [](const CellView& v) { return v.base->code; }),
        }};
    return vocabulary;
}

std::optional<Date> day_swatched(const SwatchView& view) {
    return known_date(view.swatch->dyed);
}

} // namespace

const Base& SwatchView::base() const {
    return of.records->base(swatch->base.value);
}

const Vocabulary& component_vocabulary() {
    using Row = Rows<ComponentView>;
    static const Vocabulary vocabulary{
        "component",
        together({
            Row::text("component.name", "the colour's name", [](const ComponentView& v) { return v.component->name; }),
            Row::patch("component.patch", "the colour",
                       [](const ComponentView& v, const Manner& m) {
                           return patch_of(m.language, *v.of.records, *v.of.dye, *v.component);
                       },
                       {"", "its recorded colour in sRGB", "CSS Color 4 (sRGB, lab with D50)"}),
            Row::text("component.halo", "how far it runs out beyond the main colour",
                      [](const ComponentView& v, const Manner& m) -> Text {
                          if (!v.component->halo) return std::nullopt;
                          return length_words(m.language, *v.component->halo);
                      }),
            photo_rows<ComponentView>(
                "component", [](const ComponentView& v) -> const ColourOrNone& { return v.component->colour; }),
        })};
    return vocabulary;
}

std::vector<ComponentView> component_views(const DyeView& view) {
    std::vector<ComponentView> result;
    if (!view.dye->breaks_into) return result;
    for (const Component& component : *view.dye->breaks_into)
        result.push_back({view, &component});
    return result;
}

const Vocabulary& swatch_vocabulary() {
    using Row = Rows<SwatchView>;
    static const Vocabulary vocabulary{
        "swatch",
        together({
            Row::patch("swatch.patch", "its colour",
                       [](const SwatchView& v, const Manner& m) {
                           return patch_of(m.language, *v.of.records, *v.of.dye, *v.swatch);
                       },
                       {"", "its recorded colour in sRGB", "CSS Color 4 (sRGB, lab with D50)"}),
            Row::text("swatch.depth", "dye on weight of fibre",
                      [](const SwatchView& v, const Manner& m) { return percent_words(m.language, v.swatch->depth); }),
            Row::text("swatch.base", "the base it was dyed on", [](const SwatchView& v) { return v.base().name; }),
            Row::text("swatch.base.code", "the base's short code", [](const SwatchView& v) { return v.base().code; }),
            Row::text("swatch.label", "depth and base: 2 % on Plain Sock",
                      [](const SwatchView& v, const Manner& m) { return label_words(m.language, *v.swatch, v.base()); },
                      {"", "depth and base", ""}),
            Row::text("swatch.date", "the day it was dyed, where known",
                      [](const SwatchView& v, const Manner& m) { return short_date(m.language, v.swatch->dyed); }),
            date_rows<SwatchView>("swatch.date", day_swatched),
            Row::text("swatch.date.or_unknown", "the same, or that it is unknown",
                      [](const SwatchView& v, const Manner& m) {
                          return short_date(m.language, v.swatch->dyed).value_or(m.language.say("dates.unknown"));
                      },
                      {"", "from “dyed”", ""}),
            Row::text(
                "swatch.stock", "how much 1 % stock dyes 100 g so",
                [](const SwatchView& v, const Manner& m) {
                    return volume_words(m.language, stock_per_hundred_grams(v.swatch->depth));
                },
                from_one_percent_stock),
            Row::text("swatch.source", "how its colour was taken",
                      [](const SwatchView& v, const Manner& m) -> Text {
                          if (!v.swatch->colour) return std::nullopt;
                          return words(m.language, v.swatch->colour_source);
                      },
                      {"", "from “colour from”", ""}),
            photo_rows<SwatchView>("swatch",
                                   [](const SwatchView& v) -> const ColourOrNone& { return v.swatch->colour; }),
            Row::picture("swatch.picture", "a photograph of it",
                         [](const SwatchView& v, const Manner& m) {
                             const std::string words = label_words(m.language, *v.swatch, v.base());
                             return illustration(v.swatch->picture, joined({v.of.dye->name, words}, dot),
                                                 v.of.dye->id.value);
                         }),
            Row::text("swatch.notes", "the dyer's notes on it", [](const SwatchView& v) { return v.swatch->notes; }),
        })};
    return vocabulary;
}

std::vector<SwatchView> swatch_views(const DyeView& view, const Swatches& swatches) {
    std::vector<SwatchView> result;
    result.reserve(swatches.size());
    for (const Swatch* swatch : swatches)
        result.push_back({view, swatch});
    return result;
}

const Vocabulary& swatched_base_vocabulary() {
    using Row = Rows<SwatchedBaseView>;
    static const Vocabulary vocabulary{
        "swatched base",
        {
            Row::text("base.name", "the base's name", [](const SwatchedBaseView& v) { return v.base->name; }),
            Row::text("base.code", "its short code", [](const SwatchedBaseView& v) { return v.base->code; }),
            Row::text(
                "base.fibres", "its fibres, largest share first",
                [](const SwatchedBaseView& v, const Manner& m) {
                    return fibre_statement(m.language, *v.base, v.of.records->studio.market);
                },
                fibres_by_market()),
            Row::text("base.swatched",
                      "when the dye was swatched on it: a day, or the first to the last, and how many are undated",
                      [](const SwatchedBaseView& v, const Manner& m) {
                          return swatching_dates(m.language, swatches_on(*v.of.dye, v.base->id.value));
                      },
                      {"", "the first and the last of the swatches’ days", ""}),
            Row::list(
                "base.swatches", "the dye's swatches on it, lightest first", swatch_vocabulary(),
                [](const SwatchedBaseView& v) { return swatch_views(v.of, swatches_on(*v.of.dye, v.base->id.value)); },
                {"", "lightest first", ""}),
            Row::list(
                "base.ramp", "the dye's shades on it in even steps, lightest first", shade_vocabulary(),
                [](const SwatchedBaseView& v) { return shade_views(v.of, v.base->id.value); }, from_even_ramp),
            Row::text("base.ramp.note", "what the estimated shades rest on",
                      [](const SwatchedBaseView& v, const Manner& m) {
                          return ramp_note(m.language, v.of, v.base->id.value);
                      },
                      {"", "from “colour from” of the swatches", ""}),
        }};
    return vocabulary;
}

std::vector<SwatchedBaseView> base_views(const DyeView& view) {
    std::vector<SwatchedBaseView> result;
    for (const std::string& id : swatched_bases(*view.dye))
        result.push_back({view, &view.records->base(id)});
    return result;
}

const Vocabulary& depth_vocabulary() {
    using Row = Rows<DepthView>;
    static const Vocabulary vocabulary{
        "depth",
        {
            Row::text("depth.text", "dye on weight of fibre",
                      [](const DepthView& v, const Manner& m) { return percent_words(m.language, v.depth); }),
            Row::text(
                "depth.stock", "how much 1 % stock dyes 100 g so",
                [](const DepthView& v, const Manner& m) {
                    return volume_words(m.language, stock_per_hundred_grams(v.depth));
                },
                from_one_percent_stock),
            Row::list("depth.patches", "one for each base of dye.bases, in the same order", cell_vocabulary(),
                      [](const DepthView& v) {
                          std::vector<CellView> cells;
                          for (const SwatchedBaseView& swatched : base_views(v.of))
                              cells.push_back({v, swatched.base});
                          return cells;
                      },
                      {"", "one for each base, in the order of the swatches", ""}),
        }};
    return vocabulary;
}

std::vector<DepthView> depth_views(const DyeView& view) {
    std::vector<DepthView> result;
    for (const Percent depth : swatched_depths(*view.dye))
        result.push_back({view, depth});
    return result;
}

} // namespace dyeleaf
