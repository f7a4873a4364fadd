#include "facts/fibre_statement.h"

#include <algorithm>
#include <utility>

namespace dyeleaf {

namespace {

// What has one figure on a tag.
struct Figure {
    const FibreKind* kind; // none: as written
    std::string name;
    bool recycled;
    std::vector<std::string> breeds; // each once
    bool of_unnamed_breed;           // in part
    Percent share;
    std::vector<std::size_t> recorded;
};

// Regulation (EU) No 1007/2011, Annex I: most rows have names of one fibre (polyamide or nylon), but row 3 has those of
// several animals, and row 48 those of several materials.
bool has_names_of_several(const FibreKind& kind) {
    return kind.nature == FibreKind::Nature::other || !found_among("cattle hair", kind.eu).empty();
}

bool are_one_fibre(const Figure& part, const FibreWord& word, const std::string& name) {
    if (part.kind == nullptr) return false;
    if (part.name == name) return true;
    return part.kind == word.kind && part.recycled == name.starts_with("recycled") && !has_names_of_several(*word.kind);
}

void add(std::vector<Figure>& parts, const Base& base, std::size_t place, Market market) {
    const Fibre& fibre = base.fibres[place];
    const FibreWord word = market == Market::none ? FibreWord{} : read_fibre_word(fibre.name);
    const std::string name = word.kind == nullptr ? std::string{} : legal_name(word, market);
    if (name.empty()) {
        parts.push_back({nullptr, fibre.name, false, {}, true, fibre.share, {place}});
        return;
    }
    auto part = std::ranges::find_if(parts, [&](const Figure& one) { return are_one_fibre(one, word, name); });
    if (part == parts.end())
        part = parts.insert(parts.end(), {word.kind, name, name.starts_with("recycled"), {}, false, {}, {}});
    part->share = part->share + fibre.share;
    part->recorded.push_back(place);
    part->of_unnamed_breed = part->of_unnamed_breed || word.breed.empty();
    const bool is_new = std::ranges::find(part->breeds, word.breed) == part->breeds.end();
    if (!word.breed.empty() && is_new) part->breeds.push_back(word.breed);
}

bool is_wool(const Figure& part) {
    return part.kind == &fibre_kinds().front();
}

} // namespace

std::vector<StatedFibre> stated_fibres(const Base& base, Market market) {
    std::vector<Figure> parts;
    for (std::size_t place = 0; place < base.fibres.size(); ++place)
        add(parts, base, place, market);
    // Regulation (EU) No 1007/2011, Art. 9(1): in descending order. 16 CFR 303.16 (from memory): other fibers last; in
    // the EU common practice.
    std::ranges::stable_sort(parts, [](const Figure& a, const Figure& b) {
        const bool last = b.kind == &other_fibres();
        return a.kind != &other_fibres() && (last || a.share > b.share);
    });
    const bool virgin = virgin_wool(base, market) == VirginWool::may_be_named;
    std::vector<StatedFibre> stated;
    for (Figure& part : parts) {
        const bool of_breed = base.names_breed == true && !part.of_unnamed_breed;
        stated.push_back({part.name, part.kind != nullptr, virgin && is_wool(part),
                          of_breed ? std::move(part.breeds) : std::vector<std::string>{}, part.share,
                          std::move(part.recorded)});
    }
    return stated;
}

// Regulation (EU) No 1007/2011, Art. 8(2): all the wool; in a mixture, not less than 25 % of the weight, and in one
// that was carded together (scribbled) beside one other fibre only. How a yarn was mixed is not recorded, so one other
// it is.
VirginWool virgin_wool(const Base& base, Market market) {
    Percent wool;
    bool claimed_of_some = base.virgin_wool == true;
    bool claimed_of_all = true;
    bool recycled = false;
    std::vector<std::string> others;
    for (const Fibre& fibre : base.fibres) {
        const FibreWord word = read_fibre_word(fibre.name);
        if (word.kind == &fibre_kinds().front()) {
            wool = wool + fibre.share;
            claimed_of_some = claimed_of_some || word.virgin;
            claimed_of_all = claimed_of_all && (word.virgin || base.virgin_wool == true);
            recycled = recycled || word.recycled;
        } else {
            others.push_back(word.kind == nullptr ? fibre.name : std::string{first_of(word.kind->eu)});
        }
    }
    std::ranges::sort(others);
    others.erase(std::unique(others.begin(), others.end()), others.end());
    if (!claimed_of_some) return VirginWool::not_claimed;
    if (wool == Percent{}) return VirginWool::no_wool;
    if (recycled || base.virgin_wool == false) return VirginWool::denied;
    if (!claimed_of_all) return VirginWool::in_part;
    if (market == Market::us) return VirginWool::may_be_named; // 16 CFR 300.20 asks no share
    if (wool < percent(25)) return VirginWool::too_little;
    if (others.size() > 1) return VirginWool::among_many;
    return VirginWool::may_be_named;
}

} // namespace dyeleaf
