// Pictures by arithmetic: a known colour beside a known grey, under a known light.
#include "photographs/photo_reading.h"

#include "colour/difference.h"
#include "colour/spaces.h"

#include <catch2/catch.hpp>

#include <random>

using namespace dyeleaf;

namespace {

constexpr int side = 60;

Xyz operator*(const Xyz& colour, double times) {
    return {colour.x * times, colour.y * times, colour.z * times};
}

// Numbers that are the same on every machine: the standard fixes the engine, but no distribution.
class Chance {
  public:
    double share() { return static_cast<double>(engine_()) / 4294967296.0; }
    // About normal: twelve uniform ones, less their mean, have a variance of 1.
    double normal() {
        double sum = -6;
        for (int i = 0; i < 12; ++i)
            sum += share();
        return sum;
    }

  private:
    std::mt19937 engine_{20260314};
};

// What a camera makes of light: no channel beyond its ends, in steps of eight bits as sRGB codes them.
Xyz coded_light(const Xyz& light, CodedPixel& pixel) {
    const Xyz d65 = adapted(light, white_d50, white_d65);
    const RgbResult rgb = to_rgb(to_lab(adapted(d65, white_d65, white_d50)));
    Triple back{};
    const std::array<double, 3> channels{rgb.colour.red, rgb.colour.green, rgb.colour.blue};
    for (std::size_t i = 0; i < 3; ++i) {
        const double byte = std::round(channels.at(i) * 255);
        pixel.at(i) = static_cast<std::uint16_t>(byte * 257);
        back[i] = decoded(byte / 255);
    }
    return to_xyz(lab_of_linear_rgb(back));
}

template <class Light> PhotoSample sample(const Light& light) {
    PhotoSample result{side, side, {}, {}};
    for (int y = 0; y < side; ++y) {
        for (int x = 0; x < side; ++x) {
            CodedPixel pixel{};
            result.light.push_back(coded_light(light(x, y), pixel));
            result.coded.push_back(pixel);
        }
    }
    return result;
}

PhotoSample even(const Xyz& light) {
    return sample([&](int, int) { return light; });
}

// How a surface looks to a camera set to D50 when the light is another: as Bradford has it.
Xyz lit(const Xyz& surface, const Xyz& light, double exposure) {
    return adapted(surface, white_d50, light) * exposure;
}

Xyz grey(double share) {
    return white_d50 * share;
}

constexpr Xyz illuminant_a = white_at(0.44757, 0.40745); // CIE 15:2004, table T.3
constexpr Xyz warm = white_at(0.38, 0.37);
constexpr Xyz cool = white_at(0.31, 0.33);

double error(const PhotoReading& reading, const Lab& truth) {
    return delta_e_2000(reading.colour, truth);
}

} // namespace

TEST_CASE("the midmean leaves out the darkest and the lightest quarter", "[photographs]") {
    const auto grey_of = [](double y) { return Xyz{y, y, y}; };
    CHECK(
        midmean({grey_of(8), grey_of(2), grey_of(100), grey_of(4), grey_of(0), grey_of(3), grey_of(5), grey_of(1)}).y ==
        Approx((2 + 3 + 4 + 5) / 4.0));
    CHECK(midmean({grey_of(3)}).y == 3);
    CHECK(midmean({grey_of(3), grey_of(4)}).y == Approx(3.5));
    // By lightness, not channel by channel: no colour comes out that lies between none of those there.
    CHECK(midmean({{0, 1, 9}, {7, 2, 0}, {7, 2, 0}, {0, 3, 9}}).x == Approx(7));
}

// In steps of eight bits a colour is known to about 0.3 (ΔE00); the rest is arithmetic.
TEST_CASE("a colour is found under any light and exposure", "[photographs]") {
    for (const Lab truth : {Lab{50, 0, 0}, Lab{31, 12, -24}, Lab{62, 40, 35}, Lab{75, -8, 50}, Lab{20, 4, -6}}) {
        for (const Xyz light : {white_d50, warm, cool}) {
            for (const double exposure : {0.5, 0.8, 1.1}) {
                INFO(truth.lightness << " " << light.x << " " << exposure);
                const auto swatch = even(lit(to_xyz(truth), light, exposure));
                const auto reading = reading_of(swatch, even(lit(grey(0.18), light, exposure)), percent(18)).value();
                CHECK(error(reading, truth) < 1.0);
                CHECK(reading.exposure == Approx(exposure).epsilon(0.03));
                CHECK(reading.spread < 1.0);
                CHECK(reading.unevenness == Approx(0).margin(1e-9));
            }
        }
    }
}

TEST_CASE("the reference's lightness is the measure of the swatch's", "[photographs]") {
    const auto swatch = even(grey(0.3));
    const auto card = even(grey(0.2));
    CHECK(reading_of(swatch, card, percent(18)).value().colour.lightness ==
          Approx(to_lab(grey(0.27)).lightness).margin(0.6));
    CHECK(reading_of(swatch, card, percent(40)).value().colour.lightness ==
          Approx(to_lab(grey(0.6)).lightness).margin(0.8));
    CHECK_FALSE(reading_of(swatch, even({}), percent(18)));
}

// Strands: seven in ten pixels show the dye, with noise; the others are shadow or shine.
TEST_CASE("shadows and shine between the strands do not turn the colour", "[photographs]") {
    for (const Lab truth : {Lab{45, 35, -20}, Lab{60, -20, 40}, Lab{35, 5, -28}}) {
        Chance chance;
        const auto strands = sample([&](int, int) {
            const double which = chance.share();
            const Xyz dye = to_xyz(truth);
            Xyz seen = dye * (1 + 0.06 * chance.normal());
            if (which < 0.15) seen = dye * (0.1 + 0.3 * chance.share());
            if (which > 0.85) seen = {dye.x + 0.3, dye.y + 0.3, dye.z + 0.3};
            return lit(seen, warm, 0.7);
        });
        const auto card = sample([&](int, int) { return lit(grey(0.5) * (1 + 0.02 * chance.normal()), warm, 0.7); });
        const auto reading = reading_of(strands, card, percent(50)).value();
        CHECK(error(reading, truth) < 1.5);
        CHECK(reading.spread > 0.8);
        CHECK(reading.spread < 3);
        CHECK(reading.spread_of_hue < 2);
        CHECK(reading.reference_spread < 1.5);
        // A plain mean is led astray by what the midmean leaves out.
        Xyz sum;
        for (const Xyz& pixel : strands.light)
            sum = {sum.x + pixel.x, sum.y + pixel.y, sum.z + pixel.z};
        const Lab mean = to_lab(adapted(sum * (1.0 / (side * side) / 0.7), warm, white_d50));
        CHECK(delta_e_2000(mean, truth) > 2 * error(reading, truth));
    }
}

// A camera balances its own channels; that a cone space is the better guess is common practice. Between the two lies:
TEST_CASE("a cast in the camera's channels is taken off nearly as well", "[photographs]") {
    const Triple cast{1.0, 0.78, 0.55};
    const auto seen = [&](const Xyz& surface) {
        Triple linear = linear_rgb(to_lab(surface));
        for (std::size_t i = 0; i < 3; ++i)
            linear[i] *= cast[i];
        return to_xyz(lab_of_linear_rgb(linear));
    };
    for (const Lab truth : {Lab{50, 0, 0}, Lab{31, 12, -24}, Lab{62, 40, 35}, Lab{60, -20, 40}}) {
        const auto reading = reading_of(even(seen(to_xyz(truth))), even(seen(grey(0.18))), percent(18)).value();
        CHECK(error(reading, truth) < 4);
    }
}

TEST_CASE("what makes a reading doubtful is told in figures", "[photographs]") {
    const auto card = even(grey(0.18));
    SECTION("two colours") {
        const auto halves = sample([](int x, int) { return to_xyz(x < side / 2 ? Lab{50, 40, 0} : Lab{50, -30, 20}); });
        CHECK(reading_of(halves, card, percent(18)).value().spread_of_hue > 10);
        CHECK(reading_of(halves, card, percent(18)).value().spread > 10);
    }
    SECTION("half of it paper") {
        const auto halves = sample([](int x, int) { return to_xyz(x < side / 2 ? Lab{95, 0, 0} : Lab{40, 0, 0}); });
        const auto reading = reading_of(halves, card, percent(18)).value();
        CHECK(reading.spread > 15);
        CHECK(reading.spread_of_hue < 1);
    }
    SECTION("light from one side") {
        const auto slope = sample([](int x, int) { return grey(0.18 * (1 + 0.5 * x / side)); });
        const auto reading = reading_of(even(grey(0.3)), slope, percent(18)).value();
        CHECK(reading.unevenness > 2);
    }
    SECTION("over-exposed") {
        const auto paper = even(grey(0.9) * 1.3);
        const auto reading = reading_of(even(to_xyz({60, 60, 40}) * 2), paper, percent(90)).value();
        CHECK(reading.reference_clipped.number() == 100);
        CHECK(reading.clipped.number() == 100);
    }
    SECTION("stronger than the picture can hold") {
        const auto reading = reading_of(even(to_xyz({60, -40, -40})), card, percent(18)).value();
        CHECK(reading.drowned.number() == 100);
        CHECK(reading.clipped.number() == 0);
    }
    SECTION("by a bulb") {
        const auto reading =
            reading_of(even(lit(grey(0.3), illuminant_a, 0.8)), even(lit(grey(0.18), illuminant_a, 0.8)), percent(18))
                .value();
        CHECK(reading.cast > 25);
        CHECK(reading_of(even(grey(0.3)), card, percent(18)).value().cast < 1);
    }
}
