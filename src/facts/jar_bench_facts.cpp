#include "facts/jar_bench_facts.h"

#include "base/words.h"
#include "facts/jar_contents.h"
#include "facts/jar_view.h"
#include "facts/mix.h"
#include "facts/recipe_wording.h"
#include "facts/rounding.h"
#include "facts/rows.h"
#include "facts/wording.h"

#include <algorithm>
#include <array>

namespace dyeleaf {

namespace {

using Text = std::optional<std::string>;

Mix mix_in(const JarView& view) {
    return mix_of(*view.records, *view.jar);
}

Mass step_of(const JarView& view) {
    return view.records->studio.scale_step;
}

// --- weakening ---

struct Weakening {
    Percent to;
    Mass for_ten;             // salt to 10 g of the mix
    std::optional<Mass> salt; // to all that is left
    bool estimated = false;
};

const Vocabulary& weakening_vocabulary() {
    using Row = Rows<Weakening>;
    static const Vocabulary vocabulary{
        "weakening",
        {
            Row::text("weaken.to", "the strength it is brought to",
                      [](const Weakening& v, const Manner& m) { return strength_words(m.language, v.to); },
                      {"%", "round strengths below the jar's own, down to a tenth of it", ""}),
            Row::text("weaken.for_ten", "salt to add to 10 g of the mix",
                      [](const Weakening& v, const Manner& m) {
                          return about_if(v.estimated, mass_words(m.language, v.for_ten));
                      },
                      {"g", "10 g × (its strength / the wanted one − 1)", "arithmetic"}),
            Row::text("weaken.salt", "salt to add to all that is left, where the jar was weighed",
                      [](const Weakening& v, const Manner& m) -> Text {
                          if (!v.salt) return std::nullopt;
                          return about_if(v.estimated, mass_words(m.language, *v.salt));
                      },
                      {"g", "what is left × (its strength / the wanted one − 1)", "arithmetic"}),
        }};
    return vocabulary;
}

// No further than to a tenth in one go (our own limit): past that it is better mixed anew.
std::vector<Weakening> weakenings(const JarView& view) {
    constexpr std::array targets{50.0, 20.0, 10.0, 5.0, 2.0, 1.0};
    std::vector<Weakening> result;
    const Mix mix = mix_in(view);
    if (!mix.strength) return result;
    for (const double target : targets) {
        const Percent to = percent(target);
        if (to >= *mix.strength || to * 10 < *mix.strength) continue;
        const auto salt = [&](Mass mass) { return rounded_to(salt_to_weaken(mass, *mix.strength, to), step_of(view)); };
        Weakening one{to, salt(grams(10)), {}, mix.shares_estimated};
        if (const auto left = left_in(*view.jar)) one.salt = salt(*left);
        result.push_back(one);
    }
    return result;
}

// --- mixing ---

struct MixingStep {
    int number = 1;
    std::vector<MixPart> parts; // with the mass that goes in at this step
    bool estimated = false;
};

const Vocabulary& mixing_vocabulary() {
    using Row = Rows<MixingStep>;
    static const Vocabulary vocabulary{
        "step",
        {Row::text("step.number", "its number", [](const MixingStep& v) { return std::to_string(v.number); },
                   {"", "counted", ""}),
         Row::text("step.text", "what goes in at this step",
                   [](const MixingStep& v, const Manner& m) {
                       std::vector<std::string> texts;
                       for (const MixPart& part : v.parts) {
                           const std::string mass = about_if(v.estimated, mass_words(m.language, *part.mass));
                           texts.push_back(mass + " " + part.name);
                       }
                       return joined(texts, " + ");
                   },
                   {"g", "as much again as there is already, until nothing is left",
                    "geometric dilution, as pharmacists mix powders"})}};
    return vocabulary;
}

// The salt of which there is most goes in bit by bit, after everything else.
std::vector<MixingStep> mixing_steps(const JarView& view) {
    std::vector<MixPart> others = first_filling(*view.records, *view.jar).parts;
    const bool estimated = first_filling(*view.records, *view.jar).masses_estimated;
    if (std::ranges::any_of(others, [](const MixPart& part) { return !part.mass; })) return {};
    const auto weight = [](const MixPart& part) { return part.is_dye ? Mass{} : *part.mass; };
    const auto most = std::ranges::max_element(others, {}, weight);
    if (most == others.end() || most->is_dye) return {};
    MixPart carrier = *most;
    others.erase(most);
    Mass start;
    for (const MixPart& part : others)
        start = start + *part.mass;
    std::vector<MixingStep> steps;
    for (const Mass added : doubling_steps(start, *carrier.mass, step_of(view))) {
        carrier.mass = added;
        MixingStep step{static_cast<int>(steps.size()) + 1, {}, estimated};
        if (steps.empty()) step.parts = others;
        step.parts.push_back(carrier);
        steps.push_back(std::move(step));
    }
    return steps;
}

// --- what is left ---

Text left(const JarView& view, const Manner& m) {
    const auto mass = left_in(*view.jar);
    if (!mass) return std::nullopt;
    return mass_words(m.language, rounded_to(*mass, step_of(view)));
}

Text dye_left(const JarView& view, const Manner& m) {
    const auto mass = left_in(*view.jar);
    const Mix mix = mix_in(view);
    if (!mass || !mix.strength) return std::nullopt;
    return about_if(mix.shares_estimated,
                    mass_words(m.language, rounded_to(dye_in(*mass, *mix.strength), step_of(view))));
}

Text skeins_left(const JarView& view, const Manner& m) {
    const auto mass = left_in(*view.jar);
    if (!mass || !view.jar->per_skein) return std::nullopt;
    return skeins_words(m.language, skeins_from(*mass, *view.jar->per_skein));
}

Text dye_per_skein(const JarView& view, const Manner& m) {
    const Mix mix = mix_in(view);
    if (!view.jar->per_skein || !mix.strength) return std::nullopt;
    return about_if(mix.shares_estimated, mass_words(m.language, dye_in(*view.jar->per_skein, *mix.strength)));
}

} // namespace

std::vector<FactRow> jar_bench_rows() {
    using Row = Rows<JarView>;
    return {
        Row::text("jar.left", "grams of the mix that are left, from the last weighing; not there once it was topped up",
                  left, {"g", "as weighed less the empty jar", "arithmetic"}),
        Row::text("jar.left.dye", "grams of dye in that, where the strength is known", dye_left,
                  {"g", "what is left × strength", "arithmetic"}),
        Row::text("jar.left.on", "the day it was weighed",
                  [](const JarView& v, const Manner& m) -> Text {
                      if (!left_in(*v.jar)) return std::nullopt;
                      return short_date(m.language, std::optional{v.jar->weighed->on});
                  }),
        Row::text("jar.skeins_left", "how many skeins what is left will do", skeins_left,
                  {"", "what is left / what a skein takes, rounded down", "arithmetic"}),
        Row::text("jar.per_skein", "how much of the mix a skein takes",
                  [](const JarView& v, const Manner& m) -> Text {
                      if (!v.jar->per_skein) return std::nullopt;
                      return mass_words(m.language, *v.jar->per_skein);
                  }),
        Row::text("jar.per_skein.dye", "grams of dye in that, where the strength is known", dye_per_skein,
                  {"g", "what a skein takes × strength", "arithmetic"}),
        Row::list("jar.weaken", "how much salt brings it to each lower strength", weakening_vocabulary(), weakenings),
        Row::list("jar.mixing_steps", "how to mix it evenly, where the grams are known", mixing_vocabulary(),
                  mixing_steps),
    };
}

} // namespace dyeleaf
