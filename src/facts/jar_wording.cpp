#include "facts/jar_wording.h"

#include "base/words.h"
#include "facts/dye_wording.h"
#include "facts/hazards.h"
#include "facts/names.h"
#include "facts/wording.h"

#include <algorithm>
#include <vector>

namespace dyeleaf {

namespace {

std::string about_if(bool estimated, std::string words) {
    return estimated ? about(std::move(words)) : words;
}

bool has_masses(const Mix& mix) {
    return std::ranges::all_of(mix.parts, [](const MixPart& part) { return part.mass.has_value(); });
}

// What was weighed in, or follows from weighings, is stated in grams.
Basis stated_basis(const Mix& mix) {
    const bool in_grams = std::ranges::all_of(mix.parts, [](const MixPart& part) { return part.weighed.has_value(); });
    return in_grams ? Basis::weight : mix.basis;
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

std::string behaviour_of(const Language& language, const Dye& dye) {
    std::vector<std::string> texts{breaking_words(language, dye)};
    if (dye.fluorescent == true) texts.push_back(language.say("breaking.within.fluorescent"));
    if (dye.bleeds == true) texts.push_back(language.say("breaking.within.bleeds"));
    return joined(texts, ", ");
}

} // namespace

std::optional<std::string> strength_figure(const Language& language, const Mix& mix) {
    if (!mix.strength) return std::nullopt;
    return about_if(mix.shares_estimated, strength_words(language, *mix.strength));
}

std::string strength_words(const Language& language, const Mix& mix) {
    const std::string basis = words(language, mix.basis);
    if (!mix.strength) return language.say("jar.strength unknown", {{"basis", basis}});
    const std::string figure = strength_words(language, *mix.strength);
    if (!mix.shares_estimated) return language.say("jar.strength", {{"figure", figure}});
    return language.say("jar.strength estimated", {{"figure", figure}, {"basis", basis}});
}

std::optional<std::string> lacking_words(const Language& language, const Mix& mix) {
    if (mix.strength) return std::nullopt;
    std::vector<std::string> names;
    for (const MixPart& part : mix.parts) {
        if (!part.bulk) names.push_back(part.name);
    }
    return language.say("jar.strength lacks", {{"names", joined(names, ", ")}});
}

std::string ratio_words(const Language& language, const Mix& mix) {
    return parts_joined(mix, " : ", [&](const MixPart& part) { return amount_words(language, mix, part); }) + ", " +
           words(language, stated_basis(mix));
}

std::string recipe_words(const Language& language, const Mix& mix) {
    const std::string stated =
        parts_joined(mix, " + ", [&](const MixPart& part) { return amount_words(language, mix, part); }) + ", " +
        words(language, stated_basis(mix));
    if (!mix.strength) return language.say("jar.strength unknown", {{"basis", stated}});
    const std::string strength = language.say(mix.shares_estimated ? "jar.recipe estimated" : "jar.recipe",
                                              {{"figure", strength_words(language, *mix.strength)}});
    if (!has_masses(mix)) return strength + " = " + stated;
    const std::string masses =
        parts_joined(mix, " + ", [&](const MixPart& part) { return mass_words(language, *part.mass); });
    return strength + (mix.masses_estimated ? " ≈ " : " = ") + masses;
}

std::string amount_words(const Language& language, const Mix& mix, const MixPart& part) {
    if (!part.weighed) return parts_words(language, part.parts);
    return about_if(mix.masses_estimated, mass_words(language, *part.weighed));
}

std::optional<std::string> share_words(const Language& language, const Mix& mix, const MixPart& part) {
    if (!part.share) return std::nullopt;
    return about_if(mix.shares_estimated, strength_words(language, *part.share));
}

std::optional<std::string> mass_words(const Language& language, const Mix& mix, const MixPart& part) {
    if (!part.mass) return std::nullopt;
    return about_if(mix.masses_estimated, mass_words(language, *part.mass));
}

std::optional<std::string> total_words(const Language& language, const Mix& mix) {
    if (!mix.total) return std::nullopt;
    return about_if(mix.total_estimated, mass_words(language, *mix.total));
}

std::string mixed_words(const Language& language, const Jar& jar) {
    const auto date = short_date(language, jar.mixed);
    return date ? language.say("jar.mixed", {{"date", *date}}) : language.say("jar.mixing date unknown");
}

std::optional<std::string> topped_up_words(const Language& language, const Jar& jar) {
    if (jar.topped_up.empty()) return std::nullopt;
    std::optional<Date> latest;
    for (const TopUp& top_up : jar.topped_up) {
        const auto date = known_date(top_up.on);
        if (date && (!latest || *date > *latest)) latest = date;
    }
    if (!latest) return language.say("jar.topped up unknown");
    return language.say("jar.topped up", {{"date", month_date(language, *latest)}});
}

std::optional<std::string> salt_words(const Language& language, const Records& records, const Jar& jar) {
    if (!has_nameless_salt(records, jar)) return std::nullopt;
    return language.say("jar.salt not recorded");
}

std::string behaviour_words(const Language& language, const Records& records, const Jar& jar) {
    std::vector<const Dye*> dyes;
    for (const Part& part : jar.parts) {
        if (part.is_dye) dyes.push_back(&records.dye(part.id.value));
    }
    std::vector<std::string> texts;
    for (const Dye* dye : dyes) {
        const std::string behaviour = behaviour_of(language, *dye);
        texts.push_back(dyes.size() == 1 ? capitalised(behaviour) : distinct_name(records, *dye) + ": " + behaviour);
    }
    return joined(texts, dot);
}

} // namespace dyeleaf
