#include "facts/ramp_facts.h"

#include "colour/spaces.h"
#include "facts/rows.h"
#include "facts/stock_solution.h"
#include "facts/swatch_facts.h"
#include "facts/swatches.h"
#include "facts/wording.h"

#include <algorithm>

namespace dyeleaf {

namespace {

using Text = std::optional<std::string>;

Patch patch_of(const Language& language, const ShadeView& view) {
    const auto& [of, base, shade] = view;
    Patch patch = patch_at(language, *of.records, *of.dye, shade.depth, base->id.value);
    patch.says.clear(); // the ramp's own note does
    if (!shade.is_estimated) return patch;
    return {Patch::Kind::estimated, to_rgb(shade.colour).colour,
            estimated_words(language, *of.records, *of.dye, shade.depth, base->id.value)};
}

bool is_measured(const Swatch* swatch) {
    return !swatch->colour || swatch->colour_source == ColourSource::instrument;
}

template <class Ask> auto of_best_base(Ask ask) {
    return [ask](const DyeView& v, const Manner& m) -> Text {
        const auto base = best_ramp_base(*v.dye);
        if (!base) return std::nullopt;
        return ask(v, m, *base);
    };
}

} // namespace

const Vocabulary& shade_vocabulary() {
    using Row = Rows<ShadeView>;
    static const Vocabulary vocabulary{
        "shade",
        {
            Row::patch(
                "shade.patch", "the recorded colour, or the estimated one with a corner cut off",
                [](const ShadeView& v, const Manner& m) { return patch_of(m.language, v); }, from_even_ramp),
            Row::text("shade.depth", "dye on weight of fibre",
                      [](const ShadeView& v, const Manner& m) { return percent_words(m.language, v.shade.depth); },
                      {"", "as recorded, or of an estimated shade two significant figures", "common practice"}),
            Row::text("shade.recorded", "its depth again, there only if its colour is recorded",
                      [](const ShadeView& v, const Manner& m) -> Text {
                          if (v.shade.is_estimated) return std::nullopt;
                          return percent_words(m.language, v.shade.depth);
                      }),
            Row::text("shade.estimated", "there only if its colour is estimated",
                      [](const ShadeView& v, const Manner& m) {
                          return only_if(m.language, v.shade.is_estimated, "ramp.estimated");
                      },
                      {"", "not among the recorded depths", ""}),
            Row::text(
                "shade.stock", "how much 1 % stock dyes 100 g so",
                [](const ShadeView& v, const Manner& m) {
                    return volume_words(m.language, stock_per_hundred_grams(v.shade.depth));
                },
                from_one_percent_stock),
        }};
    return vocabulary;
}

std::vector<ShadeView> shade_views(const DyeView& view, const std::string& base_id) {
    std::vector<ShadeView> result;
    for (const RampShade& shade : ramp_on(*view.dye, base_id))
        result.push_back({view, &view.records->base(base_id), shade});
    return result;
}

Text ramp_note(const Language& language, const DyeView& view, const std::string& base_id) {
    if (ramp_on(*view.dye, base_id).empty()) return std::nullopt;
    const bool measured = std::ranges::all_of(swatches_on(*view.dye, base_id), is_measured);
    return language.say(measured ? "ramp.note" : "ramp.note not measured");
}

std::vector<FactRow> ramp_rows() {
    using Row = Rows<DyeView>;
    return {
        Row::list(
            "dye.ramp", "its shades in even steps on the base with most depths, lightest first", shade_vocabulary(),
            [](const DyeView& v) {
                const auto base = best_ramp_base(*v.dye);
                return base ? shade_views(v, *base) : std::vector<ShadeView>{};
            },
            from_even_ramp),
        Row::text("dye.ramp.title", "what it shows: Even steps on Plain Sock",
                  of_best_base([](const DyeView& v, const Manner& m, const std::string& base) {
                      return m.language.say("ramp.title", {{"base", v.records->base(base).name}});
                  }),
                  {"", "the base with most depths that have a colour", ""}),
        Row::text("dye.ramp.note", "what its estimated shades rest on",
                  of_best_base([](const DyeView& v, const Manner& m, const std::string& base) {
                      return ramp_note(m.language, v, base);
                  }),
                  {"", "from “colour from” of the swatches", ""}),
    };
}

} // namespace dyeleaf
