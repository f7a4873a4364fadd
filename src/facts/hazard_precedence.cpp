#include "facts/hazard_precedence.h"

#include <algorithm>
#include <array>
#include <string_view>
#include <tuple>
#include <utility>

namespace dyeleaf {

namespace {

// H codes, then EUH codes. Two that the sheets word differently are two.
auto place(const Hazard& hazard) {
    return std::tuple{hazard.code.starts_with("EUH"), std::string_view{hazard.code}, hazard.says};
}
auto place(const Precaution& precaution) {
    return std::tuple{std::string_view{precaution.code}, precaution.says};
}

// "+H302+H312+": so that a part is found as a whole.
std::string fenced(std::string_view code) {
    return "+" + std::string{code} + "+";
}

bool is_part_of(std::string_view code, std::string_view combination) {
    return code.size() < combination.size() && fenced(combination).find(fenced(code)) != std::string::npos;
}

struct Superseding {
    std::string_view graver, lesser;
};
// CLP, annex I, note to table 3.3.5: H314 says what H318 and H319 say. UN GHS, annex 3, section 1 (from memory): H400,
// H401 and H402 may be left out beside H410, H411 and H412.
constexpr std::array superseding = {Superseding{"H314", "H318"}, Superseding{"H314", "H319"},
                                    Superseding{"H410", "H400"}, Superseding{"H411", "H401"},
                                    Superseding{"H412", "H402"}};

template <class Statement> bool has(const std::vector<Statement>& statements, std::string_view code) {
    return std::ranges::find(statements, code, &Statement::code) != statements.end();
}

// CLP, articles 27 and 28(1): what repeats another statement is left out. What a sheet says in words of its own may say
// more than the published combination, and stays.
template <class Statement> void drop_parts_of_combinations(std::vector<Statement>& statements) {
    const std::vector<Statement> all = statements;
    std::erase_if(statements, [&](const Statement& one) {
        return !one.says &&
               std::ranges::any_of(all, [&](const Statement& other) { return is_part_of(one.code, other.code); });
    });
}

template <class Statement> std::vector<Statement> in_order(std::vector<Statement> statements) {
    std::ranges::stable_sort(statements, [](const auto& a, const auto& b) { return place(a) < place(b); });
    const auto same = [](const auto& a, const auto& b) { return place(a) == place(b); };
    statements.erase(std::unique(statements.begin(), statements.end(), same), statements.end());
    return statements;
}

using Codes = std::vector<std::string_view>;
const Codes skin_or_eye_irritation = {"H315", "H319", "H315+H320"};
const Codes skin_sensitisation = {"H317"};

bool is_one_of(const Hazard& hazard, const Codes& codes) {
    return std::ranges::find(codes, hazard.code) != codes.end();
}

bool shows(const Hazard& hazard, Pictogram pictogram) {
    const HazardClass& shown = class_of(hazard);
    return shown.first == pictogram || shown.second == pictogram;
}

// Whether any of these asks for an exclamation mark that CLP, article 26(1)(b) to (d), leaves standing. What the
// article makes optional (GHS02 and GHS03 beside GHS01, GHS04 beside GHS02 or GHS06) stays as well.
bool keeps_exclamation_mark(const std::vector<Hazard>& hazards) {
    const auto any_shows = [&](Pictogram pictogram) {
        return std::ranges::any_of(hazards, [&](const Hazard& one) { return shows(one, pictogram); });
    };
    if (any_shows(Pictogram::ghs06)) return false;
    const bool respiratory = has(hazards, "H334");
    const bool irritation_goes = respiratory || any_shows(Pictogram::ghs05);
    return std::ranges::any_of(hazards, [&](const Hazard& one) {
        if (!shows(one, Pictogram::ghs07)) return false;
        if (irritation_goes && is_one_of(one, skin_or_eye_irritation)) return false;
        return !(respiratory && is_one_of(one, skin_sensitisation));
    });
}

std::vector<Pictogram> pictograms_of(const std::vector<Hazard>& hazards) {
    std::vector<std::pair<bool, Pictogram>> marks; // whether only a lesser class asks for it
    for (const Hazard& hazard : hazards) {
        const HazardClass& one = class_of(hazard);
        for (const Pictogram pictogram : {one.first, one.second}) {
            if (pictogram != Pictogram::none) marks.emplace_back(one.signal != SignalWord::danger, pictogram);
        }
    }
    std::ranges::sort(marks);
    std::vector<Pictogram> pictograms;
    for (const auto& [lesser, pictogram] : marks) {
        const bool goes = pictogram == Pictogram::ghs07 && !keeps_exclamation_mark(hazards);
        if (!goes && std::ranges::find(pictograms, pictogram) == pictograms.end()) pictograms.push_back(pictogram);
    }
    return pictograms;
}

// CLP, article 20(3): beside Danger there is no Warning.
std::optional<SignalWord> signal_of(const std::vector<Hazard>& hazards) {
    std::optional<SignalWord> gravest;
    for (const Hazard& hazard : hazards)
        gravest = std::max(gravest, class_of(hazard).signal);
    return gravest;
}

} // namespace

const HazardClass& class_of(const Hazard& hazard) {
    const auto classes = classes_of(hazard.code);
    const auto recorded =
        std::ranges::find_if(classes, [&](const HazardClass& one) { return one.holds_for(hazard.category); });
    return recorded == classes.end() ? classes.front() : *recorded;
}

HazardLabel label_of(const std::vector<Hazard>& hazards) {
    HazardLabel label{signal_of(hazards), pictograms_of(hazards), in_order(hazards)};
    drop_parts_of_combinations(label.statements);
    std::erase_if(label.statements, [&](const Hazard& one) {
        return std::ranges::any_of(
            superseding, [&](const Superseding& rule) { return one.code == rule.lesser && has(hazards, rule.graver); });
    });
    return label;
}

std::vector<Precaution> precautions_of(const std::vector<Precaution>& precautions) {
    std::vector<Precaution> result = in_order(precautions);
    drop_parts_of_combinations(result);
    return result;
}

} // namespace dyeleaf
