// What is said of photographs whose figures are not as they should be.
#include "facts/check_photos.h"

#include <catch2/catch.hpp>

#include <functional>

using namespace dyeleaf;

namespace {

// One that there is nothing to say against.
PhotoReading sound() {
    PhotoReading reading;
    reading.colour = {50, 30, 20};
    reading.spread = 4;
    reading.spread_of_hue = 1;
    reading.pixels = reading.reference_pixels = 40'000;
    return reading;
}

std::string complaint(const std::function<void(PhotoReading&)>& change, bool by_white = false) {
    PhotoColour photo;
    photo.by_white = by_white;
    photo.reading = sound();
    change(*photo.reading);
    Diagnostics diagnostics;
    check_photo(Sourced<RecordedColour>{Boxed{photo}, {}}, "Fox", diagnostics);
    CHECK(diagnostics.errors() == 0);
    std::string all;
    for (const Diagnostic& one : diagnostics.sorted())
        all += one.message;
    return all;
}

} // namespace

TEST_CASE("doubtful photographs are warned of, each doubt in its own words", "[facts]") {
    using Change = std::function<void(PhotoReading&)>;
    const std::vector<std::pair<Change, std::string>> doubts = {
        {[](PhotoReading&) {}, ""},
        {[](PhotoReading& r) { r.pixels = 399; }, "the rectangle of Fox holds only 399 pixels"},
        {[](PhotoReading& r) { r.reference_pixels = 20; }, "the rectangle of the grey beside Fox holds only 20 pixels"},
        {[](PhotoReading& r) { r.reference_clipped = percent(3); },
         "the grey beside Fox is over-exposed: 3 % of its pixels are as light as the picture can show"},
        {[](PhotoReading& r) { r.reference_clipped = percent(2); }, ""},
        {[](PhotoReading& r) { r.unevenness = 1.9; },
         "the light falls unevenly on the grey beside Fox: it differs by ΔE00 1.9"},
        {[](PhotoReading& r) { r.unevenness = 1.5; }, ""},
        {[](PhotoReading& r) { r.cast = 31.4; }, "the grey beside Fox looks far from grey in the picture (C*ab 31)"},
        {[](PhotoReading& r) { r.exposure = 0.19; },
         "the picture of Fox is too dark: its grey came out at 19 % of its light"},
        {[](PhotoReading& r) { r.exposure = 4.2; },
         "the grey beside Fox came out 4.2 times as light as it is said to be"},
        {[](PhotoReading& r) { r.exposure = 0.5; }, ""},
        {[](PhotoReading& r) { r.colour.lightness = 101; }, "Fox comes out lighter than the whitest white"},
        {[](PhotoReading& r) { r.clipped = percent(8); },
         "Fox is over-exposed: 8 % of its pixels are as light as the picture can show"},
        {[](PhotoReading& r) { r.drowned = percent(60); },
         "Fox is stronger or darker than the picture can show, in 60 % of its pixels"},
        {[](PhotoReading& r) { r.spread = 20, r.spread_of_hue = 12; },
         "more than one colour seems to lie in the rectangle of Fox: half of it differs by ΔE00 12.0 and more, light "
         "and "
         "shadow left out"},
        {[](PhotoReading& r) { r.spread = 20; },
         "light and dark differ much in the rectangle of Fox: half of it by ΔE00 20.0 and more"},
    };
    for (const auto& [change, wanted] : doubts)
        CHECK(complaint(change) == wanted);
    CHECK(complaint([](PhotoReading& r) { r.cast = 40; }, true) ==
          "the white beside Fox looks far from white in the picture (C*ab 40)");
}

TEST_CASE("colours that are not from a photograph have none of its doubts", "[facts]") {
    Diagnostics diagnostics;
    check_photo(Sourced<RecordedColour>{Rgb{1, 0, 0}, {}}, "Fox", diagnostics);
    check_photo(std::nullopt, "Fox", diagnostics);
    CHECK(diagnostics.warnings() == 0);
}
