// What the picture of a dye's speckles holds: its sizes, its number, its halos, and nothing outside its box.
#include "colour/contrast.h"
#include "speckles/draw_speckles.h"
#include "speckles/drop.h"
#include "speckles/spots.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>

using namespace dyeleaf;

namespace {

constexpr Rect place{{mm(7), mm(9)}, {mm(60), mm(12)}};
constexpr Ink plain{};
constexpr Ink mono{true, false};
constexpr Ink sparing{false, true};
constexpr Rgb cream{0.95, 0.9, 0.78};
constexpr Rgb plum{0.4, 0.2, 0.4};

Speckled sloe(SpeckleGrade grade = SpeckleGrade::clean) {
    Speckled speckled;
    speckled.dye_id = "sloe";
    speckled.grade = grade;
    speckled.spread = mm(2.5);
    speckled.density = per_square_centimetre(4);
    speckled.dye = Speckled::Dye::shown;
    speckled.colour = plum;
    speckled.ground = cream;
    return speckled;
}

std::vector<DisplayItem> drawn(const Speckled& speckled, Ink ink = plain, Rect rect = place) {
    return draw_speckles(speckled, ink, rect, rect, mm(0.8));
}

std::string dumped(const Speckled& speckled, Ink ink = plain, Rect rect = place) {
    return dump({{mm(80), mm(40)}, drawn(speckled, ink, rect)});
}

const Group& yarn_in(const std::vector<DisplayItem>& items) {
    for (const DisplayItem& item : items) {
        if (const auto* group = std::get_if<Group>(&item)) return *group;
    }
    FAIL("there is no group");
    throw 0;
}

std::shared_ptr<const DisplayList> yarn_of(const Speckled& speckled, Rect rect = place) {
    return yarn_in(drawn(speckled, plain, rect)).list;
}

// A path's subpaths, one a drop.
std::vector<Path> drops_of(const Path& path) {
    std::vector<Path> drops;
    for (const auto& step : path) {
        if (std::holds_alternative<MoveTo>(step)) drops.emplace_back();
        drops.back().push_back(step);
    }
    return drops;
}

Speck lone_speck() {
    return {{}, mm(2.5), true, 77};
}

// How much each layer of one speck covers, as the width of a circle.
std::vector<double> widths(const Speckled& speckled) {
    std::vector<double> result;
    for (const SpotLayer& layer : spot_layers(speckled, {lone_speck()}, cream))
        result.push_back(std::sqrt(covered(drops_of(layer.path).front()) * 4 / std::numbers::pi));
    return result;
}

} // namespace

TEST_CASE("a clean speck is as wide as its spread, in the dye's own colour", "[speckles]") {
    const auto layers = spot_layers(sloe(), {lone_speck()}, cream);
    REQUIRE(layers.size() == 1);
    CHECK(to_hex(layers[0].colour) == to_hex(plum));
    CHECK(widths(sloe())[0] == Approx(2.5));
}

TEST_CASE("each grade has its own look", "[speckles]") {
    const auto parts = [](SpeckleGrade grade) {
        std::string parts;
        for (const SpotLayer& layer : spot_layers(sloe(grade), {lone_speck()}, cream))
            parts += std::string_view{"vhes"}[static_cast<std::size_t>(layer.part)];
        return parts;
    };
    CHECK(parts(SpeckleGrade::clean) == "s");
    CHECK(parts(SpeckleGrade::soft) == "ees");
    CHECK(parts(SpeckleGrade::hazy) == "vves");
    CHECK(parts(SpeckleGrade::blotchy) == "es");
    // The edge of a soft or hazy speck, not its core, is as wide as the spread; a veil is wider.
    CHECK(widths(sloe(SpeckleGrade::soft))[0] == Approx(2.5));
    CHECK(widths(sloe(SpeckleGrade::hazy))[2] == Approx(2.5));
    CHECK(widths(sloe(SpeckleGrade::hazy))[0] > 5);
    // A drop that runs is more than one.
    const auto blotchy = spot_layers(sloe(SpeckleGrade::blotchy), {lone_speck()}, cream);
    CHECK(drops_of(blotchy[0].path).size() > 1);
}

TEST_CASE("rims and veils grow paler outwards", "[speckles]") {
    for (const auto grade : {SpeckleGrade::soft, SpeckleGrade::hazy, SpeckleGrade::blotchy}) {
        double before = 1;
        for (const SpotLayer& layer : spot_layers(sloe(grade), {lone_speck()}, cream)) {
            CHECK(luminance(layer.colour) < before);
            before = luminance(layer.colour);
        }
        CHECK(before == Approx(luminance(plum)));
    }
}

TEST_CASE("half of a dye takes the root of the light that the whole takes", "[speckles]") {
    // Bouguer, Lambert and Beer: a dye that leaves a quarter of the light leaves half of it at half the amount, which
    // is 0.7354 in sRGB (IEC 61966-2-1: 1.055 × 0.5^(1/2.4) - 0.055); a quarter is 0.5371.
    CHECK(thinned({0.5371, 1, 1}, 0.5, {1, 1, 1}).red == Approx(0.7354).margin(0.0002));
    CHECK(thinned({0.5371, 1, 1}, 0.5, {1, 1, 1}).green == Approx(1));
    CHECK(thinned(plum, 1, cream).green == Approx(plum.green));
    CHECK(thinned(plum, 0, cream).blue == Approx(cream.blue));
    CHECK(thinned({0, 0, 0}, 0.5, {1, 1, 1}).red > 0.1); // no black swallows its rim
}

TEST_CASE("halos reach as far as recorded, the widest beneath, around whole specks alone", "[speckles]") {
    Speckled thrift = sloe();
    const Rgb coral{0.85, 0.54, 0.45};
    const Rgb lilac{0.66, 0.61, 0.69};
    thrift.halos = {{coral, mm(2)}, {lilac, mm(5)}};
    const auto layers = spot_layers(thrift, {lone_speck()}, cream);
    REQUIRE(layers.size() == 7); // each halo fades in three steps; then the speck
    const auto is = [](Rgb colour, Rgb wanted) { return to_hex(colour) == to_hex(wanted); };
    CHECK(is(layers[2].colour, lilac));
    CHECK(is(layers[5].colour, coral));
    CHECK(is(layers[6].colour, plum));
    CHECK(widths(thrift)[0] == Approx(2.5 + 2 * 5));
    CHECK(widths(thrift)[3] == Approx(2.5 + 2 * 2));
    CHECK(widths(thrift)[2] < 12.5);
    // The narrower one fades into the wider, not into the yarn.
    CHECK(is(layers[3].colour, thinned(coral, 0.12, lilac)));
    Speck fine = lone_speck();
    fine.is_whole = false;
    CHECK(spot_layers(thrift, {fine}, cream).size() == 1);
}

TEST_CASE("as many specks are drawn as the density asks for", "[speckles]") {
    const Rect tile{{}, {tile_side, tile_side}};
    for (const double density : {0.5, 4.0, 15.0}) {
        Speckled speckled = sloe();
        speckled.spread = mm(1);
        speckled.density = per_square_centimetre(density);
        const auto yarn = yarn_of(speckled, tile);
        const auto& fill = std::get<FillPath>(yarn->items.front());
        int inside = 0;
        double cover = 0;
        for (const Path& drop : drops_of(fill.path)) {
            Rect bounds{std::get<MoveTo>(drop.front()).to, {}};
            if (!contains(tile, bounds)) continue;
            ++inside;
            cover += covered(drop);
        }
        // The tile holds exactly that many; those on its edge are drawn on both sides and counted by a point of theirs.
        CHECK(inside == Approx(density * 100).epsilon(0.03));
        // One in three of 1 mm, the others of 0.22 to 0.62 mm: (1 + 2 × 0.139) / 3 of π/4 mm².
        CHECK(cover / inside == Approx(std::numbers::pi / 4 * 0.426).epsilon(0.06));
    }
}

TEST_CASE("the same dye looks the same wherever it is drawn, another dye otherwise", "[speckles]") {
    CHECK(dumped(sloe()) == dumped(sloe()));
    Speckled other = sloe();
    other.dye_id = "haw";
    CHECK(dumped(sloe()) != dumped(other));
    // Elsewhere on the label.
    const Rect moved{{mm(1), mm(25)}, place.size};
    CHECK(dump(*yarn_of(sloe())) == dump(*yarn_of(sloe(), moved)));
    // A larger box shows the same specks and more around them.
    const auto small = yarn_of(sloe());
    const auto wide = yarn_of(sloe(), {{mm(-3), mm(4)}, {mm(80), mm(22)}});
    const auto& few = std::get<FillPath>(small->items.front()).path;
    const auto& many = std::get<FillPath>(wide->items.front()).path;
    const auto moved_drop = [](const Path& drop) {
        const Point at = std::get<MoveTo>(drop.front()).to;
        return std::pair{std::lround((at.x + mm(10)).in_mm() * 1000), std::lround((at.y + mm(5)).in_mm() * 1000)};
    };
    std::vector<std::pair<long, long>> there;
    for (const Path& drop : drops_of(many)) {
        const Point at = std::get<MoveTo>(drop.front()).to;
        there.emplace_back(std::lround(at.x.in_mm() * 1000), std::lround(at.y.in_mm() * 1000));
    }
    for (const Path& drop : drops_of(few))
        CHECK(std::ranges::find(there, moved_drop(drop)) != there.end());
}

TEST_CASE("a box wider than the tile is filled by repeating it", "[speckles]") {
    const auto yarn = yarn_of(sloe(), {{}, {mm(250), mm(10)}});
    double farthest = 0;
    for (const Path& drop : drops_of(std::get<FillPath>(yarn->items.front()).path))
        farthest = std::max(farthest, std::get<MoveTo>(drop.front()).to.x.in_mm());
    CHECK(farthest > 245);
}

TEST_CASE("nothing is inked outside the box", "[speckles]") {
    for (const Ink ink : {plain, mono, sparing}) {
        const auto items = drawn(sloe(SpeckleGrade::hazy), ink);
        const Group& yarn = yarn_in(items);
        REQUIRE(yarn.clip.has_value());
        CHECK(yarn.transform.apply({}) == place.origin);
        CHECK(dump({{}, {FillPath{*yarn.clip, {}}}}) == "fill 0,0 60x12 #000000\n");
        CHECK(items.size() <= 3);
    }
}

TEST_CASE("each colour is one path", "[speckles]") {
    Speckled speckled = sloe(SpeckleGrade::hazy);
    speckled.halos = {{cream, mm(1)}, {plum, mm(2)}};
    CHECK(yarn_of(speckled)->items.size() == 12); // veils 2, halos 3 each, fine specks 2, whole ones 2
}

TEST_CASE("a ground that is not recorded is bare paper in a frame", "[speckles]") {
    Speckled speckled = sloe();
    speckled.ground.reset();
    CHECK(drawn(speckled).size() == 2);
    CHECK(std::holds_alternative<Group>(drawn(speckled).front()));
    CHECK(std::holds_alternative<StrokePath>(drawn(speckled).back()));
    CHECK(drawn(sloe()).size() == 3); // so light that it has one as well
    speckled.ground = Rgb{0.3, 0.3, 0.3};
    CHECK(drawn(speckled).size() == 2);
}

TEST_CASE("sparing ink and dyes that cannot be shown leave specks unfilled", "[speckles]") {
    const auto has_fill = [](const std::string& text) { return text.find("  fill") != std::string::npos; };
    CHECK(has_fill(dumped(sloe())));
    CHECK_FALSE(has_fill(dumped(sloe(), sparing)));
    for (const auto dye : {Speckled::Dye::not_recorded, Speckled::Dye::not_printable}) {
        Speckled speckled = sloe(SpeckleGrade::soft);
        speckled.dye = dye;
        for (const Ink ink : {plain, mono, sparing}) {
            CHECK_FALSE(has_fill(dumped(speckled, ink)));
            CHECK(dumped(speckled, ink).find("  stroke") != std::string::npos);
        }
    }
}

TEST_CASE("with every ink it can be told whether a dye is shown, not recorded or not printable", "[speckles]") {
    for (const Ink ink : {plain, mono, sparing}) {
        std::vector<std::string> looks;
        for (const auto dye : {Speckled::Dye::shown, Speckled::Dye::not_recorded, Speckled::Dye::not_printable}) {
            Speckled speckled = sloe();
            speckled.dye = dye;
            looks.push_back(dumped(speckled, ink));
        }
        CHECK(looks[0] != looks[1]);
        CHECK(looks[0] != looks[2]);
        CHECK(looks[1] != looks[2]);
    }
}

TEST_CASE("in mono a dye that is as light as its ground is outlined", "[speckles]") {
    Speckled speckled = sloe();
    CHECK(dumped(speckled, mono).find("  stroke") == std::string::npos);
    speckled.colour = {0.9, 0.85, 0.5};
    CHECK(dumped(speckled, mono).find("  stroke") != std::string::npos);
    CHECK(dumped(speckled, plain).find("  stroke") == std::string::npos);
}
