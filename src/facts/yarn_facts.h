// What can be asked of yarn for sale: a base, a lot dyed on it, a skein of the lot.
#pragma once

#include "facts/facts.h"
#include "records/records.h"

namespace dyeleaf {

struct BaseView {
    const Records* records = nullptr;
    const Base* base = nullptr;
};

struct LotView {
    const Records* records = nullptr;
    const Lot* lot = nullptr;
};

struct SkeinView {
    const Records* records = nullptr;
    const Lot* lot = nullptr;
    int number = 1;
};

// What one skein holds.
SkeinSize size_of(const BaseView& view);
SkeinSize size_of(const LotView& view);
SkeinSize size_of(const SkeinView& view);

// How fibres are stated, wherever they are.
Derivation fibres_by_market();

const Vocabulary& base_vocabulary();
const Vocabulary& lot_vocabulary();
const Vocabulary& skein_vocabulary();

} // namespace dyeleaf
