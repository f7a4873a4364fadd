// A lot's recipe worked out for its own dry weight and its own pots.
#pragma once

#include "records/records.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace dyeleaf {

// What is weighed, and what is measured out.
using Amount = std::variant<Mass, Volume>;

struct WorkedLine {
    const RecipeLine* line = nullptr;
    const Dye* dye = nullptr;        // of a line that names a dye
    const Jar* jar = nullptr;        // of one that names a jar
    std::optional<Percent> strength; // of the jar's mix
    bool strength_estimated = false; // it rests on bulk densities, and so does the depth
    std::optional<Percent> depth;    // as the recipe wants it; of a jar, where its strength is known
    std::optional<Percent> result;   // as the rounded amounts give it
    std::vector<Amount> per_pot;     // rounded to what can be weighed or measured
    Amount total;                    // of all pots
};

struct WorkedAssistant {
    std::string name;
    std::vector<Amount> per_pot;
    Amount total;
    std::optional<Volume> as_vinegar; // of 5 %, where it is citric acid
};

struct WorkedRecipe {
    std::vector<int> pots; // skeins in each, at least one pot
    Mass dry_weight;
    bool weighed = false; // or else so many skeins of their nominal weight
    std::vector<WorkedLine> lines;
    std::optional<Percent> depth; // of all lines together, where it is known of each
    bool depth_estimated = false;
    std::optional<Volume> bath;
    std::vector<Volume> bath_per_pot; // as many as there are pots, where there is a bath
    std::vector<WorkedAssistant> acid;
};

// The view is on `records` and `lot`, which must outlive it. Amounts are shared out by skeins, since nobody weighs
// each.
WorkedRecipe worked_recipe(const Records& records, const Lot& lot);

// All its skeins at the weights that their tags state.
Mass nominal_weight(const Records& records, const Lot& lot);

// The dyes that went into a lot, each once: those it names, those of its recipe, and those in its recipe's jars.
std::vector<const Dye*> dyes_in(const Records& records, const Lot& lot);

} // namespace dyeleaf
