// What can be asked of one thing in a jar.
#pragma once

#include "facts/facts.h"
#include "facts/jar_view.h"
#include "facts/mix.h"

#include <vector>

namespace dyeleaf {

struct PartView {
    JarView of;
    Mix mix;
    std::size_t index = 0;
};
const Vocabulary& part_vocabulary();

// In stated order.
std::vector<PartView> jar_parts(const JarView& view);
std::vector<PartView> jar_dye_parts(const JarView& view);

} // namespace dyeleaf
