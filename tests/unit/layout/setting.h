// With what and on which day the labels of these tests are set.
#pragma once

#include "english.h"
#include "facts/items.h"
#include "project_folder.h"
#include "text/typesetter.h"

namespace dyeleaf {

inline const Typesetter& typesetter() {
    static Diagnostics diagnostics;
    static const Typesetter one{{fonts_folder()}, diagnostics};
    return one;
}

inline const Printing printing{{english()}, nullptr, {2026, 11, 2}};

} // namespace dyeleaf
