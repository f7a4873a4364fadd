#include "facts/jar_facts.h"

#include "base/words.h"
#include "facts/date_rows.h"
#include "facts/hazard_facts.h"
#include "facts/jar_bench_facts.h"
#include "facts/jar_label.h"
#include "facts/jar_wording.h"
#include "facts/keeping.h"
#include "facts/mix.h"
#include "facts/names.h"
#include "facts/rows.h"
#include "facts/swatches.h"
#include "facts/wording.h"

#include <algorithm>
#include <iterator>

namespace dyeleaf {

namespace {

using Text = std::optional<std::string>;
using Dyes = std::vector<const Dye*>;

Dyes dyes_in(const JarView& view) {
    Dyes dyes;
    for (const Part& part : view.jar->parts) {
        if (part.is_dye) dyes.push_back(&view.records->dye(part.id.value));
    }
    return dyes;
}

Mix mix_of(const JarView& view) {
    return mix_of(*view.records, *view.jar);
}

// What these say, each once, in order.
std::string joined_once(const std::vector<std::string>& texts) {
    std::vector<std::string> once;
    for (const std::string& text : texts) {
        if (std::ranges::find(once, text) == once.end()) once.push_back(text);
    }
    return joined(once, " + ");
}

template <class Say> std::string of_each_dye(const JarView& view, Say say) {
    std::vector<std::string> texts;
    for (const Dye* dye : dyes_in(view))
        texts.push_back(say(*dye));
    return joined_once(texts);
}

std::string dye_names(const JarView& view) {
    return of_each_dye(view, [&](const Dye& dye) { return distinct_name(*view.records, dye); });
}

// A class that is missing is not the class of the dye beside it.
Text dye_classes(const JarView& view, const Manner& m) {
    const Dyes dyes = dyes_in(view);
    if (std::ranges::none_of(dyes, [](const Dye* dye) { return dye->dye_class.has_value(); })) return std::nullopt;
    return of_each_dye(view, [&](const Dye& dye) {
        return dye.dye_class ? *dye.dye_class : m.language.say("jar.class not recorded");
    });
}

Text products(const JarView& view) {
    std::vector<std::string> texts;
    for (const Dye* dye : dyes_in(view)) {
        if (dye->product) texts.push_back(*dye->product);
    }
    return joined_once(texts);
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
    const Dyes dyes = dyes_in(view);
    return dyes.empty() ? nullptr : dyes.front();
}

// --- parts ---

struct PartView {
    JarView of;
    Mix mix;
    std::size_t index = 0;
    [[nodiscard]] const MixPart& part() const { return mix.parts[index]; }
    [[nodiscard]] const Part& recorded() const { return of.jar->parts[index]; }
    [[nodiscard]] HazardSummary hazards() const {
        const std::string& id = recorded().id.value;
        return recorded().is_dye ? hazards_of(of.records->dye(id)) : hazards_of(of.records->ingredient(id));
    }
};

const Vocabulary& part_vocabulary() {
    using Row = Rows<PartView>;
    static const Vocabulary vocabulary{
        "part",
        {
            Row::text("part.name", "the dye or what goes with it", [](const PartView& v) { return v.part().name; }),
            Row::text(
                "part.hazards", "the codes of its sheet, where there are any",
                [](const PartView& v) { return code_words(v.hazards().label.statements); }, from_sheet),
            Row::text("part.parts", "how much of it, as stated",
                      [](const PartView& v, const Manner& m) { return amount_words(m.language, v.mix, v.part()); },
                      {"", "as stated, or as weighed in", ""}),
            Row::text("part.share", "its share by weight, where it can be known",
                      [](const PartView& v, const Manner& m) { return share_words(m.language, v.mix, v.part()); },
                      {"%", "parts over all parts; by volume each times its bulk density; then from the rounded masses",
                       "arithmetic"}),
            Row::text("part.mass", "its grams, where they can be known",
                      [](const PartView& v, const Manner& m) { return mass_words(m.language, v.mix, v.part()); },
                      {"g",
                       "share × batch, rounded to the scale’s step; or as weighed; or from “holds”, two thirds full, "
                       "and the bulk densities",
                       "arithmetic; two thirds full: common practice"}),
            Row::text("part.volume", "its millilitres of loose powder, where they can be known",
                      [](const PartView& v, const Manner& m) -> Text {
                          if (!v.part().volume) return std::nullopt;
                          return about(volume_words(m.language, *v.part().volume));
                      },
                      {"mL", "grams / bulk density; of spoons, their share of two thirds of the jar", "arithmetic"}),
            Row::patch("part.patch", "a dye's deepest swatch",
                       [](const PartView& v, const Manner& m) -> std::optional<Patch> {
                           if (!v.part().is_dye) return std::nullopt;
                           return deepest_patch(m.language, *v.of.records, v.of.records->dye(v.recorded().id.value));
                       },
                       {"", "its deepest swatch", ""}),
        }};
    return vocabulary;
}

std::vector<PartView> parts(const JarView& view) {
    const Mix mix = mix_of(view);
    std::vector<PartView> result;
    for (std::size_t index = 0; index < mix.parts.size(); ++index)
        result.push_back({view, mix, index});
    return result;
}

std::vector<PartView> dye_parts(const JarView& view) {
    std::vector<PartView> result = parts(view);
    std::erase_if(result, [](const PartView& part) { return !part.part().is_dye; });
    return result;
}

// --- the jar itself ---

using Row = Rows<JarView>;

std::vector<FactRow> identity_rows() {
    return {
        Row::text("jar.id", "its id in the records", [](const JarView& v) { return v.jar->id.value; }),
        Row::text("jar.code", "its short code", [](const JarView& v) { return v.jar->code; },
                  {"", "as recorded; the id where no code is recorded", ""}),
        Row::text("jar.name", "its name, or the names of its dyes",
                  [](const JarView& v) { return v.jar->name.value_or(dye_names(v)); },
                  {"", "as recorded; the names of its dyes where none is recorded", ""}),
        Row::text("jar.dye.names", "the names of its dyes", dye_names,
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
        Row::text("jar.swatch_label", "depth and base of that: 2 % on Plain Sock",
                  [](const JarView& v, const Manner& m) -> Text {
                      const Dye* dye = first_dye(v);
                      const Swatch* swatch = dye == nullptr ? nullptr : deepest_swatch(*dye);
                      if (swatch == nullptr) return std::nullopt;
                      return label_words(m.language, *swatch, v.records->base(swatch->base.value));
                  },
                  {"", "depth and base of that", ""}),
        Row::list("jar.patches", "the deepest swatch of each dye", part_vocabulary(), dye_parts,
                  {"", "in stated order", ""}),
        Row::text("jar.notes", "the dyer's notes", [](const JarView& v) { return v.jar->notes; }),
    };
}

std::vector<FactRow> mix_rows() {
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
        Row::list("jar.parts", "what is in it, in stated order", part_vocabulary(), parts, {"", "in stated order", ""}),
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

std::vector<FactRow> date_rows() {
    return {
        Row::text("jar.mixed", "the day it was mixed in full, where known",
                  [](const JarView& v, const Manner& m) -> Text {
                      const auto date = day_mixed(v);
                      if (!date) return std::nullopt;
                      return long_date(m.language, *date);
                  }),
        date_row<JarView>("jar.mixed.short", DateForm::brief, day_mixed),
        date_row<JarView>("jar.mixed.long", DateForm::full, day_mixed),
        date_row<JarView>("jar.mixed.month", DateForm::month, day_mixed),
        date_row<JarView>("jar.mixed.iso", DateForm::iso, day_mixed),
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
    };
}

// Of a caution that is the same on every jar.
FactRow always(std::string name, std::string meaning, std::string_view key) {
    return Row::text(std::move(name), std::move(meaning),
                     [key](const JarView&, const Manner& m) { return m.language.say(key); });
}

std::vector<FactRow> caution_rows() {
    return {
        always("caution.not_food", "that it is not food", "caution.not food"),
        always("caution.dust", "not to breathe the dust", "caution.dust"),
        always("caution.dust.short", "the same for lids", "caution.dust brief"),
        always("caution.airtight", "to keep it shut and dry", "caution.airtight"),
        always("caution.airtight.short", "the same for lids", "caution.airtight brief"),
        Row::text(
            "caution.signal", "the signal word of the codes, where they have one",
            [](const JarView& v, const Manner& m) {
                const auto signal = hazards_in(v).label.signal;
                return signal ? signal_words(m.language, *signal) : std::string{};
            },
            from_sheet),
        Row::text(
            "caution.statements",
            "what the suppliers' sheets say, or that they list nothing, or that there are no data",
            [](const JarView& v, const Manner& m) {
                return unsigned_hazard_words(m.language, statement_wording(v.records->studio.market), hazards_in(v));
            },
            worded),
        Row::text(
            "caution.hazards", "signal word and statements",
            [](const JarView& v, const Manner& m) {
                return hazard_words(m.language, statement_wording(v.records->studio.market), hazards_in(v));
            },
            worded),
        Row::text(
            "caution.hazards.short", "signal word and codes, for lids",
            [](const JarView& v, const Manner& m) { return hazard_words_brief(m.language, hazards_in(v)); },
            from_sheet),
    };
}

std::vector<FactRow> size_rows() {
    return {
        Row::length("jar.wrap.length", "a label once round, overlap included",
                    [](const JarView& v) { return wrap_length(v.jar->diameter); },
                    {"mm", "π × (diameter + 0.1 mm of paper) + overlap",
                     "circumference of a circle; overlap: common practice"}),
        Row::length("jar.wrap.overlap", "how far it covers its own start",
                    [](const JarView&) { return wrap_overlap(); }, {"mm", "5 mm", "common practice"}),
        Row::length("jar.label.height", "a label on the straight wall",
                    [](const JarView& v) { return label_height(v.jar->height); },
                    {"mm", "straight wall less 2 mm above and below", "common practice"}),
        Row::length("jar.front.width", "the part of the wall that faces you",
                    [](const JarView& v) { return front_width(v.jar->diameter); },
                    {"mm", "0.40 × π × diameter", "New York State rules on packages, section 221"}),
        Row::length("jar.give.width", "two thirds of the way round, at least 74 mm: for a jar that is given or sold",
                    [](const JarView& v) { return give_width(v.jar->diameter); },
                    {"mm", "two thirds of the circumference, at least 74 mm",
                     "EU CLP Regulation 1272/2008, annex I, table 1.3; two thirds: common practice"}),
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
    static const Vocabulary vocabulary = [] {
        Vocabulary jar{"jar", identity_rows()};
        for (auto* more : {mix_rows, jar_bench_rows, date_rows, caution_rows, size_rows})
            std::ranges::move(more(), std::back_inserter(jar.rows));
        std::ranges::move(hazard_rows<JarView>("jar", hazards_in), std::back_inserter(jar.rows));
        return jar;
    }();
    return vocabulary;
}

} // namespace dyeleaf
