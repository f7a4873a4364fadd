#include "symbols/symbols.h"

#include "symbols/care.h"
#include "symbols/ghs.h"

#include <algorithm>
#include <array>
#include <iterator>

namespace dyeleaf {

namespace {

struct Symbol {
    std::string_view key;
    DisplayList (*draw)(Rgb frame); // the frame's colour where it has one
};

constexpr std::array symbols = {
    Symbol{"care/wash 95", [](Rgb) { return wash("95", 0); }},
    Symbol{"care/wash 70", [](Rgb) { return wash("70", 0); }},
    Symbol{"care/wash 60", [](Rgb) { return wash("60", 0); }},
    Symbol{"care/wash 60 gentle", [](Rgb) { return wash("60", 1); }},
    Symbol{"care/wash 50", [](Rgb) { return wash("50", 0); }},
    Symbol{"care/wash 50 gentle", [](Rgb) { return wash("50", 1); }},
    Symbol{"care/wash 40", [](Rgb) { return wash("40", 0); }},
    Symbol{"care/wash 40 gentle", [](Rgb) { return wash("40", 1); }},
    Symbol{"care/wash 40 very gentle", [](Rgb) { return wash("40", 2); }},
    Symbol{"care/wash 30", [](Rgb) { return wash("30", 0); }},
    Symbol{"care/wash 30 gentle", [](Rgb) { return wash("30", 1); }},
    Symbol{"care/wash 30 very gentle", [](Rgb) { return wash("30", 2); }},
    Symbol{"care/hand wash", [](Rgb) { return hand_wash(0); }},
    Symbol{"care/hand wash ambient", [](Rgb) { return hand_wash(1); }},
    Symbol{"care/no wash", [](Rgb) { return no_wash(); }},
    Symbol{"care/any bleach", [](Rgb) { return bleach(Bleach::any); }},
    Symbol{"care/oxygen bleach", [](Rgb) { return bleach(Bleach::oxygen); }},
    Symbol{"care/no bleach", [](Rgb) { return bleach(Bleach::none); }},
    Symbol{"care/tumble normal", [](Rgb) { return tumble(2); }},
    Symbol{"care/tumble low", [](Rgb) { return tumble(1); }},
    Symbol{"care/no tumble", [](Rgb) { return tumble(0); }},
    Symbol{"care/dry line", [](Rgb) { return natural_drying(Drying::line, false); }},
    Symbol{"care/dry drip line", [](Rgb) { return natural_drying(Drying::drip_line, false); }},
    Symbol{"care/dry flat", [](Rgb) { return natural_drying(Drying::flat, false); }},
    Symbol{"care/dry drip flat", [](Rgb) { return natural_drying(Drying::drip_flat, false); }},
    Symbol{"care/dry line shade", [](Rgb) { return natural_drying(Drying::line, true); }},
    Symbol{"care/dry drip line shade", [](Rgb) { return natural_drying(Drying::drip_line, true); }},
    Symbol{"care/dry flat shade", [](Rgb) { return natural_drying(Drying::flat, true); }},
    Symbol{"care/dry drip flat shade", [](Rgb) { return natural_drying(Drying::drip_flat, true); }},
    Symbol{"care/iron high", [](Rgb) { return iron(3); }},
    Symbol{"care/iron medium", [](Rgb) { return iron(2); }},
    Symbol{"care/iron low", [](Rgb) { return iron(1); }},
    Symbol{"care/iron no steam", [](Rgb) { return iron_without_steam(); }},
    Symbol{"care/no iron", [](Rgb) { return iron(0); }},
    Symbol{"care/dry clean P", [](Rgb) { return professional("P", 0); }},
    Symbol{"care/dry clean P gentle", [](Rgb) { return professional("P", 1); }},
    Symbol{"care/dry clean F", [](Rgb) { return professional("F", 0); }},
    Symbol{"care/dry clean F gentle", [](Rgb) { return professional("F", 1); }},
    Symbol{"care/no dry clean", [](Rgb) { return no_dry_clean(); }},
    Symbol{"care/wet clean", [](Rgb) { return professional("W", 0); }},
    Symbol{"care/wet clean gentle", [](Rgb) { return professional("W", 1); }},
    Symbol{"care/wet clean very gentle", [](Rgb) { return professional("W", 2); }},
    Symbol{"care/no wet clean", [](Rgb) { return no_wet_clean(); }},
    Symbol{"ghs/GHS01", [](Rgb frame) { return framed(exploding_bomb(), frame); }},
    Symbol{"ghs/GHS02", [](Rgb frame) { return framed(flame(), frame); }},
    Symbol{"ghs/GHS03", [](Rgb frame) { return framed(flame_over_circle(), frame); }},
    Symbol{"ghs/GHS04", [](Rgb frame) { return framed(gas_cylinder(), frame); }},
    Symbol{"ghs/GHS05", [](Rgb frame) { return framed(corrosion(), frame); }},
    Symbol{"ghs/GHS06", [](Rgb frame) { return framed(skull_and_crossbones(), frame); }},
    Symbol{"ghs/GHS07", [](Rgb frame) { return framed(exclamation_mark(), frame); }},
    Symbol{"ghs/GHS08", [](Rgb frame) { return framed(health_hazard(), frame); }},
    Symbol{"ghs/GHS09", [](Rgb frame) { return framed(environment(), frame); }},
};

using Drawn = std::array<std::shared_ptr<const DisplayList>, symbols.size()>;

Drawn drawn_with(Rgb frame) {
    Drawn all;
    std::ranges::transform(symbols, all.begin(), [&](const Symbol& symbol) {
        return std::make_shared<const DisplayList>(symbol.draw(frame));
    });
    return all;
}

} // namespace

std::vector<std::string_view> symbol_keys() {
    std::vector<std::string_view> keys;
    std::ranges::transform(symbols, std::back_inserter(keys), &Symbol::key);
    return keys;
}

std::shared_ptr<const DisplayList> symbol_drawing(std::string_view key, bool mono) {
    static const Drawn coloured = drawn_with(frame_red);
    static const Drawn in_black = drawn_with(black);
    const auto found = std::ranges::find(symbols, key, &Symbol::key);
    if (found == symbols.end()) return nullptr;
    return (mono ? in_black : coloured).at(static_cast<std::size_t>(found - symbols.begin()));
}

} // namespace dyeleaf
