// The science of colour beside Little CMS, which works by the same standards and shares no code.
#include "colour/difference.h"
#include "colour/spaces.h"
#include "colour/xyz.h"

#include <catch2/catch.hpp>
#include <lcms2.h>
#include <memory>
#include <random>

using namespace dyeleaf;

namespace {

constexpr int pairs = 4000;

// Of the whole of Lab that dyed fibre can have, and beyond; the same in every run.
class Colours {
  public:
    Lab next() {
        const auto between = [this](double least, double most) {
            return least + (most - least) * static_cast<double>(generator_()) / static_cast<double>(generator_.max());
        };
        const double lightness = between(0, 100);
        const double a = between(-120, 120);
        return {lightness, a, between(-120, 120)};
    }

  private:
    std::minstd_rand generator_{20260314};
};

cmsCIELab theirs(Lab lab) {
    return {lab.lightness, lab.a, lab.b};
}

// Everything relative to the same white, which is a little bluer in ICC.1 than four digits of x and y make it.
constexpr cmsCIEXYZ d50{white_d50.x, white_d50.y, white_d50.z};

using Profile = std::unique_ptr<void, decltype(&cmsCloseProfile)>;
using Transform = std::unique_ptr<void, decltype(&cmsDeleteTransform)>;

} // namespace

TEST_CASE("Lab and XYZ turn into each other as elsewhere", "[colour]") {
    Colours colours;
    for (int i = 0; i < pairs; ++i) {
        const Lab lab = colours.next();
        const cmsCIELab same = theirs(lab);
        cmsCIEXYZ xyz{};
        cmsLab2XYZ(&d50, &xyz, &same);
        const Xyz ours = to_xyz(lab);
        CHECK(ours.x == Approx(xyz.X).margin(1e-9));
        CHECK(ours.y == Approx(xyz.Y).margin(1e-9));
        CHECK(ours.z == Approx(xyz.Z).margin(1e-9));
        cmsCIELab back{};
        cmsXYZ2Lab(&d50, &back, &xyz);
        CHECK(delta_e_76(to_lab(ours), {back.L, back.a, back.b}) < 1e-6);
    }
}

TEST_CASE("differences are those of others", "[colour]") {
    Colours colours;
    for (int i = 0; i < pairs; ++i) {
        const Lab first = colours.next();
        Lab second = colours.next();
        // Half of the pairs as near as lots of one colourway are.
        if (i % 2 == 0)
            second = {first.lightness + second.lightness / 50 - 1, first.a + second.a / 60, first.b + second.b / 60};
        const cmsCIELab a = theirs(first), b = theirs(second);
        CHECK(delta_e_2000(first, second) == Approx(cmsCIE2000DeltaE(&a, &b, 1, 1, 1)).margin(1e-6));
        CHECK(delta_e_76(first, second) == Approx(cmsDeltaE(&a, &b)).margin(1e-9));
    }
}

TEST_CASE("sRGB is Lab as elsewhere", "[colour]") {
    const Profile srgb{cmsCreate_sRGBProfile(), cmsCloseProfile};
    const Profile lab{cmsCreateLab4Profile(nullptr), cmsCloseProfile};
    const Transform transform{cmsCreateTransform(srgb.get(), TYPE_RGB_DBL, lab.get(), TYPE_Lab_DBL,
                                                 INTENT_RELATIVE_COLORIMETRIC, cmsFLAGS_NOCACHE),
                              cmsDeleteTransform};
    double worst = 0;
    for (int red = 0; red <= 255; red += 15) {
        for (int green = 0; green <= 255; green += 15) {
            for (int blue = 0; blue <= 255; blue += 15) {
                const Rgb rgb{red / 255.0, green / 255.0, blue / 255.0};
                const double in[3] = {rgb.red, rgb.green, rgb.blue};
                cmsCIELab out{};
                cmsDoTransform(transform.get(), in, &out, 1);
                worst = std::max(worst, delta_e_76(to_lab(rgb), {out.L, out.a, out.b}));
            }
        }
    }
    // Their white is that of ICC.1 in 15.16 fixed point (0.9642, 1, 0.8249); their curve and matrix are rounded to it.
    CHECK(worst < 0.1);
}
