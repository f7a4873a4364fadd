#include "facts/photo_rows.h"

namespace dyeleaf {

const PhotoColour* photo_of(const ColourOrNone& colour) {
    return colour ? photo_of(colour->value) : nullptr;
}

std::string difference_words(const Language& language, double delta_e_2000) {
    return "ΔE00\u00A0" + language.number(fixed(delta_e_2000, 1));
}

} // namespace dyeleaf
