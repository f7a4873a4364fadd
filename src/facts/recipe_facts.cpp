#include "facts/recipe_facts.h"

#include "facts/hazard_facts.h"
#include "facts/recipe.h"
#include "facts/recipe_lists.h"
#include "facts/recipe_wording.h"
#include "facts/rounding.h"
#include "facts/rows.h"
#include "facts/wording.h"
#include "facts/yarn_view.h"

namespace dyeleaf {

namespace {

using Text = std::optional<std::string>;
std::vector<FactRow> bench_rows() {
    using Row = Rows<LotView>;
    return {
        Row::list("lot.recipe", "the lines of its recipe, in order", line_vocabulary(), recipe_lines),
        Row::text("lot.depth", "all dye on the dry weight, where it is known of every line",
                  [](const LotView& v, const Manner& m) -> Text {
                      const WorkedRecipe recipe = worked_recipe(v);
                      if (!recipe.depth) return std::nullopt;
                      const std::string depth = strength_words(m.language, *recipe.depth);
                      return about_if(recipe.depth_estimated, depth);
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

HazardSummary hazards_in(const LotView& view) {
    return hazards_of(*view.records, *view.lot);
}

std::vector<FactRow> recipe_caution_rows() {
    using Row = Rows<LotView>;
    return {
        Row::phrase("caution.dust", "not to breathe the dust", "caution.dust"),
        Row::phrase("caution.dust.short", "the same, brief", "caution.dust brief"),
        Row::phrase("caution.bench", "how to keep powder off the bench and out of the air", "caution.bench"),
        Row::phrase("caution.bath", "that the bath is hot and sour", "caution.bath"),
    };
}

} // namespace

const Vocabulary& recipe_vocabulary() {
    static const Vocabulary vocabulary{
        "recipe", together({bench_rows(), recipe_caution_rows(), sheet_caution_rows<LotView>(hazards_in)})};
    return vocabulary;
}

} // namespace dyeleaf
