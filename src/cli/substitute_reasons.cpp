#include "cli/substitute_reasons.h"

#include "base/number.h"
#include "base/words.h"
#include "cli/swatch_places.h"
#include "facts/dye_wording.h"

#include <algorithm>

namespace dyeleaf {

namespace {

using Texts = std::vector<std::string>;
constexpr const char* between_reasons = " · ";

std::string family_words(const Language& english, const Substitute& one) {
    const std::string found = words(english, one.family);
    return one.family == one.wanted_family ? found + " too" : found + ", not " + words(english, one.wanted_family);
}

std::string pole_words(Pole pole) {
    switch (pole) {
    case Pole::red: return "redder";
    case Pole::yellow: return "yellower";
    case Pole::green: return "greener";
    case Pole::blue: break;
    }
    return "bluer";
}

std::string leaning_words(const Leaning& leaning) {
    Texts texts;
    if (leaning.lightness != 0) texts.emplace_back(leaning.lightness > 0 ? "lighter" : "darker");
    if (leaning.strength != 0) texts.emplace_back(leaning.strength > 0 ? "brighter" : "duller");
    if (leaning.hue) texts.push_back(pole_words(*leaning.hue));
    return joined(texts, ", ");
}

// Codes only: which of two hazards is the graver one, the sheets say.
std::string hazard_reason(const Dye& wanted, const Dye& dye) {
    if (!dye.hazards) return "no hazard data on file";
    const CodeDifference codes = hazard_difference(wanted, dye);
    if (!wanted.hazards) return codes.more.empty() ? "no hazards listed" : "hazards " + joined(codes.more, ", ");
    if (codes.more.empty() && codes.fewer.empty())
        return dye.hazards->empty() ? "no hazards listed either" : "same hazards";
    Texts texts;
    if (!codes.more.empty()) texts.push_back("with " + joined(codes.more, ", "));
    if (!codes.fewer.empty()) texts.push_back("without " + joined(codes.fewer, ", "));
    return "hazards: " + joined(texts, ", ");
}

} // namespace

std::string colour_reasons(const Records& records, const Language& english, const Dye& wanted, const Substitute& one) {
    Texts texts;
    if (wanted.replaced_by && wanted.replaced_by->value == one.dye->id.value)
        texts.emplace_back("recorded as its replacement");
    add_once(texts, family_words(english, one));
    add_once(texts, leaning_words(one.leaning));
    if (one.pairs.size() > 1) {
        const LikePair& worst = *std::ranges::max_element(one.pairs, {}, &LikePair::delta_e_2000);
        texts.push_back("furthest off at " + places(records, {worst}) + ": " + fixed(worst.delta_e_2000, 1));
    }
    if (one.dye->fluorescent == true) {
        texts.emplace_back(wanted.fluorescent == true ? "fluorescent too" : "fluorescent");
    } else if (wanted.fluorescent == true) {
        texts.emplace_back("not fluorescent, as far as recorded");
    }
    return joined(texts, between_reasons);
}

std::string other_reasons(const Language& english, const Dye& wanted, const Dye& dye) {
    Texts texts;
    const auto add = [&](const std::optional<std::string>& text) {
        if (text) texts.push_back(lower_case(*text));
    };
    add(status_words(english, dye.status));
    if (dye.dye_class && wanted.dye_class && lower_case(*dye.dye_class) != lower_case(*wanted.dye_class))
        texts.push_back("another class: " + *dye.dye_class);
    texts.push_back(breaking_words(english, dye));
    add(speckle_words(english, dye.speckle));
    add(bleeding_words(english, dye));
    add(crocking_words(english, dye));
    add(rinsing_words(english, dye));
    texts.push_back(hazard_reason(wanted, dye));
    if (const auto stock = in_stock_words(english, dye)) texts.push_back(*stock);
    return joined(texts, between_reasons);
}

} // namespace dyeleaf
