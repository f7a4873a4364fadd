#include "facts/recipe.h"

#include "base/overloaded.h"
#include "base/words.h"
#include "facts/dye_bench.h"
#include "facts/jar_contents.h"
#include "facts/mix.h"
#include "facts/pots.h"
#include "facts/rounding.h"
#include "facts/skein_size.h"
#include "facts/stock_solution.h"

#include <algorithm>

namespace dyeleaf {

namespace {

Amount operator+(const Amount& a, const Amount& b) {
    if (const Mass* mass = std::get_if<Mass>(&a)) return *mass + std::get<Mass>(b);
    return std::get<Volume>(a) + std::get<Volume>(b);
}

Amount operator*(const Amount& amount, double share) {
    return std::visit([&](const auto& one) { return Amount{one * share}; }, amount);
}

Amount rounded(const Amount& amount, Mass step) {
    return std::visit(Overloaded{[&](Mass mass) { return Amount{rounded_to(mass, step)}; },
                                 [](Volume volume) { return Amount{measurable(volume)}; }},
                      amount);
}

double ratio(const Amount& a, const Amount& b) {
    if (const Mass* mass = std::get_if<Mass>(&a)) return *mass / std::get<Mass>(b);
    return std::get<Volume>(a) / std::get<Volume>(b);
}

struct Portions {
    std::vector<Amount> per_pot;
    Amount total;
};

Portions portions(const Amount& exact, const std::vector<int>& pots, int skeins, Mass step) {
    Portions result;
    for (const int pot : pots) {
        const Amount portion = rounded(exact * (static_cast<double>(pot) / skeins), step);
        result.total = result.per_pot.empty() ? portion : result.total + portion;
        result.per_pot.push_back(portion);
    }
    return result;
}

Amount amount_of(const DyeLine& line, Mass fibre) {
    return std::visit(Overloaded{[&](Powder) { return Amount{dye_for(fibre, line.depth)}; },
                                 [&](WeightInVolume stock) { return Amount{stock_volume(fibre, line.depth, stock)}; },
                                 [&](WeightInWeight stock) { return Amount{stock_mass(fibre, line.depth, stock)}; }},
                      line.from);
}

bool is_citric(const std::string& name) {
    const std::string lower = lower_case(name);
    return lower == "citric acid" || lower == "anhydrous citric acid" || lower == "citric acid, anhydrous";
}

Amount amount_of(const Assistant& assistant, Mass fibre) {
    return std::visit(Overloaded{[&](Percent share) { return Amount{dye_for(fibre, share)}; },
                                 [&](PerHundredGrams per) { return Amount{per.volume * (fibre / grams(100))}; }},
                      assistant.amount);
}

class Bench {
  public:
    Bench(const Records& records, const Lot& lot) : records_(records), lot_(lot) {
        const std::vector<int> pots = pots_of(lot);
        result_.pots = pots.empty() ? std::vector{lot.skeins} : pots;
        result_.weighed = lot.recipe.dry_weight.has_value();
        result_.dry_weight = lot.recipe.dry_weight.value_or(nominal_weight(records, lot));
    }

    WorkedRecipe work() && {
        Percent depth;
        bool all_known = !lot_.recipe.lines.empty();
        for (const RecipeLine& line : lot_.recipe.lines) {
            result_.lines.push_back(worked(line));
            all_known = all_known && result_.lines.back().depth.has_value();
            depth = depth + result_.lines.back().depth.value_or(Percent{});
            result_.depth_estimated = result_.depth_estimated || result_.lines.back().strength_estimated;
        }
        if (all_known) result_.depth = depth;
        if (lot_.recipe.liquor) add_bath(*lot_.recipe.liquor);
        for (const Assistant& assistant : lot_.recipe.acid)
            result_.acid.push_back(worked(assistant));
        return std::move(result_);
    }

  private:
    [[nodiscard]] Portions share_out(const Amount& exact) const {
        return portions(exact, result_.pots, lot_.skeins, records_.studio.scale_step);
    }

    [[nodiscard]] WorkedLine worked(const RecipeLine& line) const {
        WorkedLine result;
        result.line = &line;
        std::visit(Overloaded{[&](const DyeLine& dye) { add_dye(dye, result); },
                              [&](const JarLine& jar) { add_jar(jar, result); }},
                   line.what);
        return result;
    }

    void add_dye(const DyeLine& line, WorkedLine& result) const {
        result.dye = &records_.dye(line.dye.value);
        result.depth = line.depth;
        const Amount exact = amount_of(line, result_.dry_weight);
        auto [per_pot, total] = share_out(exact);
        result.per_pot = std::move(per_pot);
        result.total = total;
        result.result = line.depth * ratio(total, exact);
    }

    // So much to each skein, whatever it weighs.
    void add_jar(const JarLine& line, WorkedLine& result) const {
        result.jar = &records_.jar(line.jar.value);
        const Mix mix = mix_of(records_, *result.jar);
        result.strength = line.strength ? line.strength : mix.strength;
        result.strength_estimated = !line.strength && mix.shares_estimated;
        const Mass total = line.per_skein * lot_.skeins;
        for (const int pot : result_.pots)
            result.per_pot.emplace_back(line.per_skein * pot);
        result.total = total;
        if (!result.strength) return;
        result.depth = result.result = depth_of(dye_in(total, *result.strength), result_.dry_weight);
    }

    void add_bath(LiquorRatio liquor) {
        result_.bath = bath_for(result_.dry_weight, liquor);
        for (const int pot : result_.pots)
            result_.bath_per_pot.push_back(*result_.bath * (static_cast<double>(pot) / lot_.skeins));
    }

    [[nodiscard]] WorkedAssistant worked(const Assistant& assistant) const {
        auto [per_pot, total] = share_out(amount_of(assistant, result_.dry_weight));
        WorkedAssistant result{assistant.name, std::move(per_pot), total, {}};
        const Mass* mass = std::get_if<Mass>(&total);
        if (mass != nullptr && is_citric(assistant.name)) result.as_vinegar = vinegar_for(*mass);
        return result;
    }

    const Records& records_;
    const Lot& lot_;
    WorkedRecipe result_;
};

} // namespace

WorkedRecipe worked_recipe(const Records& records, const Lot& lot) {
    return Bench{records, lot}.work();
}

Mass nominal_weight(const Records& records, const Lot& lot) {
    Mass sum;
    for (int number = 1; number <= lot.skeins; ++number)
        sum = sum + skein_size(records.base(lot.base.value), lot, number).mass.value;
    return sum;
}

std::vector<const Dye*> dyes_in(const Records& records, const Lot& lot) {
    std::vector<const Dye*> dyes;
    const auto add = [&](const std::string& id) {
        const Dye* dye = &records.dye(id);
        if (std::ranges::find(dyes, dye) == dyes.end()) dyes.push_back(dye);
    };
    for (const Id& id : lot.dyes)
        add(id.value);
    for (const RecipeLine& line : lot.recipe.lines) {
        if (const auto* dye = std::get_if<DyeLine>(&line.what)) {
            add(dye->dye.value);
            continue;
        }
        for (const Part& part : records.jar(std::get<JarLine>(line.what).jar.value).parts) {
            if (part.is_dye) add(part.id.value);
        }
    }
    return dyes;
}

} // namespace dyeleaf
