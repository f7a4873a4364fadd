#include "records/girth.h"

#include <numbers>

namespace dyeleaf {

Length diameter_from(Girth::By by, Length measured) {
    switch (by) {
    case Girth::By::diameter: break;
    case Girth::By::circumference: return measured / std::numbers::pi;
    case Girth::By::strip: return measured / std::numbers::pi - label_thickness;
    }
    return measured;
}

} // namespace dyeleaf
