// A dye as it speckles undyed yarn: what a drawing of it has to show, in true size.
#pragma once

#include "base/colour.h"
#include "base/length.h"
#include "base/quantity.h"
#include "records/speckle_grade.h"

#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

struct Speckled {
    // What the dye breaks into, round each whole speck.
    struct Halo {
        Rgb colour;
        Length reach; // beyond the speck's edge
    };
    enum class Dye { shown, not_recorded, not_printable };

    std::string dye_id; // from which its specks get their places: the same for the same dye
    SpeckleGrade grade = SpeckleGrade::clean;
    Length spread; // width of a whole speck once wetted
    ArealDensity density;
    Dye dye = Dye::not_recorded;
    Rgb colour{};              // of the dye where it is shown; of the nearest tint where it is not printable
    std::vector<Halo> halos;   // in the order recorded
    std::optional<Rgb> ground; // of the undyed yarn; none: not recorded
    std::string description;   // for readers who cannot see it
};

} // namespace dyeleaf
