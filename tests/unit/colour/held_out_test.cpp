// How far shades that are estimated between swatches are from shades that were dyed, by several ways of estimating, in
// ΔE00. `unit_tests "[held out]"` prints the table that DEVELOPERS.md shows.
#include "colour/difference.h"
#include "colour/kubelka_munk.h"
#include "colour/shade_curve.h"
#include "colour/spaces.h"
#include "simulated_dyes.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>
#include <functional>
#include <string>

using namespace dyeleaf;

namespace {

struct Swatched {
    double depth = 0;
    simulated::Curve curve{};
    Lab colour;
};
using Row = std::vector<Swatched>; // of one dye on one yarn, lightest first

using Estimate = std::function<Lab(const Row&, double depth)>;
using Change = double (*)(double);

double plain(double value) {
    return value;
}
double logarithm(double value) {
    return std::log(value);
}
// With the same small sum as ShadeCurve has, and back.
double logarithm_of_absorption(double value) {
    return std::log(value + 0.001);
}
double absorption_of_logarithm(double value) {
    return std::exp(value) - 0.001;
}

// A value at a depth, from those of the swatches: along a monotone curve, or straight between the two neighbours.
template <class Value> double along(const Row& row, double depth, Change scale, bool straight, Value value) {
    std::vector<double> x, y;
    for (const Swatched& one : row) {
        x.push_back(scale(one.depth));
        y.push_back(value(one));
    }
    if (!straight) return MonotoneCurve{x, y}.at(scale(depth));
    std::size_t i = 1;
    while (i + 1 < x.size() && row[i].depth < depth)
        ++i;
    return y[i - 1] + (y[i] - y[i - 1]) * (scale(depth) - x[i - 1]) / (x[i] - x[i - 1]);
}

Estimate in_cielab(Change scale, bool straight) {
    return [=](const Row& row, double depth) {
        const auto channel = [&](double Lab::*which) {
            return along(row, depth, scale, straight, [which](const Swatched& one) { return one.colour.*which; });
        };
        return Lab{channel(&Lab::lightness), channel(&Lab::a), channel(&Lab::b)};
    };
}

// K/S of three bands, linear in XYZ.
Estimate in_bands(const Matrix& bands, Change scale, bool straight, Change change, Change back) {
    const Triple white = bands * Triple{white_d50.x, white_d50.y, white_d50.z};
    return [=](const Row& row, double depth) {
        Triple result = white;
        for (std::size_t i = 0; i < 3; ++i) {
            result[i] *= reflectance_of(std::max(
                0.0, back(along(row, depth, scale, straight, [&](const Swatched& one) {
                    const Xyz colour = to_xyz(one.colour);
                    return change(absorption_ratio((bands * Triple{colour.x, colour.y, colour.z})[i] / white[i]));
                }))));
        }
        const Triple colour = inverse(bands) * result;
        return to_lab(Xyz{colour[0], colour[1], colour[2]});
    };
}

// The program's bands, and others.
constexpr Matrix cat16{
    {{0.401288, 0.650173, -0.051461}, {-0.250268, 1.204414, 0.045854}, {-0.002079, 0.048952, 0.953127}}};
constexpr Matrix bradford{{{0.8951, 0.2664, -0.1614}, {-0.7502, 1.7135, 0.0367}, {0.0389, -0.0685, 1.0296}}};
constexpr Matrix xyz{{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}};
Matrix linear_srgb() {
    const Triple x = linear_rgb(to_lab(Xyz{1, 0, 0})), y = linear_rgb(to_lab(Xyz{0, 1, 0})),
                 z = linear_rgb(to_lab(Xyz{0, 0, 1}));
    return {{{x[0], y[0], z[0]}, {x[1], y[1], z[1]}, {x[2], y[2], z[2]}}};
}

// K/S of each wavelength.
Estimate by_wavelength(Change scale, bool straight, Change change, Change back) {
    return [=](const Row& row, double depth) {
        simulated::Curve result{};
        for (std::size_t i = 0; i < simulated::bands; ++i) {
            result[i] = reflectance_of(std::max(0.0, back(along(row, depth, scale, straight, [=](const Swatched& one) {
                                                    return change(absorption_ratio(one.curve[i]));
                                                }))));
        }
        return simulated::seen(result);
    };
}

Lab by_the_program(const Row& row, double depth) {
    std::vector<Shade> shades;
    for (const Swatched& one : row)
        shades.push_back({percent(one.depth), one.colour});
    return ShadeCurve{shades}.at(percent(depth));
}

struct Method {
    std::string name;
    Estimate estimate;
    std::vector<double> held_out = {}, between = {}; // ΔE00
};

double quantile(std::vector<double> errors, double share) {
    std::ranges::sort(errors);
    return errors[static_cast<std::size_t>(share * static_cast<double>(errors.size() - 1))];
}

const std::vector<std::vector<double>> ladders{{0.25, 0.5, 1, 2, 4}, {0.1, 0.3, 1, 3}, {0.5, 1, 2},
                                               {0.25, 0.5, 1},       {0.5, 2, 4},      {0.2, 0.5, 1, 1.5, 2, 3, 4}};

Row swatch_row(const std::vector<double>& depths, const simulated::Yarn& yarn, const simulated::Dye& dye,
               simulated::Dice& dice) {
    Row row;
    for (const double depth : depths) {
        const simulated::Curve curve = simulated::swatched(yarn, dye, depth, dice);
        row.push_back({depth, curve, simulated::seen(curve)});
    }
    return row;
}

// Each inner swatch held out in turn, and a shade that was dyed half way (by ratio) between each two.
std::vector<Method> measure() {
    const auto log_k = logarithm_of_absorption;
    const auto k = absorption_of_logarithm;
    std::vector<Method> methods{
        {"the program", by_the_program},
        {"by wavelength, the same way", by_wavelength(logarithm, false, log_k, k)},
        {"logarithms, straight", in_bands(cat16, logarithm, true, log_k, k)},
        {"K/S over depth, monotone", in_bands(cat16, plain, false, plain, plain)},
        {"K/S over depth, straight", in_bands(cat16, plain, true, plain, plain)},
        {"Bradford's cones", in_bands(bradford, logarithm, false, log_k, k)},
        {"XYZ", in_bands(xyz, logarithm, false, log_k, k)},
        {"linear sRGB", in_bands(linear_srgb(), logarithm, false, log_k, k)},
        {"CIELAB, logarithm, monotone", in_cielab(logarithm, false)},
        {"CIELAB, depth, straight", in_cielab(plain, true)},
    };
    Method again{"dyed and read again", {}};
    simulated::Dice dice;
    for (int i = 0; i < 150; ++i) {
        const simulated::Dye dye = simulated::any_dye(dice);
        for (const auto& depths : ladders) {
            const auto& yarn = simulated::yarns.at(static_cast<std::size_t>(dice.between(0, 4)));
            const Row row = swatch_row(depths, yarn, dye, dice);
            for (std::size_t at = 1; at < row.size(); ++at) {
                const double middle = std::sqrt(row[at - 1].depth * row[at].depth);
                const Lab dyed = simulated::seen(simulated::swatched(yarn, dye, middle, dice));
                for (Method& method : methods)
                    method.between.push_back(delta_e_2000(method.estimate(row, middle), dyed));
                const Lab once_more = simulated::seen(simulated::swatched(yarn, dye, middle, dice));
                again.between.push_back(delta_e_2000(once_more, dyed));
                if (at + 1 == row.size()) break;
                Row rest = row;
                rest.erase(rest.begin() + static_cast<std::ptrdiff_t>(at));
                for (Method& method : methods)
                    method.held_out.push_back(delta_e_2000(method.estimate(rest, row[at].depth), row[at].colour));
                const Lab read_again = simulated::seen(simulated::swatched(yarn, dye, row[at].depth, dice));
                again.held_out.push_back(delta_e_2000(read_again, row[at].colour));
            }
        }
    }
    methods.push_back(again);
    return methods;
}

} // namespace

TEST_CASE("simulated dyes are seen as their curves ask", "[colour]") {
    simulated::Curve half{};
    half.fill(0.5);
    CHECK(simulated::seen(half).lightness == Approx(76.0693).margin(1e-3)); // L* of Y = 0.5
    CHECK(std::abs(simulated::seen(half).a) < 1e-9);
    const simulated::Dye dye{{{540, 40, 10, 5}}, 0.01, 0.4};
    CHECK(simulated::within(simulated::measured(0.3, dye), dye) == Approx(0.3));
    CHECK(simulated::seen(simulated::dyed(simulated::yarns[2], dye, 2)).a > 30); // takes green away: pink
}

TEST_CASE("shades between swatches are estimated as nearly as the documentation says", "[colour]") {
    const std::vector<Method> methods = measure();
    const Method& program = methods.front();
    REQUIRE(program.held_out.size() == 1950);
    REQUIRE(program.between.size() == 2850);
    CHECK(quantile(program.between, 0.5) < 0.4);
    CHECK(quantile(program.between, 0.9) < 0.8);
    CHECK(quantile(program.between, 1) < 2);
    CHECK(quantile(program.held_out, 0.5) < 0.4);
    CHECK(quantile(program.held_out, 0.9) < 0.9);
    CHECK(quantile(program.held_out, 1) < 2);
    for (std::size_t i = 2; i + 1 < methods.size(); ++i) {
        INFO(methods[i].name);
        CHECK(quantile(program.held_out, 0.9) < quantile(methods[i].held_out, 0.9));
    }
}

TEST_CASE("the table of errors", "[.held out]") {
    fmt::print("{:32}{:>24}{:>24}\n", "", "held out", "half way between");
    for (const Method& method : measure()) {
        fmt::print("{:32}", method.name);
        for (const auto* errors : {&method.held_out, &method.between})
            fmt::print("{:8.2f}{:8.2f}{:8.2f}", quantile(*errors, 0.5), quantile(*errors, 0.9), quantile(*errors, 1));
        fmt::print("\n");
    }
}
