#include "symbols/care_symbols.h"

#include "symbols/care.h"

#include <algorithm>
#include <array>
#include <iterator>
#include <string>
#include <string_view>

namespace dyeleaf {

namespace {

using namespace drawing;

struct Treatment {
    std::string_view key;
    DisplayList (*draw)();
};

constexpr std::array treatments = {
    Treatment{"wash 95", [] { return wash("95", 0); }},
    Treatment{"wash 70", [] { return wash("70", 0); }},
    Treatment{"wash 60", [] { return wash("60", 0); }},
    Treatment{"wash 60 gentle", [] { return wash("60", 1); }},
    Treatment{"wash 50", [] { return wash("50", 0); }},
    Treatment{"wash 50 gentle", [] { return wash("50", 1); }},
    Treatment{"wash 40", [] { return wash("40", 0); }},
    Treatment{"wash 40 gentle", [] { return wash("40", 1); }},
    Treatment{"wash 40 very gentle", [] { return wash("40", 2); }},
    Treatment{"wash 30", [] { return wash("30", 0); }},
    Treatment{"wash 30 gentle", [] { return wash("30", 1); }},
    Treatment{"wash 30 very gentle", [] { return wash("30", 2); }},
    Treatment{"hand wash", [] { return hand_wash(0); }},
    Treatment{"hand wash ambient", [] { return hand_wash(1); }},
    Treatment{"no wash", [] { return no_wash(); }},
    Treatment{"any bleach", [] { return bleach(Bleach::any); }},
    Treatment{"oxygen bleach", [] { return bleach(Bleach::oxygen); }},
    Treatment{"no bleach", [] { return bleach(Bleach::none); }},
    Treatment{"tumble normal", [] { return tumble(2); }},
    Treatment{"tumble low", [] { return tumble(1); }},
    Treatment{"no tumble", [] { return tumble(0); }},
    Treatment{"dry line", [] { return natural_drying(Drying::line, false); }},
    Treatment{"dry drip line", [] { return natural_drying(Drying::drip_line, false); }},
    Treatment{"dry flat", [] { return natural_drying(Drying::flat, false); }},
    Treatment{"dry drip flat", [] { return natural_drying(Drying::drip_flat, false); }},
    Treatment{"dry line shade", [] { return natural_drying(Drying::line, true); }},
    Treatment{"dry drip line shade", [] { return natural_drying(Drying::drip_line, true); }},
    Treatment{"dry flat shade", [] { return natural_drying(Drying::flat, true); }},
    Treatment{"dry drip flat shade", [] { return natural_drying(Drying::drip_flat, true); }},
    Treatment{"iron high", [] { return iron(3); }},
    Treatment{"iron medium", [] { return iron(2); }},
    Treatment{"iron low", [] { return iron(1); }},
    Treatment{"iron no steam", [] { return iron_without_steam(); }},
    Treatment{"no iron", [] { return iron(0); }},
    Treatment{"dry clean P", [] { return professional("P", 0); }},
    Treatment{"dry clean P gentle", [] { return professional("P", 1); }},
    Treatment{"dry clean F", [] { return professional("F", 0); }},
    Treatment{"dry clean F gentle", [] { return professional("F", 1); }},
    Treatment{"no dry clean", [] { return no_dry_clean(); }},
    Treatment{"wet clean", [] { return professional("W", 0); }},
    Treatment{"wet clean gentle", [] { return professional("W", 1); }},
    Treatment{"wet clean very gentle", [] { return professional("W", 2); }},
    Treatment{"no wet clean", [] { return no_wet_clean(); }},
};

} // namespace

std::vector<NamedDrawing> care_symbols() {
    std::vector<NamedDrawing> drawings;
    std::ranges::transform(treatments, std::back_inserter(drawings), [](const Treatment& treatment) {
        return NamedDrawing{std::string{treatment.key}, treatment.draw()};
    });
    return drawings;
}

} // namespace dyeleaf
