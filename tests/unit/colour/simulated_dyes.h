// Invented dyes on invented wool whose colours come from physics that the program knows nothing of: what is estimated
// between swatches can be held against what "was dyed".
#pragma once

#include "colour/xyz.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <random>
#include <vector>

namespace dyeleaf::simulated {

inline constexpr std::size_t bands = 31; // 400 to 700 nm by 10
using Curve = std::array<double, bands>;

inline double wavelength(std::size_t band) {
    return 400 + 10 * static_cast<double>(band);
}

// The CIE 1931 observer as sums of lobes: C. Wyman, P.-P. Sloan and P. Shirley, "Simple Analytic Approximations to the
// CIE XYZ Color Matching Functions", JCGT 2(2), 2013, table 1.
inline Xyz observer(double nm) {
    const auto lobe = [nm](double centre, double below, double above) {
        const double t = (nm - centre) * (nm < centre ? below : above);
        return std::exp(-0.5 * t * t);
    };
    return {0.362 * lobe(442.0, 0.0624, 0.0374) + 1.056 * lobe(599.8, 0.0264, 0.0323) -
                0.065 * lobe(501.1, 0.0490, 0.0382),
            0.821 * lobe(568.8, 0.0213, 0.0247) + 0.286 * lobe(530.9, 0.0613, 0.0322),
            1.217 * lobe(437.0, 0.0845, 0.0278) + 0.681 * lobe(459.0, 0.0385, 0.0725)};
}

// Seen in light of equal energy, its white taken for that of CIELAB.
inline Lab seen(const Curve& reflectance) {
    Xyz sum{}, white{};
    for (std::size_t i = 0; i < bands; ++i) {
        const Xyz here = observer(wavelength(i));
        sum = {sum.x + here.x * reflectance[i], sum.y + here.y * reflectance[i], sum.z + here.z * reflectance[i]};
        white = {white.x + here.x, white.y + here.y, white.z + here.z};
    }
    return to_lab(Xyz{sum.x / white.y, sum.y / white.y, sum.z / white.y}, Xyz{white.x / white.y, 1, white.z / white.y});
}

// The engine's numbers are laid down in the C++ standard, those of its distributions are not.
class Dice {
  public:
    double between(double least, double greatest) {
        return least + (greatest - least) * static_cast<double>(engine_()) / 4294967296.0;
    }
    // The standard normal distribution as a sum of twelve.
    double normal() {
        double sum = -6;
        for (int i = 0; i < 12; ++i)
            sum += between(0, 1);
        return sum;
    }

  private:
    std::mt19937 engine_{20261128};
};

// Undyed yarn: yellowish, so darker at short waves.
struct Yarn {
    double at_400_nm, at_most, rise; // reflectance, reflectance, nm
};
inline constexpr std::array yarns{Yarn{0.38, 0.78, 90}, Yarn{0.62, 0.82, 70}, Yarn{0.75, 0.88, 60},
                                  Yarn{0.25, 0.5, 150}};

// Of one of the colourants in a dye: most are mixed from several, and each fills the fibre at its own pace (Langmuir).
struct Absorption {
    double centre, width; // nm
    double strength;      // K/S for each per cent on the fibre
    double saturation;    // per cent: what the fibre holds at most
};

struct Dye {
    std::vector<Absorption> absorptions;
    double surface, inside; // share reflected at the surface from without and from within (Saunderson)
};

inline Dye any_dye(Dice& dice) {
    const auto any_size = [&](double least, double greatest) {
        return std::exp(dice.between(std::log(least), std::log(greatest)));
    };
    const double strength = any_size(3, 25);
    const int colourants = 1 + static_cast<int>(dice.between(0, 3));
    std::vector<Absorption> absorptions;
    for (int i = 0; i < colourants; ++i) {
        const double centre = dice.between(400, 660);
        const double width = dice.between(22, 60);
        const double share = dice.between(0.4, 1);
        absorptions.push_back({centre, width, strength * share, any_size(2, 20)});
    }
    if (dice.between(0, 1) < 0.25) absorptions.push_back({520, 150, strength * 0.3, any_size(2, 20)}); // dull
    const double surface = dice.between(0, 0.02);
    return {std::move(absorptions), surface, dice.between(0.3, 0.6)};
}

// J. L. Saunderson, J. Opt. Soc. Am. 32, 1942: what is measured and what comes out of the layer itself.
inline double measured(double within, const Dye& dye) {
    return dye.surface + (1 - dye.surface) * (1 - dye.inside) * within / (1 - dye.inside * within);
}
inline double within(double measured, const Dye& dye) {
    const double rest = measured - dye.surface;
    return rest / ((1 - dye.surface) * (1 - dye.inside) + dye.inside * rest);
}

inline Curve dyed(const Yarn& yarn, const Dye& dye, double depth) {
    Curve curve{};
    for (std::size_t i = 0; i < bands; ++i) {
        const double nm = wavelength(i);
        const double r =
            within(yarn.at_400_nm + (yarn.at_most - yarn.at_400_nm) * (1 - std::exp((400 - nm) / yarn.rise)), dye);
        double k_over_s = (1 - r) * (1 - r) / (2 * r);
        for (const auto& [centre, width, strength, saturation] : dye.absorptions) {
            const double on_fibre = depth / (1 + depth / saturation);
            k_over_s += on_fibre * strength * std::exp(-0.5 * (nm - centre) * (nm - centre) / (width * width));
        }
        curve[i] = measured(1 + k_over_s - std::sqrt(k_over_s * k_over_s + 2 * k_over_s), dye);
    }
    return curve;
}

// As it comes from a careful bench: weighed to 2 %, read to 0.3 % and a little (standard deviations).
inline Curve swatched(const Yarn& yarn, const Dye& dye, double depth, Dice& dice) {
    Curve curve = dyed(yarn, dye, depth * (1 + 0.02 * dice.normal()));
    const double reader = 1 + 0.003 * dice.normal();
    for (double& reflectance : curve)
        reflectance = std::max(0.001, reflectance * reader + 0.0005 * dice.normal());
    return curve;
}

} // namespace dyeleaf::simulated
