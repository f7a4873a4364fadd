// The subject of everything that is asked of a jar.
#pragma once

#include "records/records.h"

namespace dyeleaf {

struct JarView {
    const Records* records = nullptr;
    const Jar* jar = nullptr;
};

} // namespace dyeleaf
