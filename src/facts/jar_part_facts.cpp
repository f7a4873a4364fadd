#include "facts/jar_part_facts.h"

#include "facts/hazard_facts.h"
#include "facts/jar_wording.h"
#include "facts/rows.h"
#include "facts/swatches.h"
#include "facts/wording.h"

namespace dyeleaf {

namespace {

using Text = std::optional<std::string>;

const MixPart& mixed(const PartView& view) {
    return view.mix.parts[view.index];
}

const Part& recorded(const PartView& view) {
    return view.of.jar->parts[view.index];
}

HazardSummary hazards_in(const PartView& view) {
    const std::string& id = recorded(view).id.value;
    const Records& records = *view.of.records;
    return recorded(view).is_dye ? hazards_of(records.dye(id)) : hazards_of(records.ingredient(id));
}

} // namespace

const Vocabulary& part_vocabulary() {
    using Row = Rows<PartView>;
    static const Vocabulary vocabulary{
        "part",
        {
            Row::text("part.name", "the dye or what goes with it", [](const PartView& v) { return mixed(v).name; }),
            Row::text(
                "part.hazards", "the codes of its sheet, where there are any",
                [](const PartView& v) { return code_words(hazards_in(v).label.statements); }, from_sheet),
            Row::text("part.parts", "how much of it, as stated",
                      [](const PartView& v, const Manner& m) { return amount_words(m.language, v.mix, mixed(v)); },
                      {"", "as stated, or as weighed in", ""}),
            Row::text("part.share", "its share by weight, where it can be known",
                      [](const PartView& v, const Manner& m) { return share_words(m.language, v.mix, mixed(v)); },
                      {"%", "parts over all parts; by volume each times its bulk density; then from the rounded masses",
                       "arithmetic"}),
            Row::text("part.mass", "its grams, where they can be known",
                      [](const PartView& v, const Manner& m) { return mass_words(m.language, v.mix, mixed(v)); },
                      {"g",
                       "share × batch, rounded to the scale’s step; or as weighed; or from “holds”, two thirds full, "
                       "and the bulk densities",
                       "arithmetic; two thirds full: common practice"}),
            Row::text("part.volume", "its millilitres of loose powder, where they can be known",
                      [](const PartView& v, const Manner& m) -> Text {
                          if (!mixed(v).volume) return std::nullopt;
                          return about_if(true, volume_words(m.language, *mixed(v).volume));
                      },
                      {"mL", "grams / bulk density; of spoons, their share of two thirds of the jar", "arithmetic"}),
            Row::patch("part.patch", "a dye's deepest swatch",
                       [](const PartView& v, const Manner& m) -> std::optional<Patch> {
                           if (!recorded(v).is_dye) return std::nullopt;
                           return deepest_patch(m.language, *v.of.records, v.of.records->dye(recorded(v).id.value));
                       },
                       {"", "its deepest swatch", ""}),
        }};
    return vocabulary;
}

std::vector<PartView> jar_parts(const JarView& view) {
    const Mix mix = mix_of(*view.records, *view.jar);
    std::vector<PartView> result;
    for (std::size_t index = 0; index < mix.parts.size(); ++index)
        result.push_back({view, mix, index});
    return result;
}

std::vector<PartView> jar_dye_parts(const JarView& view) {
    std::vector<PartView> result = jar_parts(view);
    std::erase_if(result, [](const PartView& part) { return !mixed(part).is_dye; });
    return result;
}

} // namespace dyeleaf
