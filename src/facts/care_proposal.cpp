#include "facts/care_proposal.h"

#include "facts/fibre_words.h"

#include <algorithm>

namespace dyeleaf {

namespace {

using Nature = FibreKind::Nature;

// Common practice: scales felt and silk loses its gloss in a machine; synthetics and hair bear no hot iron. Chlorine
// eats wool and silk, and every bleach eats dye, so that no yarn dyed by hand is bleached. All of it dries flat.
struct Need {
    std::string_view wash;
    std::string_view iron;
};

Need need_of(Nature nature, bool felts) {
    switch (nature) {
    case Nature::wool: return {felts ? "hand wash" : "wash 30 gentle", "iron medium"};
    case Nature::hair:
    case Nature::silk: return {"hand wash", "iron low"};
    case Nature::plant: return {"wash 30 gentle", "iron medium"};
    case Nature::regenerated:
    case Nature::synthetic:
    case Nature::other: return {"wash 30 gentle", "iron low"};
    }
    return {};
}

std::size_t place_of(const Care& care) {
    const auto& all = care_treatments();
    return static_cast<std::size_t>(std::ranges::find(all, care.key, &Care::key) - all.begin());
}

} // namespace

// Within each process the treatments stand from the harshest to the gentlest; ways of hanging are no worse or better.
bool is_harsher(const Care& one, const Care& other) {
    const bool hung = one.key.starts_with("dry ") && one.process == CareProcess::dry;
    return !hung && contradict(one, other) && one.process == other.process && place_of(one) < place_of(other);
}

Percent wool_share(const Base& base) {
    Percent wool;
    for (const Fibre& fibre : base.fibres) {
        if (read_fibre_word(fibre.name).kind == &wool_kind()) wool = wool + fibre.share;
    }
    return wool;
}

std::optional<Percent> superwash_share(const Base& base) {
    const Percent wool = wool_share(base);
    if (!base.superwash) {
        Percent named; // as in “superwash merino”
        for (const Fibre& fibre : base.fibres) {
            if (read_fibre_word(fibre.name).superwash) named = named + fibre.share;
        }
        return named == Percent{} ? std::nullopt : std::optional{std::min(named, wool)};
    }
    if (const auto* share = std::get_if<Percent>(&*base.superwash)) return std::min(*share, wool);
    return std::get<bool>(*base.superwash) ? wool : Percent{};
}

std::optional<CareProposal> proposed_care(const Base& base) {
    const auto superwash = superwash_share(base);
    const bool felts = !superwash || *superwash < wool_share(base);
    CareProposal proposal;
    Care wash = *find_care("wash 30 gentle");
    Care iron = *find_care("iron medium");
    for (const Fibre& fibre : base.fibres) {
        const FibreKind* kind = read_fibre_word(fibre.name).kind;
        if (kind == nullptr || kind == &other_fibres()) return std::nullopt;
        const Need need = need_of(kind->nature, felts);
        const Care wanted = *find_care(need.wash);
        if (is_harsher(iron, *find_care(need.iron))) iron = *find_care(need.iron);
        if (!proposal.because.empty() && !is_harsher(wash, wanted)) continue;
        wash = wanted;
        proposal.because = first_of(kind->eu.empty() ? kind->us : kind->eu);
        if (kind->nature == Nature::wool && felts)
            proposal.because = superwash ? "wool that is not superwash" : "wool that is not recorded as superwash";
    }
    if (proposal.because.empty()) return std::nullopt;
    proposal.care = {wash, *find_care("no bleach"), *find_care("no tumble"), *find_care("dry flat"), iron};
    return proposal;
}

} // namespace dyeleaf
