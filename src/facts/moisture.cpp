#include "facts/moisture.h"

#include "facts/fibre_words.h"

namespace dyeleaf {

// Regulation (EU) No 1007/2011, Annex IX; of a blend, the mean by share (arithmetic).
std::optional<Percent> agreed_allowance(const Base& base) {
    Percent sum;
    for (const Fibre& fibre : base.fibres) {
        const FibreKind* kind = read_fibre_word(fibre.name).kind;
        if (kind == nullptr || !kind->allowance) return std::nullopt;
        const bool combed = base.spinning == Spinning::combed && kind->combed;
        const Percent own = combed ? *kind->combed : *kind->allowance;
        sum = sum + own * (fibre.share / percent(100));
    }
    return base.fibres.empty() ? std::nullopt : std::optional{sum};
}

Mass dry_mass(Mass mass, Percent allowance) {
    return mass / (1 + allowance / percent(100));
}

} // namespace dyeleaf
