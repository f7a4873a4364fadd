#include "facts/yarn_measure_facts.h"

#include "facts/rows.h"
#include "facts/yarn_count.h"
#include "facts/yarn_view.h"
#include "facts/yarn_wording.h"

namespace dyeleaf {

namespace {

using Text = std::optional<std::string>;
Text needles(const BaseView& view, const Manner& m) {
    if (!view.base->needles) return std::nullopt;
    return needles_words(m.language, *view.base->needles, view.records->studio.units);
}

// A guideline, where the dyer gives no figure of her own and her word for the yarn is known.
template <class Words> auto guideline(std::optional<std::string> Base::*own, Words words) {
    return [own, words](const BaseView& view, const Manner& m) -> Text {
        if ((own != nullptr && view.base->*own) || !view.base->yarn_weight) return std::nullopt;
        const auto weight = find_yarn_weight_class(*view.base->yarn_weight);
        if (!weight) return std::nullopt;
        return words(m.language, *weight, view.records->studio.units);
    };
}

bool has_size(const BaseView& view) {
    return view.base->skein.mass.value > Mass{} && view.base->skein.length.value > Length{};
}

FactRow count_row(std::string name, std::string meaning, std::string_view phrase, double YarnCounts::*count,
                  std::string unit, std::string how, std::string source) {
    using Row = Rows<BaseView>;
    return Row::text(std::move(name), std::move(meaning),
                     [phrase, count](const BaseView& view, const Manner& m) -> Text {
                         if (!has_size(view)) return std::nullopt;
                         const auto& [mass, length] = view.base->skein;
                         return yarn_count_words(m.language, phrase, yarn_counts(mass.value, length.value).*count);
                     },
                     {std::move(unit), std::move(how) + ", to three significant figures", std::move(source)});
}

} // namespace

std::vector<FactRow> yarn_measure_rows() {
    using Row = Rows<BaseView>;
    const Derivation guide{"", "usual for the yarn weight recorded", std::string{yarn_weight_source}};
    const std::string pound = "definition; yard and pound agreement of 1959";
    return {
        Row::text("base.yarn_weight", "the dyer's word for how thick it is",
                  [](const BaseView& v) { return v.base->yarn_weight; }),
        Row::text("base.gauge", "as recorded", [](const BaseView& v) { return v.base->gauge; }),
        Row::text("base.gauge.usual", "a guideline, where no gauge is recorded",
                  guideline(&Base::gauge, usual_gauge_words), guide),
        Row::text("base.needles", "as recorded, with what they are in the other units", needles,
                  {"mm or US size", "as recorded; the other from a table of needles", "common practice"}),
        Row::text("base.needles.usual", "a guideline, where no needles are recorded",
                  guideline(&Base::needles, usual_needles_words), guide),
        Row::text("base.hook.usual", "a guideline for crochet", guideline(nullptr, usual_hook_words), guide),
        count_row("base.tex", "how fine it is: grams in a kilometre", "yarn.tex", &YarnCounts::tex, "tex",
                  "weight by length", "ISO 1144"),
        count_row("base.dtex", "the same in 10 km", "yarn.dtex", &YarnCounts::dtex, "dtex", "weight by length",
                  "ISO 1144"),
        count_row("base.denier", "the same in 9 km", "yarn.denier", &YarnCounts::denier, "den", "weight by length",
                  "definition"),
        count_row("base.metric_count", "Nm: metres in a gram", "yarn.metric count", &YarnCounts::metric, "Nm",
                  "length by weight", "definition"),
        count_row("base.worsted_count", "hanks of 560 yd in a pound", "yarn.worsted count", &YarnCounts::worsted, "",
                  "length by weight", pound),
        count_row("base.cotton_count", "Ne: hanks of 840 yd in a pound", "yarn.cotton count", &YarnCounts::cotton, "Ne",
                  "length by weight", pound),
        Row::text("base.length.per_100_g", "how far 100 g of it reach",
                  [](const BaseView& v, const Manner& m) -> Text {
                      if (!has_size(v)) return std::nullopt;
                      return length_of_hundred_grams_words(m.language, v.base->skein);
                  },
                  {"m", "length by weight, rounded down to 5, below 50 to 1", "common practice"}),
    };
}

} // namespace dyeleaf
