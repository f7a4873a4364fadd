#include "facts/jar_wording.h"

#include "base/words.h"
#include "facts/dye_wording.h"
#include "facts/names.h"
#include "facts/wording.h"

#include <algorithm>
#include <vector>

namespace dyeleaf {

namespace {

constexpr std::string_view not_on_file = "Hazard data not on file";
constexpr std::string_view be_careful = ": treat as harmful if breathed in";

constexpr std::string_view approximately = "≈";

std::string about_if(bool estimated, std::string words) {
    return estimated ? about(std::move(words)) : words;
}

std::string basis_words(const Mix& mix) {
    return std::string{words(mix.basis)};
}

bool has_masses(const Mix& mix) {
    return std::ranges::all_of(mix.parts, [](const MixPart& part) { return part.mass.has_value(); });
}

template <class Amount> std::string parts_joined(const Mix& mix, std::string_view between, Amount amount) {
    std::vector<std::string> texts;
    for (const MixPart& part : mix.parts)
        texts.push_back(amount(part) + " " + part.name);
    return joined(texts, between);
}

// Salt that bears no name but that, in the jar and among the dyer's ingredients alike.
bool has_nameless_salt(const Records& records, const Jar& jar) {
    if (jar.salt) return false;
    return std::ranges::any_of(jar.parts, [&](const Part& part) {
        if (part.is_dye) return false;
        const Ingredient& ingredient = records.ingredient(part.id.value);
        return is_plain_salt(ingredient) && lower_case(ingredient.name) == "salt";
    });
}

std::string behaviour_of(const Dye& dye) {
    std::vector<std::string> texts{breaking_words(dye)};
    if (dye.fluorescent == true) texts.emplace_back("fluorescent");
    if (dye.bleeds == true) texts.emplace_back("bleeds");
    return joined(texts, ", ");
}

} // namespace

std::string hazard_words(const HazardSummary& hazards) {
    std::vector<std::string> sentences;
    if (!hazards.codes.empty()) sentences.push_back("Hazards on supplier’s sheet: " + joined(hazards.codes, " "));
    if (!hazards.not_on_file.empty()) {
        // Beside something that has a sheet it must be said whose data are missing.
        const std::string whose = hazards.any_on_file ? " for " + joined(hazards.not_on_file, ", ") : "";
        sentences.push_back(std::string{not_on_file} + whose + std::string{be_careful});
    }
    if (sentences.empty()) return "Supplier’s sheet lists no hazard codes";
    return joined(sentences, ". ");
}

std::string hazard_words_brief(const HazardSummary& hazards) {
    const std::string codes = joined(hazards.codes, " ");
    if (hazards.not_on_file.empty()) return codes.empty() ? "no codes on sheet" : codes;
    if (codes.empty()) return std::string{not_on_file};
    return codes + ", other data not on file";
}

std::optional<std::string> strength_figure(const Mix& mix) {
    if (!mix.strength) return std::nullopt;
    return about_if(mix.shares_estimated, strength_words(*mix.strength));
}

std::string strength_words(const Mix& mix) {
    if (!mix.strength) return basis_words(mix) + ": strength unknown";
    const std::string figure = strength_words(*mix.strength) + " dye by weight";
    return mix.shares_estimated ? "about " + figure + ", measured " + basis_words(mix) : figure;
}

std::string ratio_words(const Mix& mix) {
    return parts_joined(mix, " : ", amount_words) + ", " + basis_words(mix);
}

std::string recipe_words(const Mix& mix) {
    const std::string stated = parts_joined(mix, " + ", amount_words) + ", " + basis_words(mix);
    if (!mix.strength) return stated + ": strength unknown";
    const std::string strength = (mix.shares_estimated ? "about " : "") + strength_words(*mix.strength) + " dye ";
    if (!has_masses(mix)) return strength + "= " + stated;
    const std::string masses = parts_joined(mix, " + ", [](const MixPart& part) { return mass_words(*part.mass); });
    return strength + (mix.masses_estimated ? std::string{approximately} : "=") + " " + masses;
}

std::string amount_words(const MixPart& part) {
    return part.weighed ? mass_words(*part.weighed) : parts_words(part.parts);
}

std::optional<std::string> share_words(const Mix& mix, const MixPart& part) {
    if (!part.share) return std::nullopt;
    return about_if(mix.shares_estimated, strength_words(*part.share));
}

std::optional<std::string> mass_words(const Mix& mix, const MixPart& part) {
    if (!part.mass) return std::nullopt;
    return about_if(mix.masses_estimated, mass_words(*part.mass));
}

std::optional<std::string> total_words(const Mix& mix) {
    if (!mix.total) return std::nullopt;
    return about_if(mix.total_estimated, mass_words(*mix.total));
}

std::string mixed_words(const Jar& jar) {
    const auto date = short_date(jar.mixed);
    return date ? "mixed " + *date : "mixing date unknown";
}

std::optional<std::string> topped_up_words(const Jar& jar) {
    if (jar.topped_up.empty()) return std::nullopt;
    std::optional<Date> latest;
    for (const TopUp& top_up : jar.topped_up) {
        const auto date = known_date(top_up.on);
        if (date && (!latest || *date > *latest)) latest = date;
    }
    return latest ? "topped up " + month_date(*latest) : "topped up, date unknown";
}

std::optional<std::string> salt_words(const Records& records, const Jar& jar) {
    if (!has_nameless_salt(records, jar)) return std::nullopt;
    return "salt type not recorded";
}

std::string behaviour_words(const Records& records, const Jar& jar) {
    std::vector<const Dye*> dyes;
    for (const Part& part : jar.parts) {
        if (part.is_dye) dyes.push_back(&records.dye(part.id.value));
    }
    std::vector<std::string> texts;
    for (const Dye* dye : dyes) {
        const std::string behaviour = behaviour_of(*dye);
        texts.push_back(dyes.size() == 1 ? capitalised(behaviour) : distinct_name(records, *dye) + ": " + behaviour);
    }
    return joined(texts, dot);
}

} // namespace dyeleaf
