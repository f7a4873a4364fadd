// What can be asked of the studio, on every label.
#pragma once

#include "base/date.h"
#include "facts/facts.h"
#include "records/records.h"

namespace dyeleaf {

struct StudioView {
    const Studio* studio = nullptr;
    Date today;
};

const Vocabulary& studio_vocabulary();

} // namespace dyeleaf
