#include "colour/spaces.h"
#include "colour/xyz.h"
#include "profiles/seen_colours.h"

#include <catch2/catch.hpp>

#include <fstream>
#include <iterator>

using namespace dyeleaf;

namespace {

Lab lab_in(const Profile& profile, const Triple& colour) {
    const std::vector<Triple> colours{colour};
    return to_lab(SeenColours::of(profile).value()(colours).front());
}

void check_near(const Lab& found, const Lab& wanted, double margin) {
    CHECK(found.lightness == Approx(wanted.lightness).margin(margin));
    CHECK(found.a == Approx(wanted.a).margin(margin));
    CHECK(found.b == Approx(wanted.b).margin(margin));
}

// As Ghostscript ships them.
std::string outside_profile(const std::string& name) {
    std::ifstream file{"/usr/share/color/icc/ghostscript/" + name, std::ios::binary};
    return {std::istreambuf_iterator<char>{file}, {}};
}

// IEC 61966-2-1, ITU-R BT.709.
constexpr Primaries srgb_lights{white_d65, white_at(0.64, 0.33), white_at(0.30, 0.60), white_at(0.15, 0.06)};

} // namespace

// CSS Color 4 gives the same colours by arithmetic; profiles round theirs to 1/65536.
TEST_CASE("the sRGB profile means what sRGB does", "[profiles]") {
    for (const char* hex : {"#ffffff", "#000000", "#ff0000", "#00ff00", "#0000ff", "#336699", "#8b4513", "#030201"}) {
        const Rgb rgb = parse_hex(hex).value();
        check_near(lab_in(Profile::srgb(), {rgb.red, rgb.green, rgb.blue}), to_lab(rgb), 0.03);
    }
    CHECK(Profile::srgb().colours() == DeviceColours::rgb);
    CHECK(Profile::srgb().name().find("sRGB") != std::string::npos);
}

// CSS Color 4, "Predefined color spaces": the red of display-p3 is color(xyz-d65 0.4866 0.2290 0).
TEST_CASE("a profile is made of three lights and a gamma", "[profiles]") {
    const auto p3 =
        Profile::rgb({white_d65, white_at(0.68, 0.32), white_at(0.265, 0.69), white_at(0.15, 0.06)}, 1).value();
    const Xyz red = adapted({0.48657095, 0.22897456, 0}, white_d65, white_d50);
    check_near(lab_in(p3, {1, 0, 0}), to_lab(red), 0.05);
    // Light is the signal to the power of gamma: half the signal is a quarter of the light.
    const auto squared = Profile::rgb(srgb_lights, 2).value();
    const Triple light{0.25, 0.25, 0.25};
    check_near(lab_in(squared, {0.5, 0.5, 0.5}), lab_of_linear_rgb(light), 0.03);
    CHECK_FALSE(Profile::rgb({white_d65, white_d65, white_d65, white_d65}, 2.2));
}

// transicc (lcms 2.14) -t 1 -i a98.icc -o *Lab, from 8 bits a channel.
TEST_CASE("a profile is read from its bytes", "[profiles]") {
    const std::string bytes = outside_profile("a98.icc");
    const auto a98 = Profile::read(bytes).value();
    CHECK(a98.colours() == DeviceColours::rgb);
    check_near(lab_in(a98, {200 / 255.0, 100 / 255.0, 50 / 255.0}), {58.4096, 48.3154, 55.4390}, 0.01);
    CHECK_FALSE(Profile::read(bytes.substr(0, bytes.size() / 2)));
    CHECK(Profile::read(outside_profile("default_cmyk.icc")).value().colours() == DeviceColours::cmyk);
    CHECK(Profile::read(outside_profile("sgray.icc")).value().colours() == DeviceColours::grey);
    CHECK(Profile::read(outside_profile("lab.icc")).value().colours() == DeviceColours::others);
}

TEST_CASE("bytes that are no profile of a device are refused", "[profiles]") {
    CHECK_FALSE(Profile::read(""));
    CHECK_FALSE(Profile::read("a profile"));
    CHECK_FALSE(Profile::read(std::string(4000, '\0')));
}
