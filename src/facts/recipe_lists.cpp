#include "facts/recipe_lists.h"

#include "facts/dyes_in.h"
#include "facts/names.h"
#include "facts/palette.h"
#include "facts/recipe_wording.h"
#include "facts/rows.h"
#include "facts/wording.h"

namespace dyeleaf {

namespace {

using Text = std::optional<std::string>;

constexpr const char* rounded_to_scale = "of the dry weight, shared out by skeins, rounded to what can be weighed";

// --- what goes into one pot ---

struct Portion {
    int pot = 0; // from 0
    Amount amount;
};

const Vocabulary& portion_vocabulary() {
    using Row = Rows<Portion>;
    static const Vocabulary vocabulary{
        "pot",
        {
            Row::text("pot.letter", "the pot's letter", [](const Portion& v) { return pot_letters(v.pot); },
                      {"", "pots in order", ""}),
            Row::text("pot.amount", "what goes into it",
                      [](const Portion& v, const Manner& m) { return amount_words(m.language, v.amount); },
                      {"g or mL", rounded_to_scale, "arithmetic"}),
        }};
    return vocabulary;
}

// Nothing where there is one pot: the total says it.
std::vector<Portion> portions(const std::vector<Amount>& per_pot) {
    std::vector<Portion> result;
    if (per_pot.size() < 2) return result;
    for (std::size_t pot = 0; pot < per_pot.size(); ++pot)
        result.push_back({static_cast<int>(pot), per_pot[pot]});
    return result;
}

// --- lines of the recipe ---

// As in the lot's palette; of a jar, its first dye.
Patch line_patch(const LineView& view, const Manner& manner) {
    const Dye* dye = view.line.dye != nullptr ? view.line.dye : dyes_in(*view.of.records, *view.line.jar).front();
    return palette_patch(manner.language, {view.of, dye, view.line.dye != nullptr ? view.line.depth : std::nullopt});
}

} // namespace

const Vocabulary& line_vocabulary() {
    using Row = Rows<LineView>;
    static const Vocabulary vocabulary{
        "line of a recipe",
        {
            Row::text("line.name", "the dye, or the jar",
                      [](const LineView& v) {
                          return v.line.dye != nullptr ? distinct_name(*v.of.records, *v.line.dye)
                                                       : jar_name(*v.of.records, *v.line.jar);
                      }),
            Row::text("line.code", "its short code",
                      [](const LineView& v) { return v.line.dye != nullptr ? v.line.dye->code : v.line.jar->code; }),
            Row::text("line.depth", "dye on dry weight; of a jar, where its strength is known",
                      [](const LineView& v, const Manner& m) { return depth_words(m.language, v.line); },
                      {"%", "as recorded; of a jar, its dye on the dry weight", "arithmetic"}),
            Row::text("line.from", "powder, the stock and how strong it is, or so much a skein from the jar",
                      [](const LineView& v, const Manner& m) { return source_words(m.language, v.line); }),
            Row::text("line.amount", "how much of it, for all pots together",
                      [](const LineView& v, const Manner& m) { return amount_words(m.language, v.line.total); },
                      {"g or mL", rounded_to_scale, "mL = W × P / C, the textbook rule for dyeing recipes"}),
            Row::list("line.pots", "the same pot by pot, where there are several", portion_vocabulary(),
                      [](const LineView& v) { return portions(v.line.per_pot); }),
            Row::text("line.result", "there only if rounding changes the depth: what it comes to",
                      [](const LineView& v, const Manner& m) { return result_words(m.language, v.line); },
                      {"%", "the rounded amounts on the dry weight", "arithmetic"}),
            Row::text("line.note", "the dyer's note to this line", [](const LineView& v) { return v.line.line->note; }),
            Row::patch("line.patch", "its colour, as in lot.palette; of a jar, its first dye's", line_patch),
        }};
    return vocabulary;
}

std::vector<LineView> recipe_lines(const LotView& view) {
    std::vector<LineView> result;
    for (WorkedLine& line : worked_recipe(view).lines)
        result.push_back({view, std::move(line)});
    return result;
}

// --- acid ---

const Vocabulary& acid_vocabulary() {
    using Row = Rows<AcidView>;
    static const Vocabulary vocabulary{
        "acid",
        {
            Row::text("acid.name", "its name", [](const AcidView& v) { return capitalised(v.recorded.name); }),
            Row::text("acid.share", "of the dry weight",
                      [](const AcidView& v, const Manner& m) { return share_words(m.language, v.recorded); }),
            Row::text("acid.amount", "how much of it, for all pots together",
                      [](const AcidView& v, const Manner& m) { return amount_words(m.language, v.worked.total); },
                      {"g or mL", rounded_to_scale, "arithmetic"}),
            Row::list("acid.pots", "the same pot by pot, where there are several", portion_vocabulary(),
                      [](const AcidView& v) { return portions(v.worked.per_pot); }),
            Row::text("acid.vinegar", "of citric acid: how much vinegar of 5 % holds as much acid",
                      [](const AcidView& v, const Manner& m) -> Text {
                          if (!v.worked.as_vinegar) return std::nullopt;
                          const std::string volume = bath_words(m.language, *v.worked.as_vinegar);
                          return m.language.say("bench.as vinegar", {{"volume", volume}});
                      },
                      {"mL", "18.75 mL for 1 g: three protons to one; not the same pH", "molar masses (IUPAC)"}),
        }};
    return vocabulary;
}

std::vector<AcidView> recipe_acid(const LotView& view) {
    const WorkedRecipe recipe = worked_recipe(view);
    std::vector<AcidView> result;
    for (std::size_t i = 0; i < recipe.acid.size(); ++i)
        result.push_back({view.lot->recipe.acid[i], recipe.acid[i]});
    return result;
}

// --- pots ---

const Vocabulary& pot_vocabulary() {
    using Row = Rows<PotView>;
    static const Vocabulary vocabulary{
        "pot",
        {
            Row::text("pot.letter", "its letter", [](const PotView& v) { return pot_letters(v.pot); },
                      {"", "pots in order", ""}),
            Row::text("pot.name", "the same in words: Pot A",
                      [](const PotView& v, const Manner& m) { return pot_words(m.language, v.pot); },
                      {"", "pots in order", ""}),
            Row::text("pot.skeins", "how many skeins it holds: 4 skeins",
                      [](const PotView& v, const Manner& m) { return skeins_words(m.language, v.skeins); },
                      {"", "as recorded, or split evenly", "common practice"}),
            Row::text("pot.numbers", "the numbers of its skeins: 5–8",
                      [](const PotView& v) { return numbers_words(v.first, v.first + v.skeins - 1); },
                      {"", "counted through the pots", ""}),
            Row::text("pot.water", "its share of the bath",
                      [](const PotView& v, const Manner& m) -> Text {
                          if (!v.bath) return std::nullopt;
                          return bath_words(m.language, *v.bath);
                      },
                      {"L", "of the bath, shared out by skeins", "arithmetic"}),
        }};
    return vocabulary;
}

std::vector<PotView> recipe_pots(const LotView& view) {
    const WorkedRecipe recipe = worked_recipe(view);
    std::vector<PotView> result;
    if (recipe.pots.size() < 2) return result;
    int first = 1;
    for (std::size_t i = 0; i < recipe.pots.size(); ++i) {
        PotView pot{static_cast<int>(i), first, recipe.pots[i], {}};
        if (recipe.bath) pot.bath = recipe.bath_per_pot[i];
        result.push_back(pot);
        first += recipe.pots[i];
    }
    return result;
}

const Vocabulary& step_vocabulary() {
    using Row = Rows<Step>;
    static const Vocabulary vocabulary{
        "step",
        {Row::text("step.number", "its number", [](const Step& step) { return std::to_string(step.number); }),
         Row::text("step.text", "what is done", [](const Step& step) { return step.text; })}};
    return vocabulary;
}

std::vector<Step> recipe_steps(const LotView& view) {
    std::vector<Step> result;
    for (const std::string& text : view.lot->recipe.steps)
        result.push_back({static_cast<int>(result.size()) + 1, text});
    return result;
}

WorkedRecipe worked_recipe(const LotView& lot) {
    return worked_recipe(*lot.records, *lot.lot);
}

} // namespace dyeleaf
