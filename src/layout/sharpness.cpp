#include "layout/sharpness.h"

#include "base/number.h"
#include "base/words.h"

#include <cmath>
#include <filesystem>

namespace dyeleaf {

namespace {

std::string words(Size size) {
    const auto tenths = [](Length side) { return decimal(std::floor(side.in_mm() * 10 + 1e-6) / 10, 1); };
    return tenths(size.width) + " × " + tenths(size.height) + " mm";
}

std::string words(Pixels pixels) {
    return std::to_string(pixels.across) + " × " + std::to_string(pixels.down) + " pixels";
}

// What a picture of this printed size needs.
Pixels enough(Size size) {
    const auto pixels = [](Length side) {
        return static_cast<int>(std::ceil(side / inches(1) * least_pixels_to_the_inch - 1e-6));
    };
    return {pixels(size.width), pixels(size.height)};
}

void warn_if_coarse(const PlacedPicture& placed, Diagnostics& diagnostics) {
    const PictureFile& picture = placed.mark.picture;
    if (picture.kind == PictureKind::svg) return;
    const Pixels pixels = seen(picture);
    const double to_the_inch = pixels.across / (placed.size.width / inches(1));
    if (to_the_inch > least_pixels_to_the_inch - 0.5) return;
    const std::string name = in_quotes(std::filesystem::path{picture.file}.filename().string());
    const std::string owner = placed.mark.owner.empty() ? "" : " of " + in_quotes(placed.mark.owner);
    const double still_sharp = to_the_inch / least_pixels_to_the_inch;
    diagnostics.warning(placed.box->spot,
                        "the picture " + name + owner + " prints at " + words(placed.size) + " with only " +
                            decimal(to_the_inch, 0) + " pixels to the inch, and will look coarse",
                        "it has " + words(pixels) + ", sharp up to " +
                            words({placed.size.width * still_sharp, placed.size.height * still_sharp}) +
                            ": make the box that small, or take a picture of " + words(enough(placed.size)) +
                            " or more");
}

} // namespace

void check_sharpness(const Placement& placement, Diagnostics& diagnostics) {
    for (const PlacedPicture& placed : placement.pictures)
        warn_if_coarse(placed, diagnostics);
}

} // namespace dyeleaf
