// The lists that the sheet of a lot goes through: lines of its recipe, acid, pots, steps.
#pragma once

#include "facts/facts.h"
#include "facts/recipe.h"
#include "facts/yarn_view.h"

#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

struct LineView {
    LotView of;
    WorkedLine line;
};
const Vocabulary& line_vocabulary();
std::vector<LineView> recipe_lines(const LotView& lot);

struct AcidView {
    Assistant recorded;
    WorkedAssistant worked;
};
const Vocabulary& acid_vocabulary();
std::vector<AcidView> recipe_acid(const LotView& lot);

struct PotView {
    int pot = 0; // from 0
    int first = 1, skeins = 1;
    std::optional<Volume> bath;
};
const Vocabulary& pot_vocabulary();
// None where there is but one.
std::vector<PotView> recipe_pots(const LotView& lot);

struct Step {
    int number = 1;
    std::string text;
};
const Vocabulary& step_vocabulary();
std::vector<Step> recipe_steps(const LotView& lot);

WorkedRecipe worked_recipe(const LotView& lot);

} // namespace dyeleaf
