// Reflectance curves against the tables of ASTM E308 and of CIE 15:2004.
#include "colour/spectrum.h"

#include "colour/difference.h"

#include <catch2/catch.hpp>
#include <cmath>

using namespace dyeleaf;

namespace {

Spectrum flat(double reflectance, int from = 380, int step = 10, std::size_t count = 36) {
    return {from, step, std::vector<double>(count, reflectance)};
}

struct Weight {
    int wavelength;
    Triple xyz; // of 100
};

// What each measured value adds to XYZ, found by measuring a surface that reflects there alone.
Triple weight(int wavelength, int from, int step, std::size_t count, Illuminant illuminant, Observer observer) {
    Spectrum lone = flat(0, from, step, count);
    lone.reflectance[static_cast<std::size_t>((wavelength - from) / step)] = 100;
    const Xyz xyz = to_xyz(lone, illuminant, observer);
    return {xyz.x, xyz.y, xyz.z};
}

void check_weights(std::initializer_list<Weight> published, int from, int step, std::size_t count,
                   Illuminant illuminant, Observer observer) {
    for (const Weight& row : published) {
        const Triple found = weight(row.wavelength, from, step, count, illuminant, observer);
        for (std::size_t channel = 0; channel < 3; ++channel) {
            INFO(row.wavelength << " nm, channel " << channel);
            // Sums of 5 nm where the standard's tables were made from 1 nm.
            CHECK(found[channel] == Approx(row.xyz[channel]).epsilon(0.006).margin(0.008));
        }
    }
}

} // namespace

TEST_CASE("the white of each light is the published one", "[colour]") {
    struct Row {
        Illuminant illuminant;
        Observer observer;
        double x, z;
    };
    // CIE 15:2004, table T.3.
    const Row published[] = {{Illuminant::a, Observer::two_degrees, 109.85, 35.58},
                             {Illuminant::a, Observer::ten_degrees, 111.14, 35.20},
                             {Illuminant::d50, Observer::two_degrees, 96.42, 82.51},
                             {Illuminant::d50, Observer::ten_degrees, 96.72, 81.43},
                             {Illuminant::d55, Observer::two_degrees, 95.68, 92.14},
                             {Illuminant::d55, Observer::ten_degrees, 95.80, 90.93},
                             {Illuminant::d65, Observer::two_degrees, 95.04, 108.88},
                             {Illuminant::d65, Observer::ten_degrees, 94.81, 107.32},
                             {Illuminant::d75, Observer::two_degrees, 94.97, 122.61},
                             {Illuminant::d75, Observer::ten_degrees, 94.42, 120.64},
                             {Illuminant::f2, Observer::two_degrees, 99.19, 67.39},
                             {Illuminant::f2, Observer::ten_degrees, 103.28, 69.03},
                             {Illuminant::f11, Observer::two_degrees, 100.96, 64.35},
                             {Illuminant::f11, Observer::ten_degrees, 103.86, 65.61}};
    for (const Row& row : published) {
        const Xyz white_sum = to_xyz(flat(1), row.illuminant, row.observer);
        CHECK(white_sum.x * 100 == Approx(row.x).margin(0.0055));
        CHECK(white_sum.y == Approx(1));
        CHECK(white_sum.z * 100 == Approx(row.z).margin(0.0055));
        // The whites of ASTM E308 are sums of 1 nm.
        const Xyz standard = white_of(row.illuminant, row.observer);
        CHECK(white_sum.x == Approx(standard.x).margin(0.0001));
        CHECK(white_sum.z == Approx(standard.z).margin(0.00025));
    }
}

TEST_CASE("an equal light looks white to both eyes", "[colour]") {
    // ISO/CIE 11664-1: the three functions have one sum.
    for (const Observer observer : {Observer::two_degrees, Observer::ten_degrees}) {
        Triple sum{};
        for (const Triple& functions : matching_functions(observer)) {
            for (std::size_t channel = 0; channel < 3; ++channel)
                sum[channel] += functions[channel];
        }
        CHECK(sum[0] / sum[1] == Approx(1).margin(0.00015));
        CHECK(sum[2] / sum[1] == Approx(1).margin(0.00015));
    }
}

TEST_CASE("weights are those of ASTM E308", "[colour]") {
    // ASTM E308, table 5: A, 1964, 10 nm.
    check_weights({{380, {0.000, 0.000, 0.000}},
                   {390, {0.002, 0.000, 0.008}},
                   {410, {0.134, 0.014, 0.615}},
                   {430, {0.686, 0.084, 3.386}},
                   {440, {0.964, 0.156, 4.944}},
                   {460, {1.006, 0.424, 5.812}},
                   {490, {0.078, 1.616, 1.973}},
                   {510, {0.218, 3.529, 0.658}},
                   {560, {6.200, 8.758, 0.001}},
                   {600, {12.746, 7.468, 0.000}},
                   {620, {10.817, 5.033, 0.000}},
                   {650, {3.887, 1.560, 0.000}},
                   {700, {0.166, 0.065, 0.000}}},
                  360, 10, 48, Illuminant::a, Observer::ten_degrees);
    // The same at 20 nm.
    check_weights({{380, {-0.009, -0.001, -0.041}},
                   {400, {0.060, 0.005, 0.257}},
                   {420, {0.773, 0.078, 3.697}},
                   {440, {1.900, 0.304, 9.755}},
                   {460, {1.971, 0.855, 11.487}},
                   {480, {0.718, 2.146, 6.785}},
                   {500, {0.043, 4.899, 2.321}},
                   {540, {5.677, 14.461, 0.196}},
                   {580, {20.554, 17.584, -0.003}},
                   {600, {25.332, 14.896, 0.000}},
                   {660, {4.668, 1.830, 0.000}},
                   {720, {0.075, 0.029, 0.000}}},
                  360, 20, 24, Illuminant::a, Observer::ten_degrees);
    // D65, 1931, 20 nm.
    check_weights({{380, {-0.008, 0.000, -0.039}},
                   {400, {0.179, 0.002, 0.829}},
                   {420, {2.542, 0.071, 12.203}},
                   {440, {6.670, 0.453, 33.637}},
                   {460, {6.333, 1.316, 36.334}},
                   {500, {0.052, 6.866, 5.543}},
                   {560, {11.301, 18.863, 0.068}},
                   {600, {17.933, 10.699, 0.013}},
                   {640, {7.057, 2.743, 0.000}},
                   {680, {0.670, 0.242, 0.000}},
                   {700, {0.140, 0.050, 0.000}}},
                  360, 20, 24, Illuminant::d65, Observer::two_degrees);
}

TEST_CASE("the last measured value stands for what an instrument does not reach", "[colour]") {
    // ASTM E308, 7.3.2.2: the first and last rows of that table take up all beyond them.
    check_weights({{400, {0.170, 0.002, 0.785}}, {420, {2.542, 0.071, 12.203}}, {700, {0.185, 0.067, 0.000}}}, 400, 20,
                  16, Illuminant::d65, Observer::two_degrees);
    CHECK(delta_e_76(to_lab(flat(1, 400, 10, 31)), {100, 0, 0}) == Approx(0).margin(1e-9));
    CHECK(last_wavelength(flat(1, 400, 10, 31)) == 700);
}

TEST_CASE("a brown comes out as elsewhere", "[colour]") {
    // Reflectance of a brown and what Colour (colour-science.org, tests of its ASTM E308) makes of every second and
    // every fourth value.
    const std::vector<double> brown = {0.0641, 0.0654, 0.0645, 0.0605, 0.0562, 0.0543, 0.0537, 0.0541,
                                       0.0559, 0.0603, 0.0651, 0.0680, 0.0705, 0.0736, 0.0772, 0.0809,
                                       0.0870, 0.0990, 0.1128, 0.1251, 0.1360, 0.1439, 0.1511, 0.1590,
                                       0.1688, 0.1828, 0.1996, 0.2187, 0.2397, 0.2618, 0.2852};
    const Xyz fine = to_xyz({400, 10, brown}, Illuminant::a, Observer::ten_degrees);
    CHECK(fine.x * 100 == Approx(14.38257).margin(0.002));
    CHECK(fine.y * 100 == Approx(10.74568).margin(0.002));
    CHECK(fine.z * 100 == Approx(2.01588).margin(0.002));
    Spectrum every_second{400, 20, {}};
    for (std::size_t i = 0; i < brown.size(); i += 2)
        every_second.reflectance.push_back(brown[i]);
    const Xyz coarse = to_xyz(every_second, Illuminant::a, Observer::ten_degrees);
    CHECK(coarse.x * 100 == Approx(14.38330).margin(0.002));
    CHECK(coarse.y * 100 == Approx(10.74604).margin(0.002));
    CHECK(coarse.z * 100 == Approx(2.01561).margin(0.002));
}

TEST_CASE("a grey is as light as its reflectance says", "[colour]") {
    // CIE 15:2004, 8.2.1.
    for (const double reflectance : {0.02, 0.184187, 0.5, 0.9}) {
        const Lab grey = to_lab(flat(reflectance));
        CHECK(grey.lightness == Approx(116 * std::cbrt(reflectance) - 16));
        CHECK(chroma(grey) == Approx(0).margin(1e-9));
    }
}

TEST_CASE("between measured values lies the cubic through them", "[colour]") {
    // ASTM E2022: a third-order polynomial is met exactly, away from the ends.
    const auto cubic = [](double nm) { return 0.5 + std::pow((nm - 550) / 200, 3); };
    Spectrum spectrum{400, 20, {}};
    for (int nm = 400; nm <= 700; nm += 20)
        spectrum.reflectance.push_back(cubic(nm));
    for (double nm = 420; nm <= 680; nm += 3.5)
        CHECK(reflectance_at(spectrum, nm) == Approx(cubic(nm)));
    CHECK(reflectance_at(spectrum, 380) == spectrum.reflectance.front());
    CHECK(reflectance_at(spectrum, 780) == spectrum.reflectance.back());
    CHECK(reflectance_at(spectrum, 700) == spectrum.reflectance.back());
    CHECK(delta_e_76(to_lab(spectrum_of(reflectance_curve(spectrum))), to_lab(spectrum)) < 1e-9);
}
