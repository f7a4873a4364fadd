#include "profiles/seen_colours.h"

#include <algorithm>

#include <lcms2.h>

namespace dyeleaf {

namespace {

struct CloseProfile {
    void operator()(void* profile) const { cmsCloseProfile(profile); }
};

// What one call takes.
constexpr std::size_t most_at_once = 1U << 20U;

} // namespace

static_assert(sizeof(Triple) == 3 * sizeof(double) && sizeof(Xyz) == 3 * sizeof(double));

void SeenColours::Delete::operator()(void* transform) const {
    cmsDeleteTransform(transform);
}

std::optional<SeenColours> SeenColours::of(const Profile& profile) {
    const std::unique_ptr<void, CloseProfile> xyz{cmsCreateXYZProfile()};
    SeenColours seen{cmsCreateTransform(profile.handle(), TYPE_RGB_DBL, xyz.get(), TYPE_XYZ_DBL,
                                        INTENT_RELATIVE_COLORIMETRIC, cmsFLAGS_NOOPTIMIZE | cmsFLAGS_NOCACHE)};
    if (!seen.transform_) return std::nullopt;
    return seen;
}

std::vector<Xyz> SeenColours::operator()(std::span<const Triple> colours) const {
    std::vector<Xyz> seen(colours.size());
    for (std::size_t at = 0; at < colours.size(); at += most_at_once) {
        const std::size_t count = std::min(most_at_once, colours.size() - at);
        cmsDoTransform(transform_.get(), &colours[at], &seen[at], static_cast<cmsUInt32Number>(count));
    }
    // Profiles write D50 in four digits (ICC.1:2022, 7.2.16).
    const cmsCIEXYZ& white = *cmsD50_XYZ();
    for (Xyz& colour : seen)
        colour = {colour.x / white.X * white_d50.x, colour.y, colour.z / white.Z * white_d50.z};
    return seen;
}

} // namespace dyeleaf
