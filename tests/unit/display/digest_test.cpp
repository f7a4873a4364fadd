#include "display/digest.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

std::uint64_t of_bytes(std::string_view bytes) {
    Digest sum;
    sum.add(bytes);
    return sum.value();
}

std::uint64_t no_picture(const std::string&) {
    return 0;
}

DisplayList sample() {
    auto run = std::make_shared<ShapedRun>();
    run->face = {"/usr/share/dyeleaf/fonts/Inter.otf", 0};
    run->text = "Sloe";
    run->glyphs = {{12, 0, 0}, {13, 0.6, 0}};
    auto inner = std::make_shared<DisplayList>(
        DisplayList{{mm(5), mm(5)}, {FillPath{rect_path({{}, {mm(5), mm(5)}}), {1, 0, 0}}}});
    return {{mm(40), mm(60)},
            {DrawRun{run, {mm(4), mm(8)}, pt(9), {}}, StrokePath{line_path({}, {mm(9), {}}), {}, pt(0.5), {}},
             Group{inner, Transform::move({mm(3), mm(3)}), std::nullopt},
             DrawPicture{{"logo.png", PictureKind::png, {9, 9}, 1, 1}, {{}, {mm(9), mm(9)}}}}};
}

} // namespace

TEST_CASE("bytes have the published sums", "[display]") {
    // FNV-1a, 64 bits: test vectors of IETF draft-eastlake-fnv, from memory.
    CHECK(of_bytes("") == 0xcbf29ce484222325);
    CHECK(of_bytes("a") == 0xaf63dc4c8601ec8c);
    CHECK(of_bytes("foobar") == 0x85944171f73967e8);
}

TEST_CASE("what prints alike has one digest", "[display]") {
    CHECK(digest(sample(), no_picture) == digest(sample(), no_picture));
    DisplayList other = sample();
    auto run = std::make_shared<ShapedRun>(*std::get<DrawRun>(other.items[0]).run);
    run->face.file = "/home/dyer/dyeleaf/fonts/Inter.otf"; // installed elsewhere
    std::get<DrawRun>(other.items[0]).run = run;
    std::get<DrawRun>(other.items[0]).baseline.x += mm(0.0001);
    CHECK(digest(other, no_picture) == digest(sample(), no_picture));
}

TEST_CASE("whatever leaves other ink has another digest", "[display]") {
    const auto before = digest(sample(), no_picture);
    DisplayList other = sample();
    SECTION("size") {
        other.size.width = mm(41);
    }
    SECTION("place of a text") {
        std::get<DrawRun>(other.items[0]).baseline.y += mm(0.1);
    }
    SECTION("glyphs") {
        auto run = std::make_shared<ShapedRun>(*std::get<DrawRun>(other.items[0]).run);
        run->glyphs[1].index = 14;
        std::get<DrawRun>(other.items[0]).run = run;
    }
    SECTION("font") {
        auto run = std::make_shared<ShapedRun>(*std::get<DrawRun>(other.items[0]).run);
        run->face.file = "Vollkorn.otf";
        std::get<DrawRun>(other.items[0]).run = run;
    }
    SECTION("colour") {
        std::get<StrokePath>(other.items[1]).colour = {0, 0, 0.01};
    }
    SECTION("dashes") {
        std::get<StrokePath>(other.items[1]).dash = {mm(1), mm(1)};
    }
    SECTION("inside a group") {
        auto inner = std::make_shared<DisplayList>(*std::get<Group>(other.items[2]).list);
        std::get<FillPath>(inner->items[0]).colour = {0, 1, 0};
        std::get<Group>(other.items[2]).list = inner;
    }
    SECTION("order") {
        std::swap(other.items[1], other.items[2]);
    }
    SECTION("one less") {
        other.items.pop_back();
    }
    CHECK(digest(other, no_picture) != before);
}

TEST_CASE("a picture counts by what its file holds", "[display]") {
    CHECK(digest(sample(), [](const std::string&) { return std::uint64_t{1}; }) != digest(sample(), no_picture));
}
