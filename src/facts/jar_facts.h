// What can be asked of a shaker jar, its cautions among it.
#pragma once

#include "facts/facts.h"
#include "records/records.h"

namespace dyeleaf {

struct JarView {
    const Records* records = nullptr;
    const Jar* jar = nullptr;
};

const Vocabulary& jar_vocabulary();

} // namespace dyeleaf
