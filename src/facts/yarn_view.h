// The subjects of what is asked of yarn: a base, a lot dyed on it, a skein of the lot.
#pragma once

#include "records/records.h"

namespace dyeleaf {

struct BaseView {
    const Records* records = nullptr;
    const Base* base = nullptr;
};

struct LotView {
    const Records* records = nullptr;
    const Lot* lot = nullptr;
    bool alternate = false; // its tags ask to alternate skeins
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

} // namespace dyeleaf
