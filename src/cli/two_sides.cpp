#include "cli/two_sides.h"

namespace dyeleaf {

namespace {

std::string pages(std::size_t first, std::size_t last) {
    if (first == last) return "page " + std::to_string(first);
    return "pages " + std::to_string(first) + " to " + std::to_string(last);
}

} // namespace

Turning turning(std::optional<Backs> backs, Size paper) {
    const bool lies = paper.width > paper.height;
    if (!backs || is_by_hand(backs)) return {Side::back, lies};
    const bool short_edge = *backs == Backs::short_edge;
    return {short_edge == lies ? Side::back : Side::back_of_pad, short_edge};
}

bool is_by_hand(std::optional<Backs> backs) {
    return backs == Backs::by_hand || backs == Backs::by_hand_reversed;
}

std::string name_of(Backs backs) {
    switch (backs) {
    case Backs::long_edge: return "long edge";
    case Backs::short_edge: return "short edge";
    case Backs::by_hand: return "by hand";
    case Backs::by_hand_reversed: break;
    }
    return "by hand reversed";
}

std::string turning_words(std::optional<Backs> backs, Size paper, std::size_t sheets) {
    const std::string edge = turning(backs, paper).short_edge ? "short edge" : "long edge";
    if (!is_by_hand(backs)) return "flip on the " + edge;
    return "print " + pages(1, sheets) + ", turn the " + (sheets > 1 ? "pile" : "sheet") + " over on its " + edge +
           ", print " + pages(sheets + 1, sheets * 2);
}

} // namespace dyeleaf
