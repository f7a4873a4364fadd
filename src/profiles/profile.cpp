#include "profiles/profile.h"

#include <array>
#include <cstdint>
#include <limits>

#include <lcms2.h>

namespace dyeleaf {

namespace {

cmsCIExyY chromaticity(const Xyz& colour) {
    const double sum = colour.x + colour.y + colour.z;
    return {colour.x / sum, colour.y / sum, 1};
}

bool describes_a_device(void* profile) {
    const cmsProfileClassSignature kind = cmsGetDeviceClass(profile);
    return kind == cmsSigInputClass || kind == cmsSigDisplayClass || kind == cmsSigOutputClass ||
           kind == cmsSigColorSpaceClass;
}

// ICC.1:2022, 7.2.2: a profile begins with its own length. The library takes one that ends too soon.
bool is_whole(std::string_view bytes) {
    std::uint32_t length = 0;
    for (const char byte : bytes.substr(0, 4))
        length = length << 8U | static_cast<unsigned char>(byte);
    return bytes.size() > 4 && bytes.size() >= length;
}

} // namespace

void Profile::Close::operator()(void* handle) const {
    cmsCloseProfile(handle);
}

std::optional<Profile> Profile::read(std::string_view bytes) {
    if (!is_whole(bytes) || bytes.size() > std::numeric_limits<cmsUInt32Number>::max()) return std::nullopt;
    Profile profile{cmsOpenProfileFromMem(bytes.data(), static_cast<cmsUInt32Number>(bytes.size()))};
    if (!profile.handle_ || !describes_a_device(profile.handle())) return std::nullopt;
    return profile;
}

Profile Profile::srgb() {
    return Profile{cmsCreate_sRGBProfile()};
}

std::optional<Profile> Profile::rgb(const Primaries& primaries, double gamma) {
    const cmsCIExyY white = chromaticity(primaries.white);
    const cmsCIExyYTRIPLE lights = {chromaticity(primaries.red), chromaticity(primaries.green),
                                    chromaticity(primaries.blue)};
    const std::unique_ptr<cmsToneCurve, void (*)(cmsToneCurve*)> curve{cmsBuildGamma(nullptr, gamma), cmsFreeToneCurve};
    const std::array<cmsToneCurve*, 3> curves = {curve.get(), curve.get(), curve.get()};
    Profile profile{curve ? cmsCreateRGBProfile(&white, &lights, curves.data()) : nullptr};
    if (!profile.handle_) return std::nullopt;
    return profile;
}

DeviceColours Profile::colours() const {
    switch (cmsGetColorSpace(handle())) {
    case cmsSigRgbData: return DeviceColours::rgb;
    case cmsSigGrayData: return DeviceColours::grey;
    case cmsSigCmykData: return DeviceColours::cmyk;
    default: return DeviceColours::others;
    }
}

bool Profile::is_of_printer() const {
    return cmsGetDeviceClass(handle()) == cmsSigOutputClass;
}

std::string Profile::name() const {
    std::array<char, 256> text{};
    cmsGetProfileInfoASCII(handle(), cmsInfoDescription, "en", "US", text.data(), text.size());
    return text.data();
}

} // namespace dyeleaf
