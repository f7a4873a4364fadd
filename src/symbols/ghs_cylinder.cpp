#include "symbols/ghs.h"

namespace dyeleaf {

// Lying, its valve raised to the right, with a light along its upper side.
Ink gas_cylinder() {
    const Path lying = path_of("M 25.4 40.8 H 61 C 66.6 40.8 68.6 46.4 72.4 46.4 V 44.8 H 78.4 V 55.2 H 72.4 V 53.6 "
                               "C 68.6 53.6 66.6 59.2 61 59.2 H 25.4 C 22.6 59.2 21 57.6 21 55 V 45 "
                               "C 21 42.4 22.6 40.8 25.4 40.8 Z M 26.4 47 H 60.6 V 45 H 26.4 Z");
    return {filled(transformed(lying, turned_about(at(50, 50), -25)))};
}

} // namespace dyeleaf
