#include "colour/hue.h"

#include "colour/spaces.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <string>
#include <vector>

using namespace dyeleaf;

namespace {

Lab lab(const std::string& hex) {
    return to_lab(parse_hex(hex).value());
}

} // namespace

TEST_CASE("colours fall into the family that one would call them", "[colour]") {
    const auto [hex, family] = GENERATE(table<const char*, HueFamily>({
        {"#ff69b4", HueFamily::pink},         {"#ffc0cb", HueFamily::pink},
        {"#ff0000", HueFamily::red},          {"#8a2622", HueFamily::red},
        {"#ff8c00", HueFamily::orange_brown}, {"#8b4513", HueFamily::orange_brown},
        {"#c77033", HueFamily::orange_brown}, {"#ffd700", HueFamily::yellow},
        {"#808000", HueFamily::yellow},       {"#228b22", HueFamily::green},
        {"#40e0d0", HueFamily::turquoise},    {"#1f8a94", HueFamily::turquoise},
        {"#336699", HueFamily::blue},         {"#0000ff", HueFamily::blue},
        {"#000080", HueFamily::blue},         {"#8d7fa8", HueFamily::violet},
        {"#552b51", HueFamily::violet},       {"#800080", HueFamily::violet},
        {"#000000", HueFamily::grey},         {"#ffffff", HueFamily::grey},
        {"#75838f", HueFamily::grey},
    }));
    CHECK(hue_family(lab(hex)) == family);
}

TEST_CASE("hue order runs from pink to violet, greys from light to dark at the end", "[colour]") {
    const std::vector<std::string> ordered{"#ff69b4", "#e0304a", "#c83020", "#d07020", "#e0c020", "#40a040", "#20a0a0",
                                           "#3060a0", "#203080", "#8060a0", "#a040a0", "#f0f0f0", "#808080", "#101010"};
    std::vector<std::string> shuffled(ordered.rbegin(), ordered.rend());
    std::ranges::stable_sort(shuffled, {}, [](const std::string& hex) { return hue_key(lab(hex)); });
    CHECK(shuffled == ordered);
    CHECK(hue_key(lab("#101010")) < hue_key(std::nullopt));
}
