#include "base/plain_figures.h"

#include "base/number.h"

namespace dyeleaf {

std::string plain(Mass mass) {
    return decimal(mass.number(), 3) + " g";
}

std::string plain(Volume volume) {
    return decimal(volume.number(), 1) + " mL";
}

std::string plain(Percent share) {
    return decimal(share.number(), 4) + " %";
}

} // namespace dyeleaf
