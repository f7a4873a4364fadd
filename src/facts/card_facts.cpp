#include "facts/card_facts.h"

#include "facts/dye_facts.h"
#include "facts/dye_wording.h"
#include "facts/rows.h"
#include "facts/swatches.h"
#include "facts/wording.h"

namespace dyeleaf {

namespace {

// The line, or "Pink", "Pink to green"; colours that are not recorded count as none.
std::string group_words(const Language& language, const CardView& card) {
    if (card.together == Together::by_line) return card.dyes.front()->line;
    std::vector<HueFamily> families;
    for (const Dye* dye : card.dyes) {
        if (const auto colour = deepest_colour(*dye)) families.push_back(hue_family(*colour));
    }
    if (families.empty()) return language.say("dye.no colour on card");
    return hue_range_words(language, families.front(), families.back());
}

std::vector<FactRow> place_rows() {
    using Row = Rows<CardView>;
    return {
        Row::text("card.number", "its number in the set", [](const CardView& v) { return std::to_string(v.number); },
                  {"", "counted in the order of the ring: by line as first recorded, then by hue", ""}),
        Row::text("card.count", "how many cards the set has", [](const CardView& v) { return std::to_string(v.count); },
                  {"", "counted", ""}),
        Row::text(
            "card.of",
            "both: 3 of 12; with --only, a card of one dye keeps its place in the whole set, cards of several dyes "
            "are counted anew",
            [](const CardView& v, const Manner& m) { return place_words(m.language, v.number, v.count); },
            {"", "place and count", ""}),
        Row::text("card.group", "what its dyes have in common: a line, or hues",
                  [](const CardView& v, const Manner& m) { return group_words(m.language, v); },
                  {"", "the line of its dyes, or the hues of the first and the last", ""}),
    };
}

} // namespace

const Vocabulary& card_place_vocabulary() {
    static const Vocabulary vocabulary{"place", place_rows()};
    return vocabulary;
}

const Vocabulary& card_vocabulary() {
    using Row = Rows<CardView>;
    static const Vocabulary vocabulary{
        "card", together({
                    place_rows(),
                    Row::text("card.dye_count", "how many dyes stand on it",
                              [](const CardView& v) { return std::to_string(v.dyes.size()); }, {"", "counted", ""}),
                    Row::list("card.dyes", "the dyes on it", dye_vocabulary(),
                              [](const CardView& v) {
                                  std::vector<DyeView> views;
                                  for (const Dye* dye : v.dyes)
                                      views.push_back({v.records, dye});
                                  return views;
                              },
                              {"", "in hue order within their line", ""}),
                })};
    return vocabulary;
}

} // namespace dyeleaf
