// The subject of everything that is asked of a dye.
#pragma once

#include "records/records.h"

namespace dyeleaf {

struct DyeView {
    const Records* records = nullptr;
    const Dye* dye = nullptr;
};

} // namespace dyeleaf
