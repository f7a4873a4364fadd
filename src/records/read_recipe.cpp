#include "records/read_recipe.h"

#include "base/number.h"
#include "records/read_fields.h"
#include "records/read_values.h"

#include <algorithm>

namespace dyeleaf {

namespace {

constexpr Range<Percent> any_depth = {percent(0.0001), percent(20)};

const std::string how_to_write_a_line =
    "write {dye: sloe, depth: 1.5 %}, or {jar: sloe-shaker, per skein: 1.5 g} for a mix that is shaken on";

// `node` without these words at its end; nothing where it does not end so.
std::optional<Node> without_ending(const Node& node, std::string_view words) {
    const std::string_view text = trimmed(node.text);
    if (!lower_case(text).ends_with(lower_case(words))) return std::nullopt;
    Node rest = node;
    rest.text = std::string{trimmed(text.substr(0, text.size() - words.size()))};
    return rest;
}

// "1 %" and "1 g in 100 mL" are weight in volume; "1 % by weight" and "1 g in 100 g" are weighed out.
std::optional<DyeForm> read_form(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    constexpr double weakest = 0.001;
    constexpr double strongest = 50;
    if (node.text.find(':') != std::string::npos) {
        diagnostics.error(node.spot, in_quotes(shortened(node.text, 40)) + " does not say how strong the stock is",
                          "write from stock: 1 % for 1 g of dye made up to 100 mL, or 1 % by weight for 1 g in 100 g");
        return std::nullopt;
    }
    const auto percents = [&](const Node& figure) {
        return read_percent(figure, what, {percent(weakest), percent(strongest)}, diagnostics);
    };
    const auto grams_in_hundred = [&](const Node& figure) -> std::optional<Percent> {
        const auto mass = read_mass(figure, what, {grams(weakest), grams(strongest)}, diagnostics);
        return mass ? std::optional{percent(mass->number())} : std::nullopt;
    };
    std::optional<Percent> strength;
    bool by_weight = false;
    if (const auto in_volume = without_ending(node, "in 100 mL")) {
        strength = grams_in_hundred(*in_volume);
    } else if (const auto in_weight = without_ending(node, "in 100 g")) {
        strength = grams_in_hundred(*in_weight);
        by_weight = true;
    } else if (const auto weighed = without_ending(node, "by weight")) {
        strength = percents(*weighed);
        by_weight = true;
    } else {
        strength = percents(without_ending(node, "by volume").value_or(node));
    }
    if (!strength) return std::nullopt;
    return by_weight ? DyeForm{WeightInWeight{*strength}} : DyeForm{WeightInVolume{*strength}};
}

std::optional<RecipeLine> read_line(const Node& node, Diagnostics& diagnostics) {
    const auto has = [&](std::string_view key) {
        return std::ranges::find(node.entries(), key, &Entry::key) != node.entries().end();
    };
    if (node.kind != Node::Kind::map) {
        const std::string what = node.kind == Node::Kind::scalar ? in_quotes(shortened(node.text, 40)) : "this list";
        diagnostics.error(node.spot, what + " does not say how much of which dye or jar", how_to_write_a_line);
        return std::nullopt;
    }
    if (has("dye") == has("jar")) {
        diagnostics.error(node.spot,
                          has("dye") ? "this line of the recipe names a dye and a jar"
                                     : "this line of the recipe names neither a dye nor a jar",
                          how_to_write_a_line);
        return std::nullopt;
    }
    const bool from_jar = has("jar");
    Fields fields{node, from_jar ? "jar in a recipe" : "dye in a recipe", diagnostics};
    RecipeLine line;
    line.spot = node.spot;
    if (from_jar) {
        const auto jar = needed_field(fields, "jar", "jar: sloe-shaker", read_reference);
        const auto mass = within(read_mass, {grams(0.001), grams(1000)});
        const auto per_skein = needed_field(fields, "per skein", "per skein: 1.5 g", mass);
        const auto strength = optional_field(fields, "strength", within(read_percent, {percent(0.001), percent(100)}));
        line.note = optional_field(fields, "note", read_name);
        fields.refuse_the_rest();
        if (!jar || !per_skein) return std::nullopt;
        line.what = JarLine{*jar, *per_skein, strength};
        return line;
    }
    const auto dye = needed_field(fields, "dye", "dye: sloe", read_reference);
    const auto depth = needed_field(fields, "depth", "depth: 1.5 %", within(read_percent, any_depth));
    const auto stock = optional_field(fields, "from stock", read_form);
    line.note = optional_field(fields, "note", read_name);
    fields.refuse_the_rest();
    if (!dye || !depth) return std::nullopt;
    line.what = DyeLine{*dye, *depth, stock.value_or(Powder{})};
    return line;
}

std::optional<std::vector<RecipeLine>> read_recipe_lines(const Node& node, const std::string& what,
                                                         Diagnostics& diagnostics) {
    std::vector<RecipeLine> lines;
    for (const Node& one : read_list(node, what, "recipe: [{dye: sloe, depth: 1.5 %}]", diagnostics)) {
        if (auto line = read_line(one, diagnostics)) lines.push_back(std::move(*line));
    }
    return lines;
}

// "30", "1:30" or "30:1": there is always more water than yarn.
std::optional<LiquorRatio> read_liquor(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    const auto text = read_word(node, what, diagnostics);
    if (!text) return std::nullopt;
    std::string water = *text;
    std::erase(water, ' ');
    if (water.starts_with("1:")) {
        water.erase(0, 2);
    } else if (water.ends_with(":1")) {
        water.erase(water.size() - 2);
    }
    const auto ratio = parse_decimal(water);
    if (ratio && *ratio >= 2 && *ratio <= 500) return LiquorRatio{*ratio};
    diagnostics.error(node.spot, in_quotes(shortened(*text, 40)) + " is not how much water there is to the yarn",
                      "write how many parts of water to one of dry yarn, from 2 to 500, as in liquor: 30");
    return std::nullopt;
}

std::optional<Assistant> read_assistant(const Entry& entry, Diagnostics& diagnostics) {
    const std::string as_share = entry.key + ": 3 %";
    const std::string forms = "write " + as_share + ", a share of the dry weight, or " + entry.key +
                              ": 50 mL per 100 g, for each 100 g of dry fibre";
    const Node& figure = entry.value;
    if (figure.kind == Node::Kind::nothing) {
        diagnostics.error(entry.key_spot, "nothing stands after " + in_quotes(entry.key), forms);
        return std::nullopt;
    }
    if (const auto per_hundred = without_ending(figure, "per 100 g")) {
        if (per_hundred->text.ends_with('g')) { // so many grams to 100 g are a share
            const auto mass = read_mass(*per_hundred, entry.key, {grams(0.01), grams(200)}, diagnostics);
            return mass ? std::optional{Assistant{entry.key, percent(mass->number())}} : std::nullopt;
        }
        const auto volume = read_volume(*per_hundred, entry.key, {millilitres(0.01), millilitres(10000)}, diagnostics);
        if (!volume) return std::nullopt;
        return Assistant{entry.key, PerHundredGrams{*volume}};
    }
    const std::string_view text = trimmed(figure.text);
    if (figure.kind == Node::Kind::scalar && !text.empty() && !text.ends_with('%')) {
        diagnostics.error(figure.spot, in_quotes(shortened(text, 40)) + " does not say of how much fibre", forms);
        return std::nullopt;
    }
    const auto share = read_percent(figure, entry.key, {percent(0.01), percent(200)}, diagnostics);
    return share ? std::optional{Assistant{entry.key, *share}} : std::nullopt;
}

std::optional<std::vector<Assistant>> read_acid(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    std::vector<Assistant> all;
    if (node.kind != Node::Kind::map) {
        const bool text = node.kind == Node::Kind::scalar;
        diagnostics.error(node.spot,
                          text ? in_quotes(shortened(trimmed(node.text), 40)) + " does not say which " + what
                               : "each " + what + " has its name and its share",
                          "write acid: {citric acid: 3 %}");
        return all;
    }
    for (const Entry& entry : node.entries()) {
        if (auto one = read_assistant(entry, diagnostics)) all.push_back(std::move(*one));
    }
    return all;
}

std::optional<std::vector<std::string>> read_steps(const Node& node, const std::string& what,
                                                   Diagnostics& diagnostics) {
    std::vector<std::string> steps;
    for (const Node& one : read_list(node, what, "steps: [soak 2 h with the acid, heat to 85 °C]", diagnostics)) {
        if (auto step = read_name(one, what, diagnostics)) steps.push_back(std::move(*step));
    }
    return steps;
}

} // namespace

Recipe read_recipe(Fields& lot) {
    Recipe recipe;
    recipe.lines = optional_field(lot, "recipe", read_recipe_lines).value_or(std::vector<RecipeLine>{});
    recipe.dry_weight = optional_field(lot, "dry weight", within(read_mass, {grams(1), grams(100'000)}));
    recipe.liquor = optional_field(lot, "liquor", read_liquor);
    recipe.acid = optional_field(lot, "acid", read_acid).value_or(std::vector<Assistant>{});
    recipe.pot_holds = optional_field(lot, "pot holds", within(read_whole, {1, 1000}));
    recipe.steps = optional_field(lot, "steps", read_steps).value_or(std::vector<std::string>{});
    if (lot.has("pots") && lot.has("pot holds")) {
        lot.diagnostics().error(lot.node().spot, "this lot gives its pots twice: “pots” and “pot holds”",
                                "“pots” says how many skeins went into each, “pot holds” lets them be split evenly; "
                                "keep one of the two");
    }
    return recipe;
}

} // namespace dyeleaf
