#include "facts/recipe_facts.h"

#include "facts/hazard_facts.h"
#include "facts/names.h"
#include "facts/recipe.h"
#include "facts/recipe_lists.h"
#include "facts/recipe_wording.h"
#include "facts/rounding.h"
#include "facts/rows.h"
#include "facts/wording.h"
#include "facts/yarn_facts.h"

#include <algorithm>
#include <iterator>

namespace dyeleaf {

namespace {

using Text = std::optional<std::string>;
using Row = Rows<LotView>;

std::vector<FactRow> bench_rows() {
    return {
        Row::list("lot.recipe", "the lines of its recipe, in order", line_vocabulary(), recipe_lines),
        Row::text("lot.depth", "all dye on the dry weight, where it is known of every line",
                  [](const LotView& v, const Manner& m) -> Text {
                      const WorkedRecipe recipe = worked_recipe(v);
                      if (!recipe.depth) return std::nullopt;
                      const std::string depth = strength_words(m.language, *recipe.depth);
                      return recipe.depth_estimated ? about(depth) : depth;
                  },
                  {"%", "the depths together, to two significant figures", "arithmetic"}),
        Row::text("lot.dry_weight", "as weighed, or so many skeins of their nominal weight",
                  [](const LotView& v, const Manner& m) {
                      const WorkedRecipe recipe = worked_recipe(v);
                      const Mass stated =
                          recipe.weighed ? recipe.dry_weight : rounded_to(recipe.dry_weight, nominal_step);
                      return mass_words(m.language, stated);
                  },
                  {"g", "as recorded, or the nominal weights of its skeins together, to 0.1 g", "arithmetic"}),
        Row::text("lot.dry_weight.basis", "which of the two it is",
                  [](const LotView& v, const Manner& m) {
                      return m.language.say(worked_recipe(v).weighed ? "bench.weighed" : "bench.nominal");
                  }),
        Row::text("lot.water", "the whole bath, stock solutions among it",
                  [](const LotView& v, const Manner& m) -> Text {
                      const auto bath = worked_recipe(v).bath;
                      if (!bath) return std::nullopt;
                      return bath_words(m.language, *bath);
                  },
                  {"L", "W × n / 1000", "the textbook rule for liquor ratios"}),
        Row::text("lot.liquor", "fibre to water: 1 : 30",
                  [](const LotView& v, const Manner& m) -> Text {
                      if (!v.lot->recipe.liquor) return std::nullopt;
                      return liquor_words(m.language, *v.lot->recipe.liquor);
                  }),
        Row::list("lot.acid", "what goes into the bath beside dye", acid_vocabulary(), recipe_acid),
        Row::list("lot.pots", "its pots, where there are several", pot_vocabulary(), recipe_pots),
        Row::list("lot.steps", "what is done, in order", step_vocabulary(), recipe_steps),
        Row::text("lot.skeins.text", "how many skeins, in words: 12 skeins",
                  [](const LotView& v, const Manner& m) { return skeins_words(m.language, v.lot->skeins); }),
    };
}

HazardSummary hazards(const LotView& view) {
    std::vector<HazardSource> sources;
    for (const Dye* dye : dyes_in(*view.records, *view.lot))
        sources.push_back({distinct_name(*view.records, *dye), dye->hazards});
    return summarise(sources);
}

StatementWording wording(const LotView& view) {
    return statement_wording(view.records->studio.market);
}

bool names_a_dye(const LotView& view) {
    return !dyes_in(*view.records, *view.lot).empty();
}

FactRow always(std::string name, std::string meaning, std::string_view key) {
    return Row::text(std::move(name), std::move(meaning),
                     [key](const LotView&, const Manner& m) { return m.language.say(key); });
}

std::vector<FactRow> caution_rows() {
    return {
        always("caution.dust", "not to breathe the dust", "caution.dust"),
        always("caution.dust.short", "the same, brief", "caution.dust brief"),
        Row::text(
            "caution.signal", "the signal word of all its dyes' codes, where they have one",
            [](const LotView& v, const Manner& m) -> Text {
                const auto signal = hazards(v).label.signal;
                if (!signal) return std::nullopt;
                return signal_words(m.language, *signal);
            },
            from_sheet),
        Row::text(
            "caution.statements", "what the suppliers' sheets of all its dyes say, or that there are no data",
            [](const LotView& v, const Manner& m) -> Text {
                if (!names_a_dye(v)) return std::nullopt;
                return unsigned_hazard_words(m.language, wording(v), hazards(v));
            },
            worded),
        Row::text(
            "caution.hazards", "signal word and statements",
            [](const LotView& v, const Manner& m) -> Text {
                if (!names_a_dye(v)) return std::nullopt;
                return hazard_words(m.language, wording(v), hazards(v));
            },
            worded),
        Row::text(
            "caution.hazards.short", "signal word and codes",
            [](const LotView& v, const Manner& m) -> Text {
                if (!names_a_dye(v)) return std::nullopt;
                return hazard_words_brief(m.language, hazards(v));
            },
            from_sheet),
        always("caution.bench", "how to keep powder off the bench and out of the air", "caution.bench"),
        always("caution.bath", "that the bath is hot and sour", "caution.bath"),
    };
}

} // namespace

const Vocabulary& recipe_vocabulary() {
    static const Vocabulary vocabulary = [] {
        Vocabulary recipe{"recipe", bench_rows()};
        std::ranges::move(caution_rows(), std::back_inserter(recipe.rows));
        return recipe;
    }();
    return vocabulary;
}

} // namespace dyeleaf
