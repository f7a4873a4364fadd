#include "pictures/faults.h"

namespace dyeleaf {

PictureFault too_large(Pixels pixels) {
    return {"is " + std::to_string(pixels.across) + " × " + std::to_string(pixels.down) +
                " pixels large; the most is " + std::to_string(most_pixels) + " a side",
            "save a smaller copy of it: 300 pixels to the inch are enough for any label"};
}

PictureFault broken() {
    return {"is broken: it cannot be read to its end", "copy it again from where it came"};
}

bool is_sound(Pixels pixels) {
    const auto sound = [](int side) { return side > 0 && side <= most_pixels; };
    return sound(pixels.across) && sound(pixels.down);
}

} // namespace dyeleaf
