#include "layout/check_play.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

constexpr Size tag = {mm(54), mm(86)};

Design design(Length bleed, Length safe = {}) {
    Design result;
    result.name = "tag";
    result.back = Box{};
    result.shape.bleed = bleed;
    result.shape.safe = safe;
    return result;
}

Rect rect(double x, double y, double width, double height) {
    return {{mm(x), mm(y)}, {mm(width), mm(height)}};
}

std::vector<std::string> complaints(const Design& design, const Placement& back) {
    Diagnostics diagnostics;
    check_play(design, {"26-117:1", {}, {}}, tag, back, diagnostics);
    std::vector<std::string> messages;
    for (const Diagnostic& diagnostic : diagnostics.sorted())
        messages.push_back(diagnostic.message);
    return messages;
}

std::vector<std::string> about(Zone::Kind kind, Rect where, Length bleed = {}, Length safe = {}) {
    Placement back;
    back.zones.push_back({kind, where, nullptr, "lot 26-117"});
    return complaints(design(bleed, safe), back);
}

using Messages = std::vector<std::string>;

} // namespace

TEST_CASE("a text on a back keeps 2 mm from the edge", "[layout]") {
    CHECK(about(Zone::Kind::words, rect(2, 2, 50, 82)).empty());
    CHECK(about(Zone::Kind::words, rect(1.9, 30, 20, 5)) ==
          Messages{
              "“26-117:1”: the text “lot 26-117” comes closer than 2 mm to the edge on the back, and a back can land "
              "2 mm off its front"});
    CHECK(about(Zone::Kind::words, rect(30, 84.5, 20, 1)).size() == 1);
    CHECK(about(Zone::Kind::symbol, rect(1, 30, 5, 5)).size() == 1);
    CHECK(about(Zone::Kind::picture, rect(1, 30, 5, 5)).size() == 1);
    // Closer than the layout's own measure: that is complained of anyway.
    CHECK(about(Zone::Kind::words, rect(1.9, 30, 20, 5), {}, mm(3)).empty());
}

TEST_CASE("a colour on a back ends well inside, or runs on well beyond", "[layout]") {
    const Zone::Kind kind = GENERATE(Zone::Kind::colour, Zone::Kind::background);
    CHECK(about(kind, rect(2, 2, 50, 20)).empty());
    CHECK(about(kind, rect(0, 0, 54, 20)).size() == 1);
    CHECK(about(kind, rect(0, 0, 54, 20), mm(1.5)).size() == 1);
    CHECK(about(kind, rect(0, 0, 54, 20), mm(2)).empty());
    CHECK(about(kind, rect(0, 0, 54, 86), mm(3)).empty());
    // Bleeding at the sides does not help the top, which ends 1 mm inside.
    CHECK(about(kind, rect(0, 1, 54, 20), mm(3)).size() == 1);
}

TEST_CASE("a white background leaves no rim", "[layout]") {
    Box box;
    box.background = Rgb{1, 1, 1};
    Placement back;
    back.zones.push_back({Zone::Kind::background, rect(0, 0, 54, 20), &box, {}});
    CHECK(complaints(design({}), back).empty());
    box.background = Rgb{1, 1, 0.9};
    CHECK(complaints(design({}), back).size() == 1);
}

TEST_CASE("a frame near the edge of a back is said once", "[layout]") {
    Placement back;
    back.list.items.emplace_back(StrokePath{rect_path(rect(3, 3, 48, 80)), {}, pt(0.5), {}});
    CHECK(complaints(design({}), back).empty());
    back.list.items.emplace_back(StrokePath{rect_path(rect(1, 1, 52, 84)), {}, pt(0.5), {}});
    back.list.items.emplace_back(StrokePath{rect_path(rect(0.5, 0.5, 53, 85)), {}, pt(0.5), {}});
    CHECK(complaints(design({}), back) ==
          Messages{
              "“26-117:1”: a line runs or ends less than 2 mm from the edge on the back, and a back can land 2 mm off "
              "its front"});
}
