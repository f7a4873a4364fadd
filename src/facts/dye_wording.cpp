#include "facts/dye_wording.h"

#include "base/words.h"
#include "facts/jar_wording.h"
#include "facts/mix.h"
#include "facts/names.h"
#include "facts/speckled_dye.h"
#include "facts/wording.h"

#include <algorithm>
#include <vector>

namespace dyeleaf {

std::string words(const Language& language, SpeckleGrade grade) {
    switch (grade) {
    case SpeckleGrade::clean: return language.say("speckle.clean");
    case SpeckleGrade::soft: return language.say("speckle.soft");
    case SpeckleGrade::hazy: return language.say("speckle.hazy");
    case SpeckleGrade::blotchy: return language.say("speckle.blotchy");
    }
    return {};
}

Breaks breaks(const Dye& dye) {
    if (!dye.breaks_into) return Breaks::not_tried;
    return dye.breaks_into->empty() ? Breaks::no : Breaks::yes;
}

std::string words(const Language& language, Breaks breaks) {
    switch (breaks) {
    case Breaks::not_tried: return language.say("breaking.not tried");
    case Breaks::no: return language.say("breaking.known not");
    case Breaks::yes: return language.say("breaking.into");
    }
    return {};
}

std::string breaking_words(const Language& language, const Dye& dye) {
    switch (breaks(dye)) {
    case Breaks::not_tried: return language.say("breaking.within.not tried");
    case Breaks::no: return language.say("breaking.within.known not");
    case Breaks::yes: break;
    }
    std::vector<std::string> colours;
    for (const Component& component : *dye.breaks_into) {
        if (!component.name.empty()) colours.push_back(component.name);
    }
    if (colours.empty()) return language.say("breaking.within.into");
    return language.say("breaking.within.into colours", {{"colours", joined(colours, " + ")}});
}

std::string speckle_words(const Language& language, const std::optional<Speckle>& speckle) {
    if (!speckle) return language.say("speckle.not tried");
    std::string text = language.say("speckle.graded", {{"grade", words(language, speckle->grade)}});
    if (speckle->spread) text += ", " + length_words(language, *speckle->spread);
    if (speckle->density) text += ", " + density_words(language, *speckle->density);
    return capitalised(std::move(text));
}

std::optional<std::string> status_words(const Language& language, DyeStatus status) {
    switch (status) {
    case DyeStatus::current: return std::nullopt;
    case DyeStatus::discontinued: return language.say("dye.discontinued");
    case DyeStatus::reformulated: return language.say("dye.reformulated");
    }
    return std::nullopt;
}

std::optional<std::string> in_stock_words(const Language& language, const Dye& dye) {
    if (!dye.in_stock) return std::nullopt;
    if (const auto* mass = std::get_if<Mass>(&*dye.in_stock); mass != nullptr && *mass > grams(0))
        return language.say("dye.so much in stock", {{"amount", mass_words(language, *mass)}});
    const auto* any = std::get_if<bool>(&*dye.in_stock);
    return language.say(any != nullptr && *any ? "dye.in stock" : "dye.none in stock");
}

std::optional<std::string> fluorescent_words(const Language& language, const Dye& dye) {
    return only_if(language, dye.fluorescent == true, "dye.fluorescent");
}

std::optional<std::string> bleeding_words(const Language& language, const Dye& dye) {
    return only_if(language, dye.bleeds == true, "dye.bleeds");
}

std::optional<std::string> crocking_words(const Language& language, const Dye& dye) {
    return only_if(language, dye.crocks == true, "dye.crocks");
}

std::optional<std::string> rinsing_words(const Language& language, const Dye& dye) {
    return only_if(language, dye.rinses_clear == false, "dye.never rinses clear");
}

std::optional<std::string> light_fastness_words(const Language& language, const Dye& dye) {
    if (!dye.light_fastness) return std::nullopt;
    return language.say("dye.light fastness", {{"words", *dye.light_fastness}});
}

std::string warning_words(const Language& language, const Dye& dye) {
    std::vector<std::string> texts;
    for (const auto& warning : {bleeding_words(language, dye), crocking_words(language, dye),
                                rinsing_words(language, dye), light_fastness_words(language, dye)}) {
        if (warning) texts.push_back(*warning);
    }
    return joined(texts, dot);
}

std::string label_words(const Language& language, const Swatch& swatch, const Base& base) {
    return language.say("dye.swatch", {{"depth", percent_words(language, swatch.depth)}, {"base", base.name}});
}

std::string words(const Language& language, ColourSource source) {
    switch (source) {
    case ColourSource::instrument: return language.say("dye.recorded by.instrument");
    case ColourSource::photo: return language.say("dye.recorded by.photo");
    case ColourSource::eye: return language.say("dye.recorded by.eye");
    }
    return {};
}

std::string words(const Language& language, HueFamily family) {
    switch (family) {
    case HueFamily::pink: return language.say("hue.pink");
    case HueFamily::red: return language.say("hue.red");
    case HueFamily::orange_brown: return language.say("hue.orange brown");
    case HueFamily::yellow: return language.say("hue.yellow");
    case HueFamily::green: return language.say("hue.green");
    case HueFamily::turquoise: return language.say("hue.turquoise");
    case HueFamily::blue: return language.say("hue.blue");
    case HueFamily::violet: return language.say("hue.violet");
    case HueFamily::grey: return language.say("hue.grey");
    }
    return {};
}

std::string hue_range_words(const Language& language, HueFamily first, HueFamily last) {
    if (first == last) return capitalised(words(language, first));
    return capitalised(language.say("hue.range", {{"first", words(language, first)}, {"last", words(language, last)}}));
}

std::optional<std::string> jars_words(const Language& language, const Records& records, const Dye& dye) {
    std::vector<std::string> texts;
    for (const Jar& jar : records.jars) {
        const auto part = std::ranges::find(jar.parts, dye.id.value, [](const Part& one) { return one.id.value; });
        if (part == jar.parts.end()) continue;
        const Mix mix = mix_of(records, jar);
        const auto share = share_words(language, mix, mix.parts[static_cast<std::size_t>(part - jar.parts.begin())]);
        texts.push_back(unbroken(jar.code + (share ? " " + *share : "")));
    }
    if (texts.empty()) return std::nullopt;
    return joined(texts, ", ");
}

std::optional<std::string> supply_words(const Language& language, const Records& records, const Dye& dye) {
    std::vector<std::string> texts;
    if (const auto jars = jars_words(language, records, dye)) {
        const bool one = jars->find(", ") == std::string::npos;
        texts.push_back(language.say(one ? "dye.in jar" : "dye.in jars", {{"jars", *jars}}));
    }
    if (dye.batch) texts.push_back(language.say("dye.batch", {{"batch", *dye.batch}}));
    if (const auto opened = short_date(language, dye.opened))
        texts.push_back(language.say("dye.opened", {{"date", *opened}}));
    if (texts.empty()) return std::nullopt;
    return joined(texts, dot);
}

std::string replacement_words(const Language& language, const Dye& replacement) {
    return language.say("dye.replaced by", {{"name", replacement.name}, {"code", replacement.code}});
}

std::optional<std::string> namesake_words(const Language& language, const Records& records, const Dye& dye) {
    std::vector<std::string> places;
    for (const Dye* other : namesakes(records, dye)) {
        const bool here = other->line == dye.line;
        add_once(places, here ? language.say("dye.in this line", {{"code", other->code}}) : other->line);
    }
    if (places.empty()) return std::nullopt;
    return language.say("dye.also in", {{"places", joined(places, ", ")}});
}

} // namespace dyeleaf
