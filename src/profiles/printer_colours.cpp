#include "profiles/printer_colours.h"

#include <algorithm>

#include <lcms2.h>

namespace dyeleaf {

namespace {

cmsCIELab theirs(Lab lab) {
    return {lab.lightness, lab.a, lab.b};
}

} // namespace

void PrinterColours::Delete::operator()(void* transform) const {
    cmsDeleteTransform(transform);
}

std::optional<PrinterColours> PrinterColours::of(const Profile& profile) {
    cmsUInt32Number inks = 0;
    PrinterColours printer;
    switch (profile.colours()) {
    case DeviceColours::grey: inks = TYPE_GRAY_DBL; break;
    case DeviceColours::rgb: inks = TYPE_RGB_DBL; break;
    case DeviceColours::cmyk:
        inks = TYPE_CMYK_DBL;
        printer.all_ = 100;
        break;
    case DeviceColours::others: return std::nullopt;
    }
    const std::unique_ptr<void, decltype(&cmsCloseProfile)> lab{cmsCreateLab4Profile(nullptr), cmsCloseProfile};
    constexpr cmsUInt32Number plainly = cmsFLAGS_NOOPTIMIZE | cmsFLAGS_NOCACHE;
    const auto to = [&](cmsUInt32Number flags) {
        return Transform{cmsCreateTransform(lab.get(), TYPE_Lab_DBL, profile.handle(), inks,
                                            INTENT_RELATIVE_COLORIMETRIC, plainly | flags)};
    };
    const auto from = [&](cmsUInt32Number intent) {
        return Transform{cmsCreateTransform(profile.handle(), inks, lab.get(), TYPE_Lab_DBL, intent, plainly)};
    };
    printer.to_inks_ = to(cmsFLAGS_BLACKPOINTCOMPENSATION);
    printer.to_inks_uncompensated_ = to(0);
    printer.to_sight_ = from(INTENT_RELATIVE_COLORIMETRIC);
    printer.to_instrument_ = from(INTENT_ABSOLUTE_COLORIMETRIC);
    if (!printer.to_inks_ || !printer.to_inks_uncompensated_ || !printer.to_sight_ || !printer.to_instrument_)
        return std::nullopt;
    return printer;
}

// Floating point goes on beyond none and all of an ink; a printer does not.
PrinterColours::Inks PrinterColours::inks(const Transform& way, Lab colour) const {
    const cmsCIELab lab = theirs(colour);
    Inks inks{};
    cmsDoTransform(way.get(), &lab, inks.data(), 1);
    for (double& ink : inks)
        ink = std::clamp(ink, 0.0, all_);
    return inks;
}

Lab PrinterColours::seen(const Transform& way, const Inks& inks) {
    cmsCIELab lab{};
    cmsDoTransform(way.get(), inks.data(), &lab, 1);
    return {lab.L, lab.a, lab.b};
}

Lab PrinterColours::printed(Lab sent) const {
    return seen(to_sight_, inks(to_inks_, sent));
}

Lab PrinterColours::on_paper(Lab sent) const {
    return seen(to_instrument_, inks(to_inks_, sent));
}

Lab PrinterColours::nearest(Lab sent) const {
    return seen(to_sight_, inks(to_inks_uncompensated_, sent));
}

} // namespace dyeleaf
