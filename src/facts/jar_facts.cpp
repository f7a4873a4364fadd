#include "facts/jar_facts.h"

#include "facts/date_rows.h"
#include "facts/dye_wording.h"
#include "facts/dyes_in.h"
#include "facts/hazard_facts.h"
#include "facts/jar_bench_facts.h"
#include "facts/jar_label.h"
#include "facts/jar_part_facts.h"
#include "facts/jar_wording.h"
#include "facts/keeping.h"
#include "facts/mix.h"
#include "facts/rows.h"
#include "facts/swatches.h"
#include "facts/wording.h"

#include <algorithm>

namespace dyeleaf {

namespace {

using Text = std::optional<std::string>;

Mix mix_of(const JarView& view) {
    return mix_of(*view.records, *view.jar);
}

template <class Say> std::string of_each_dye(const JarView& view, Say say) {
    std::vector<std::string> texts;
    for (const Dye* dye : dyes_in(*view.records, *view.jar))
        texts.push_back(say(*dye));
    return joined_once(texts);
}

// A class that is missing is not the class of the dye beside it.
Text dye_classes(const JarView& view, const Manner& m) {
    const auto dyes = dyes_in(*view.records, *view.jar);
    if (std::ranges::none_of(dyes, [](const Dye* dye) { return dye->dye_class.has_value(); })) return std::nullopt;
    return of_each_dye(view, [&](const Dye& dye) {
        return dye.dye_class ? *dye.dye_class : m.language.say("jar.class not recorded");
    });
}

std::string products(const JarView& view) {
    return of_each_dye(view, [](const Dye& dye) { return dye.product.value_or(""); });
}

// Of the first filling and of those on top.
Text dye_lots(const JarView& view) {
    std::vector<std::string> lots;
    if (view.jar->dye_lot) lots.push_back(*view.jar->dye_lot);
    for (const TopUp& top_up : view.jar->topped_up) {
        if (top_up.dye_lot) lots.push_back(*top_up.dye_lot);
    }
    return joined_once(lots);
}

HazardSummary hazards_in(const JarView& view) {
    return hazards_of(*view.records, *view.jar);
}

const Dye* first_dye(const JarView& view) {
    const auto dyes = dyes_in(*view.records, *view.jar);
    return dyes.empty() ? nullptr : dyes.front();
}

constexpr auto diameters = "as recorded, or a circumference ÷ π, or a strip ÷ π less 0.1 mm of paper";

std::vector<FactRow> jar_identity_rows() {
    using Row = Rows<JarView>;
    return {
        Row::text("jar.id", "its id in the records", [](const JarView& v) { return v.jar->id.value; }),
        Row::text("jar.code", "its short code", [](const JarView& v) { return v.jar->code; },
                  {"", "as recorded; the id where no code is recorded", ""}),
        Row::text("jar.name", "its name, or the names of its dyes",
                  [](const JarView& v) { return jar_name(*v.records, *v.jar); },
                  {"", "as recorded; the names of its dyes where none is recorded", ""}),
        Row::text("jar.dye.names", "the names of its dyes",
                  [](const JarView& v) { return dye_names(*v.records, *v.jar); },
                  {"", "with the line or the code where another dye has the same name", ""}),
        Row::text("jar.lines", "the lines of its dyes",
                  [](const JarView& v) { return of_each_dye(v, [](const Dye& dye) { return dye.line; }); },
                  {"", "each line once", ""}),
        Row::text("jar.class", "the classes of its dyes", dye_classes, {"", "each class once", ""}),
        Row::text("jar.product", "the suppliers' names of its dyes", products, {"", "each product once", ""}),
        Row::text("jar.behaviour", "how its dyes break and bleed",
                  [](const JarView& v, const Manner& m) { return behaviour_words(m.language, *v.records, *v.jar); },
                  {"", "from “breaks into”, “fluorescent” and “bleeds” of each dye", ""}),
        Row::patch("jar.patch", "the deepest swatch of its first dye",
                   [](const JarView& v, const Manner& m) -> std::optional<Patch> {
                       const Dye* dye = first_dye(v);
                       if (dye == nullptr) return std::nullopt;
                       return deepest_patch(m.language, *v.records, *dye);
                   },
                   {"", "the deepest swatch of its first dye", ""}),
        Row::text("jar.swatch_label", "depth and base of that: 2 % on Plain Sock, and whether print falls short of it",
                  [](const JarView& v, const Manner& m) -> Text {
                      const Dye* dye = first_dye(v);
                      const Swatch* swatch = dye == nullptr ? nullptr : deepest_swatch(*dye);
                      if (swatch == nullptr) return std::nullopt;
                      const std::string label = label_words(m.language, *swatch, v.records->base(swatch->base.value));
                      const bool falls_short = swatch->colour && is_beyond_print(swatch->colour->value);
                      return falls_short ? label + ", " + m.language.say("dye.beyond print patch") : label;
                  },
                  {"", "depth and base of that", ""}),
        Row::list("jar.patches", "the deepest swatch of each dye", part_vocabulary(), jar_dye_parts,
                  {"", "in stated order", ""}),
        Row::text("jar.notes", "the dyer's notes", [](const JarView& v) { return v.jar->notes; }),
    };
}

std::vector<FactRow> mix_rows() {
    using Row = Rows<JarView>;
    return {
        Row::text("jar.strength", "dye in the mix, by weight; not there where it is unknown",
                  [](const JarView& v, const Manner& m) { return strength_figure(m.language, mix_of(v)); },
                  {"%", "dye over the whole by weight, from the masses as rounded to the scale’s step", "arithmetic"}),
        Row::text("jar.strength.text", "the same with its basis, or that it is unknown",
                  [](const JarView& v, const Manner& m) { return strength_words(m.language, mix_of(v)); },
                  {"", "the same, with its basis", ""}),
        Row::text(
            "jar.strength.lacks", "there only if it is unknown: whose bulk densities would tell it",
            [](const JarView& v, const Manner& m) { return lacking_words(m.language, mix_of(v)); },
            {"", "a mix by volume needs what 1 mL of each loose powder weighs, or the parts weighed", "arithmetic"}),
        Row::text("jar.ratio", "the parts in stated order, with their basis",
                  [](const JarView& v, const Manner& m) { return ratio_words(m.language, mix_of(v)); },
                  {"", "in stated order, with the basis", ""}),
        Row::text("jar.basis", "how the parts were measured: by weight or by volume",
                  [](const JarView& v, const Manner& m) { return words(m.language, mix_of(v).basis); }),
        Row::text("jar.recipe", "strength and amounts on one line",
                  [](const JarView& v, const Manner& m) { return recipe_words(m.language, mix_of(v)); },
                  {"", "strength, and the masses or the stated parts", ""}),
        Row::list("jar.parts", "what is in it, in stated order", part_vocabulary(), jar_parts,
                  {"", "in stated order", ""}),
        Row::text("jar.total", "grams of the whole, where they can be known",
                  [](const JarView& v, const Manner& m) { return total_words(m.language, mix_of(v)); },
                  {"g", "sum of the masses, or the batch as recorded", "arithmetic"}),
        Row::text("jar.grams_estimated", "there only if the grams are estimated",
                  [](const JarView& v, const Manner& m) {
                      return mix_of(v).masses_estimated ? m.language.say("jar.grams are estimated") : std::string{};
                  },
                  {"", "grams rest on bulk densities", ""}),
        Row::text(
            "jar.salt",
            "there only if nobody wrote down which salt is in it; a salt that is written down is the name of its part",
            [](const JarView& v, const Manner& m) { return salt_words(m.language, *v.records, *v.jar); },
            {"", "neither the jar nor the ingredient names the salt", ""}),
        Row::text("jar.tare", "the empty jar's weight",
                  [](const JarView& v, const Manner& m) -> Text {
                      if (!v.jar->tare) return std::nullopt;
                      return mass_words(m.language, *v.jar->tare);
                  }),
    };
}

std::optional<Date> day_mixed(const JarView& view) {
    return known_date(view.jar->mixed);
}

std::vector<FactRow> history_rows() {
    using Row = Rows<JarView>;
    return together({
        Row::text("jar.mixed", "the day it was mixed in full, where known",
                  [](const JarView& v, const Manner& m) -> Text {
                      const auto date = day_mixed(v);
                      if (!date) return std::nullopt;
                      return long_date(m.language, *date);
                  }),
        date_rows<JarView>("jar.mixed", day_mixed),
        Row::text("jar.mixed.or_unknown", "mixed and the day, or that it is unknown",
                  [](const JarView& v, const Manner& m) { return mixed_words(m.language, *v.jar); },
                  {"", "from “mixed”", ""}),
        Row::text("jar.mixed_by", "who mixed it", [](const JarView& v) { return v.jar->mixed_by; }),
        Row::text("jar.topped_up", "there only if it was topped up: the last time",
                  [](const JarView& v, const Manner& m) { return topped_up_words(m.language, *v.jar); },
                  {"", "the latest of “topped up”", ""}),
        Row::text("jar.use_by", "when to stop trusting it, where the dyer says so",
                  [](const JarView& v, const Manner& m) -> Text {
                      const auto date = use_by_of(v.records->studio, *v.jar);
                      if (!date) return std::nullopt;
                      return short_date(m.language, *date);
                  },
                  {"", "as recorded, or the day it was mixed and the time it keeps",
                   "calendar months; a day that the month lacks is its last"}),
        Row::text("jar.dye_lot", "the suppliers' batches in it", dye_lots,
                  {"", "of the first filling and of those on top, each once", ""}),
    });
}

std::vector<FactRow> caution_rows() {
    using Row = Rows<JarView>;
    return {
        Row::phrase("caution.not_food", "that it is not food", "caution.not food"),
        Row::phrase("caution.dust", "not to breathe the dust", "caution.dust"),
        Row::phrase("caution.dust.short", "the same for lids", "caution.dust brief"),
        Row::phrase("caution.airtight", "to keep it shut and dry", "caution.airtight"),
        Row::phrase("caution.airtight.short", "the same for lids", "caution.airtight brief"),
    };
}

Wall wall(const JarView& view) {
    return wall_of(view.jar->girth, view.jar->height);
}

FactRow arc_row(const std::string& label, Length (*width)(Length)) {
    using Row = Rows<JarView>;
    return Row::length(
        label + ".arc", "there only if the wall tapers too much for a rectangle: the radius on which its middle lies",
        [width](const JarView& v) { return arc_of(wall(v), width(wall(v).middle())); },
        {"mm",
         "slope × middle radius ÷ difference of the radii; where an edge dips more than 1 mm. Below 0: wider below",
         "development of a cone; 1 mm: common practice"});
}

// What was measured, where it was measured this way.
FactRow measured_row(const std::string& name, const std::string& meaning, Girth::By by) {
    using Row = Rows<JarView>;
    return Row::length(name, meaning, [by](const JarView& v) -> std::optional<Length> {
        const Girth& girth = v.jar->girth;
        if (girth.by != by || !near(girth.top, girth.bottom)) return std::nullopt;
        return girth.top;
    });
}

FactRow end_row(const std::string& name, const std::string& meaning, Length Wall::*end) {
    using Row = Rows<JarView>;
    return Row::length(name, meaning,
                       [end](const JarView& v) -> std::optional<Length> {
                           if (near(wall(v).top, wall(v).bottom)) return std::nullopt;
                           return wall(v).*end;
                       },
                       {"mm", diameters, "circumference of a circle"});
}

std::vector<FactRow> size_rows() {
    using Row = Rows<JarView>;
    return {
        Row::length("jar.diameter", "across the wall; of one that tapers, at half the label's height",
                    [](const JarView& v) { return wall(v).middle(); }, {"mm", diameters, "circumference of a circle"}),
        end_row("jar.diameter.top", "there only if the wall tapers: across it at the label's top edge", &Wall::top),
        end_row("jar.diameter.bottom", "there only if the wall tapers: at its bottom edge", &Wall::bottom),
        measured_row("jar.circumference", "round the wall, where that is recorded", Girth::By::circumference),
        measured_row("jar.strip", "a strip of paper round the wall, laid flat, where that is recorded",
                     Girth::By::strip),
        Row::length("jar.wrap.length", "a label once round, overlap included",
                    [](const JarView& v) { return wrap_length(wall(v).middle()); },
                    {"mm", "π × (diameter at half height + 0.1 mm of paper) + overlap",
                     "circumference of a circle; overlap: common practice"}),
        arc_row("jar.wrap", [](Length middle) { return wrap_length(middle); }),
        Row::length("jar.wrap.overlap", "how far it covers its own start",
                    [](const JarView&) { return wrap_overlap(); }, {"mm", "5 mm", "common practice"}),
        Row::length("jar.label.height", "a label on the straight wall",
                    [](const JarView& v) { return label_height(wall(v)); },
                    {"mm", "the wall less 2 mm above and below, along its slope", "common practice"}),
        Row::length("jar.front.width", "the part of the wall that faces you",
                    [](const JarView& v) { return front_width(wall(v).middle()); },
                    {"mm", "0.40 × π × diameter", "New York State rules on packages, section 221"}),
        arc_row("jar.front", [](Length middle) { return front_width(middle); }),
        Row::length("jar.give.width", "two thirds of the way round, at least 74 mm: for a jar that is given or sold",
                    [](const JarView& v) { return give_width(wall(v).middle()); },
                    {"mm", "two thirds of the circumference, at least 74 mm",
                     "EU CLP Regulation 1272/2008, annex I, table 1.3; two thirds: common practice"}),
        arc_row("jar.give", [](Length middle) { return give_width(middle); }),
        Row::length("jar.lid.diameter", "a round label on the lid, from “lid: 38 mm” in the jar's record",
                    [](const JarView& v) -> std::optional<Length> {
                        if (!v.jar->lid) return std::nullopt;
                        return lid_label_diameter(*v.jar->lid);
                    },
                    {"mm", "the lid less 1 mm all round", "common practice"}),
    };
}

} // namespace

const Vocabulary& jar_vocabulary() {
    static const Vocabulary vocabulary{
        "jar",
        together({jar_identity_rows(), mix_rows(), jar_bench_rows(), history_rows(), caution_rows(),
                  sheet_caution_rows<JarView>(hazards_in), size_rows(), hazard_rows<JarView>("jar", hazards_in)})};
    return vocabulary;
}

} // namespace dyeleaf
