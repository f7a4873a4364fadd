// What printers make of colours, beside transicc (lcms 2.14) on Ghostscript's CMYK profile.
#include "colour/difference.h"
#include "colour/spaces.h"
#include "profiles/printer_colours.h"

#include <catch2/catch.hpp>
#include <lcms2.h>

#include <fstream>
#include <iterator>
#include <string>

using namespace dyeleaf;

namespace {

Profile outside_profile(const std::string& name) {
    std::ifstream file{"/usr/share/color/icc/ghostscript/" + name, std::ios::binary};
    const std::string bytes{std::istreambuf_iterator<char>{file}, {}};
    return Profile::read(bytes).value();
}

// A profile that Little CMS made, said to be a printer's.
Profile printers_own(void* made) {
    cmsSetDeviceClass(made, cmsSigOutputClass);
    cmsUInt32Number length = 0;
    REQUIRE(cmsSaveProfileToMem(made, nullptr, &length));
    std::string bytes(length, '\0');
    REQUIRE(cmsSaveProfileToMem(made, bytes.data(), &length));
    cmsCloseProfile(made);
    return Profile::read(bytes).value();
}

} // namespace

TEST_CASE("a press makes of colours what transicc says", "[profiles]") {
    struct Row {
        Lab sent, printed, on_paper, nearest;
    };
    // To the inks by -t1 -b (the last column without -b) -c0, and back by -t1 and -t3.
    const Row rows[] = {
        {{31, 12, -24}, {35.7445, 10.2617, -20.5664}, {30.7175, 9.1465, -16.5670}, {31.0968, 12.3203, -23.4805}},
        {{50, 60, 40}, {52.1216, 56.3555, 35.4687}, {45.5036, 50.7030, 33.5175}, {50.1363, 59.6797, 38.9336}},
        {{95, 0, 0}, {95.1884, 0.6563, 0.5078}, {84.3864, 0.3491, 3.9441}, {95.1057, 0.6602, 0.5156}},
        {{88, -79, 81}, {70.5898, -40.3398, 47.1055}, {62.1775, -36.5897, 44.3921}, {69.5251, -42.2734, 45.2852}},
        {{5, 0, 0}, {19.4378, 0.3633, 0.3789}, {15.9950, 0.2503, 1.4491}, {16.7034, 0.1406, -0.1055}}};
    const Profile profile = outside_profile("default_cmyk.icc");
    CHECK(profile.is_of_printer());
    const auto press = PrinterColours::of(profile).value();
    for (const Row& row : rows) {
        CHECK(delta_e_76(press.printed(row.sent), row.printed) < 0.05);
        CHECK(delta_e_76(press.on_paper(row.sent), row.on_paper) < 0.05);
        CHECK(delta_e_76(press.nearest(row.sent), row.nearest) < 0.05);
    }
}

TEST_CASE("no printer goes beyond all of its colours", "[profiles]") {
    const auto screen = PrinterColours::of(Profile::srgb()).value();
    for (const Lab inside : {Lab{31, 12, -24}, Lab{100, 0, 0}, Lab{54.2905, 80.8049, 69.8910}})
        CHECK(delta_e_76(screen.printed(inside), inside) < 0.1);
    // Green light alone is the nearest that sRGB has: clipped channel by channel, as pages are.
    const Lab beyond{88, -120, 100};
    CHECK(delta_e_76(screen.nearest(beyond), to_lab(to_rgb(beyond).colour)) < 0.2);
}

TEST_CASE("printers of RGB and of black alone are understood", "[profiles]") {
    const Profile rgb = printers_own(cmsCreate_sRGBProfile());
    CHECK(rgb.is_of_printer());
    CHECK(delta_e_76(PrinterColours::of(rgb).value().printed({50, 20, -30}), {50, 20, -30}) < 0.1);
    cmsToneCurve* curve = cmsBuildGamma(nullptr, 2.2);
    const auto black = PrinterColours::of(printers_own(cmsCreateGrayProfile(cmsD50_xyY(), curve))).value();
    cmsFreeToneCurve(curve);
    CHECK(delta_e_76(black.printed({50, 20, -30}), {50, 0, 0}) < 0.1);
}

TEST_CASE("a profile says what it is of", "[profiles]") {
    CHECK_FALSE(Profile::srgb().is_of_printer());
    CHECK_FALSE(outside_profile("a98.icc").is_of_printer());
    CHECK_FALSE(PrinterColours::of(outside_profile("lab.icc")));
}
