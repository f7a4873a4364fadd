#include "facts/dye_facts.h"

#include "base/words.h"
#include "colour/hue.h"
#include "facts/date_rows.h"
#include "facts/dye_wording.h"
#include "facts/hazard_facts.h"
#include "facts/jar_wording.h"
#include "facts/ramp_facts.h"
#include "facts/rows.h"
#include "facts/speckled_dye.h"
#include "facts/stock_solution.h"
#include "facts/swatch_facts.h"
#include "facts/swatches.h"
#include "facts/wording.h"

namespace dyeleaf {

namespace {

using Text = std::optional<std::string>;

Text replacement(const DyeView& view, const Manner& m) {
    if (!view.dye->replaced_by) return std::nullopt;
    return replacement_words(m.language, view.records->dye(view.dye->replaced_by->value));
}

HazardSummary hazards_in(const DyeView& view) {
    return hazards_of(*view.dye);
}

Text hazards(const Language& language, const DyeView& view) {
    const HazardSummary summary = hazards_in(view);
    const std::string codes = code_words(summary.label.statements);
    return codes.empty() ? hazard_words(language, statement_wording(view.records->studio.market), summary) : codes;
}

std::optional<Date> day_opened(const DyeView& view) {
    return known_date(view.dye->opened);
}

constexpr const char* latest_of_swatches = "the latest of its swatches’ days";

std::optional<Date> last_swatched(const DyeView& view) {
    std::optional<Date> latest;
    for (const Swatch& swatch : view.dye->swatches) {
        const auto dyed = known_date(swatch.dyed);
        if (dyed && (!latest || *dyed > *latest)) latest = dyed;
    }
    return latest;
}

// Nothing where no day is known: layouts put words before it.
Text known_dates(const DyeView& view, const Manner& m) {
    return last_swatched(view) ? swatching_dates(m.language, swatches_in_order(*view.dye)) : std::nullopt;
}

Text component_names(const Dye& dye) {
    if (!dye.breaks_into) return std::nullopt;
    std::vector<std::string> names;
    for (const Component& component : *dye.breaks_into) {
        if (!component.name.empty()) names.push_back(component.name);
    }
    return names.empty() ? std::nullopt : Text{joined(names, dot)};
}

std::vector<FactRow> dye_identity_rows() {
    using Row = Rows<DyeView>;
    return together({
        Row::text("dye.id", "its id in the records", [](const DyeView& v) { return v.dye->id.value; }),
        Row::text("dye.name", "its name", [](const DyeView& v) { return v.dye->name; }),
        Row::text("dye.line", "the line it belongs to", [](const DyeView& v) { return v.dye->line; }),
        Row::text("dye.code", "its short code", [](const DyeView& v) { return v.dye->code; },
                  {"", "as recorded; the id where no code is recorded", ""}),
        Row::text("dye.same_name", "where else there is a dye of this name",
                  [](const DyeView& v, const Manner& m) { return namesake_words(m.language, *v.records, *v.dye); },
                  {"", "looked for among all dyes, letters alike whether small or capital", ""}),
        Row::text("dye.class", "acid, reactive …", [](const DyeView& v) { return v.dye->dye_class; }),
        Row::text("dye.product", "the supplier's name for it", [](const DyeView& v) { return v.dye->product; }),
        Row::text("dye.batch", "the supplier's batch", [](const DyeView& v) { return v.dye->batch; }),
        Row::text("dye.opened", "when it was opened, where known",
                  [](const DyeView& v, const Manner& m) { return short_date(m.language, v.dye->opened); }),
        date_rows<DyeView>("dye.opened", day_opened),
        Row::text("dye.jars", "the codes of the jars it is mixed in, with its share",
                  [](const DyeView& v, const Manner& m) { return jars_words(m.language, *v.records, *v.dye); },
                  {"", "the jars that name it among their parts, its share by weight where it can be known", ""}),
        Row::text("dye.supply", "its jars, the supplier's batch and the day it was opened on one line",
                  [](const DyeView& v, const Manner& m) { return supply_words(m.language, *v.records, *v.dye); },
                  {"", "what is recorded of these", ""}),
        Row::text("dye.form", "powder, liquid …", [](const DyeView& v) { return v.dye->form; }),
        Row::text("dye.status", "Discontinued or Reformulated; not there while it is current",
                  [](const DyeView& v, const Manner& m) { return status_words(m.language, v.dye->status); },
                  {"", "from “status”", ""}),
        Row::text("dye.status.note", "the dyer's note on that", [](const DyeView& v) { return v.dye->status_note; }),
        Row::text("dye.in_stock", "whether there is any, or how much",
                  [](const DyeView& v, const Manner& m) { return in_stock_words(m.language, *v.dye); },
                  {"", "from “in stock”", ""}),
        Row::text("dye.replaced_by", "what to use instead", replacement,
                  {"", "name and code of the dye that “replaced by” means", ""}),
        Row::text("dye.family", "the family of its deepest colour: pink, red …",
                  [](const DyeView& v, const Manner& m) -> Text {
                      const auto colour = deepest_colour(*v.dye);
                      if (!colour) return std::nullopt;
                      return words(m.language, hue_family(*colour));
                  },
                  {"", "by the hue of the deepest recorded colour in Oklab; grey below a chroma of 10 in CIELAB",
                   "CSS Color 4 (Oklab); families by eye, our own"}),
        Row::text("dye.notes", "the dyer's notes", [](const DyeView& v) { return v.dye->notes; }),
    });
}

std::vector<FactRow> behaviour_rows() {
    using Row = Rows<DyeView>;
    return {
        Row::text("dye.fluorescent", "there only if it is fluorescent",
                  [](const DyeView& v, const Manner& m) { return fluorescent_words(m.language, *v.dye); },
                  {"", "from “fluorescent”", ""}),
        Row::text("dye.beyond_print", "there only if one of its swatches is stronger than print can show",
                  [](const DyeView& v, const Manner& m) {
                      return only_if(m.language, is_beyond_print(*v.dye), "dye.beyond print");
                  },
                  {"", "a recorded colour lies outside sRGB and its dye is not fluorescent", "CSS Color 4"}),
        Row::text("dye.only_yarn", "there only if none but the yarn shows its colour: fluorescent, or beyond print",
                  [](const DyeView& v, const Manner& m) {
                      const bool is_so = v.dye->fluorescent == true || is_beyond_print(*v.dye);
                      return only_if(m.language, is_so, "dye.only yarn");
                  },
                  {"", "from “fluorescent” and its colours", ""}),
        Row::text("dye.bleeds", "there only if it bleeds",
                  [](const DyeView& v, const Manner& m) { return bleeding_words(m.language, *v.dye); },
                  {"", "from “bleeds”", ""}),
        Row::text("dye.crocks", "there only if it rubs off",
                  [](const DyeView& v, const Manner& m) { return crocking_words(m.language, *v.dye); },
                  {"", "from “crocks”", ""}),
        Row::text("dye.rinses", "there only if it never rinses clear",
                  [](const DyeView& v, const Manner& m) { return rinsing_words(m.language, *v.dye); },
                  {"", "from “rinses clear”", ""}),
        Row::text("dye.light_fastness", "as recorded", [](const DyeView& v) { return v.dye->light_fastness; }),
        Row::text("dye.warnings", "bleeding, rubbing off, rinsing and light fastness on one line",
                  [](const DyeView& v, const Manner& m) { return warning_words(m.language, *v.dye); },
                  {"", "what is recorded of these", ""}),
        Row::text("dye.breaks", "Breaks into, Does not break, or that nobody has tried",
                  [](const DyeView& v, const Manner& m) { return words(m.language, breaks(*v.dye)); },
                  {"", "from “breaks into”: a list, an empty list, or no list at all", ""}),
        Row::text("dye.breaks.known_not", "there only if it is known not to break",
                  [](const DyeView& v, const Manner& m) {
                      return only_if(m.language, breaks(*v.dye) == Breaks::no, "breaking.known not");
                  },
                  {"", "“breaks into” is an empty list", ""}),
        Row::text("dye.breaks.not_tried", "there only if nobody has tried",
                  [](const DyeView& v, const Manner& m) {
                      return only_if(m.language, breaks(*v.dye) == Breaks::not_tried, "breaking.not tried");
                  },
                  {"", "“breaks into” is not recorded", ""}),
        Row::list("dye.components", "the colours it breaks into", component_vocabulary(), component_views),
        Row::text("dye.component_names", "the names of the colours it breaks into, where recorded",
                  [](const DyeView& v) { return component_names(*v.dye); },
                  {"", "those of “breaks into” that have names", ""}),
        Row::text("dye.speckle", "how it speckles, or that nobody has tried",
                  [](const DyeView& v, const Manner& m) { return speckle_words(m.language, v.dye->speckle); },
                  {"", "grade and spread of “speckle”", ""}),
        Row::text("dye.speckle.grade", "clean, soft, hazy or blotchy",
                  [](const DyeView& v, const Manner& m) -> Text {
                      if (!v.dye->speckle) return std::nullopt;
                      return words(m.language, v.dye->speckle->grade);
                  }),
        Row::text("dye.speckle.spread", "the width of a wetted speckle",
                  [](const DyeView& v, const Manner& m) -> Text {
                      if (!v.dye->speckle || !v.dye->speckle->spread) return std::nullopt;
                      return length_words(m.language, *v.dye->speckle->spread);
                  }),
        Row::text("dye.speckle.density", "how many speckles show on a square centimetre",
                  [](const DyeView& v, const Manner& m) -> Text {
                      if (!v.dye->speckle || !v.dye->speckle->density) return std::nullopt;
                      return density_words(m.language, *v.dye->speckle->density);
                  }),
        Row::speckles("dye.speckled",
                      "a picture of undyed yarn speckled with it; none where its spread is not recorded",
                      [](const DyeView& v, const Manner& m) { return speckled_dye(m.language, *v.records, *v.dye); },
                      {"", "spread, density and halos in true size, in the colour of the deepest swatch, on its base",
                       "which speck lies where: our own, from the dye's id; one in three whole: common practice"}),
        Row::text("dye.speckled.note", "what stands below that picture: on which base, and what of it is assumed",
                  [](const DyeView& v, const Manner& m) {
                      const auto note = speckled_note(m.language, *v.records, *v.dye);
                      return note ? Text{capitalised(*note)} : std::nullopt;
                  },
                  {"", "what is recorded of the yarn's colour and the density, and what is not", ""}),
        Row::text("dye.speckle.tried_on", "when that was tried, where known",
                  [](const DyeView& v, const Manner& m) -> Text {
                      if (!v.dye->speckle) return std::nullopt;
                      return short_date(m.language, v.dye->speckle->tried_on);
                  }),
        Row::text(
            "dye.speckle.not_tried", "there only if nobody has tried",
            [](const DyeView& v, const Manner& m) { return only_if(m.language, !v.dye->speckle, "speckle.not tried"); },
            {"", "“speckle” is not recorded", ""}),
        Row::text("dye.hazards", "codes of the supplier's sheet, or that there are none, or no data",
                  [](const DyeView& v, const Manner& m) { return hazards(m.language, v); }),
    };
}

std::vector<FactRow> swatch_rows() {
    using Row = Rows<DyeView>;
    return together({
        Row::patch("dye.swatch.deepest", "its deepest swatch",
                   [](const DyeView& v, const Manner& m) { return deepest_patch(m.language, *v.records, *v.dye); },
                   {"", "the greatest depth with a colour, else the greatest", ""}),
        Row::text("dye.swatch.deepest.label", "depth and base of that: 2 % on Plain Sock",
                  [](const DyeView& v, const Manner& m) -> Text {
                      const Swatch* swatch = deepest_swatch(*v.dye);
                      if (swatch == nullptr) return std::nullopt;
                      return label_words(m.language, *swatch, v.records->base(swatch->base.value));
                  },
                  {"", "depth and base of the deepest swatch", ""}),
        Row::text(
            "dye.deepest.stock", "how much 1 % stock dyes 100 g as deep as that",
            [](const DyeView& v, const Manner& m) -> Text {
                const Swatch* swatch = deepest_swatch(*v.dye);
                if (swatch == nullptr) return std::nullopt;
                return volume_words(m.language, stock_per_hundred_grams(swatch->depth));
            },
            from_one_percent_stock),
        Row::text("dye.swatch.count", "how many swatches there are",
                  [](const DyeView& v) { return std::to_string(v.dye->swatches.size()); }, {"", "counted", ""}),
        Row::text("dye.unswatched", "there only if there are no swatches",
                  [](const DyeView& v, const Manner& m) {
                      return only_if(m.language, v.dye->swatches.empty(), "dye.unswatched");
                  },
                  {"", "no swatches are recorded", ""}),
        Row::text("dye.date", "the last day it was swatched, where known",
                  [](const DyeView& v, const Manner& m) -> Text {
                      const auto date = last_swatched(v);
                      if (!date) return std::nullopt;
                      return short_date(m.language, *date);
                  },
                  {"", latest_of_swatches, ""}),
        date_rows<DyeView>("dye.date", last_swatched, latest_of_swatches),
        Row::text("dye.dates",
                  "when it was swatched, where known: a day, or the first to the last, and how many are undated",
                  known_dates, {"", "the first and the last of its swatches’ days", ""}),
        Row::list("dye.swatches", "its swatches, base by base, lightest first", swatch_vocabulary(),
                  [](const DyeView& v) { return swatch_views(v, swatches_in_order(*v.dye)); },
                  {"", "by base as first recorded, then lightest first", ""}),
        Row::list("dye.bases", "the bases it was swatched on, with the swatches on each", swatched_base_vocabulary(),
                  base_views, {"", "in the order of its swatches", ""}),
        Row::list("dye.depths", "its depths, lightest first, with a patch for each base", depth_vocabulary(),
                  depth_views, {"", "each depth once, lightest first", ""}),
        ramp_rows(),
    });
}

} // namespace

const Vocabulary& dye_vocabulary() {
    static const Vocabulary vocabulary{"dye", together({dye_identity_rows(), behaviour_rows(), swatch_rows(),
                                                        hazard_rows<DyeView>("dye", hazards_in)})};
    return vocabulary;
}

} // namespace dyeleaf
