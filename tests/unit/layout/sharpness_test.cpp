// Pictures in a layout: their size on paper, and whether they have pixels enough for it.
#include "layout/sharpness.h"

#include "design/read_design.h"
#include "english.h"
#include "layout/layout.h"
#include "pictures/sample_pictures.h"
#include "project_folder.h"
#include "sample_records.h"

#include <catch2/catch.hpp>

#include <filesystem>

using namespace dyeleaf;

namespace {

Placement printed(Pixels stored, int orientation, Size size, const std::string& owner = {}) {
    static const Box box;
    Placement placement;
    const PictureFile picture{"studio/moor.jpg", PictureKind::jpeg, stored, orientation, size.width / size.height};
    placement.pictures.push_back({&box, {picture, "moor", owner}, size});
    return placement;
}

std::string warning(const Placement& placement) {
    Diagnostics diagnostics;
    check_sharpness(placement, diagnostics);
    CHECK(diagnostics.errors() == 0);
    if (diagnostics.warnings() == 0) return {};
    return diagnostics.sorted().front().message + " | " + diagnostics.sorted().front().help;
}

// The boxes of a label of 60 × 40 mm in a folder that holds moor.jpg, 48 × 32 pixels, on its side.
std::string boxes(const std::string& front, Diagnostics& diagnostics) {
    const auto folder = std::filesystem::temp_directory_path() / "dyeleaf-test-layout-pictures";
    std::filesystem::create_directories(folder);
    std::ofstream{folder / "moor.jpg", std::ios::binary} << oriented(quarters("jpg"), 6);
    const std::string text = "layout: test\nfor: dyes\nshape: {width: 60 mm, height: 40 mm}\nfront:\n" + front;
    const auto file = std::make_shared<const SourceFile>(SourceFile{(folder / "test.yaml").string(), text});
    const auto node = parse_document(file, diagnostics);
    REQUIRE(node);
    static Diagnostics unheard;
    static const Typesetter typesetter{{fonts_folder()}, unheard};
    const auto design = read_design(*node, {}, typesetter.families(), diagnostics);
    if (!design) return {};
    static const Records records = sample_records();
    const Printing printing{{english()}, nullptr, {2026, 11, 2}};
    const auto items = make_items(records, design->items, design->grouping, {}, printing, diagnostics);
    place_label(*design, items.front(), {mm(60), mm(40)}, typesetter, diagnostics);
    return dump_boxes(*design, items.front(), {mm(60), mm(40)}, typesetter);
}

} // namespace

TEST_CASE("150 pixels to the inch are enough", "[layout]") {
    CHECK(warning(printed({300, 150}, 1, {inches(2), inches(1)})).empty());
    CHECK(warning(printed({300, 150}, 6, {inches(1), inches(2)})).empty());
    CHECK(warning(printed({300, 150}, 1, {inches(2.5), inches(1.25)})) ==
          "the picture “moor.jpg” prints at 63.5 × 31.7 mm with only 120 pixels to the inch, and will look coarse | "
          "it has 300 × 150 pixels, sharp up to 50.8 × 25.4 mm: make the box that small, or take a picture of 375 × "
          "188 pixels or more");
    // Turned: 150 × 300 as seen.
    CHECK(warning(printed({300, 150}, 8, {inches(1.5), inches(3)}, "26-117")) ==
          "the picture “moor.jpg” of “26-117” prints at 38.1 × 76.2 mm with only 100 pixels to the inch, and will look "
          "coarse | it has 150 × 300 pixels, sharp up to 25.4 × 50.8 mm: make the box that small, or take a picture of "
          "225 × 450 pixels or more");
}

TEST_CASE("a drawing is sharp at any size", "[layout]") {
    Placement placement = printed({}, 1, {inches(2), inches(1)});
    placement.pictures.front().mark.picture.kind = PictureKind::svg;
    CHECK(warning(placement).empty());
}

TEST_CASE("a picture box has its picture's shape, as seen", "[layout]") {
    Diagnostics diagnostics;
    CHECK(boxes("  row: [{picture: moor.jpg, height: 6 mm}, {blank: fill}]\n", diagnostics) ==
          "row 0,0 60x40\n  picture 0,0 4x6\n  blank 4,0 56x40\n");
    CHECK(boxes("  column: {align: start, holds: [{picture: moor.jpg, width: 6 mm}]}\n", diagnostics) ==
          "column 0,0 60x40\n  picture 0,0 6x9\n");
    CHECK(boxes("  column: [{rule: 1 mm, height: 10 mm}, {picture: moor.jpg, height: fill}]\n", diagnostics) ==
          "column 0,0 60x40\n  rule 0,0 60x10\n  picture 0,10 60x30\n");
    // On its side it is as high as there is room across.
    CHECK(boxes("  column: {padding: [0 mm, 30 mm, 0 mm, 0 mm], holds: [{picture: moor.jpg, turn: left}]}\n",
                diagnostics) == "column 0,0 60x40\n  picture 0,0 30x20\n");
    CHECK(diagnostics.errors() == 0);
}

TEST_CASE("a coarse picture is reported where the layout places it", "[layout]") {
    Diagnostics diagnostics;
    boxes("  column: [{picture: moor.jpg, height: 30 mm, alt: a moor}]\n", diagnostics);
    REQUIRE(diagnostics.warnings() == 1);
    const Diagnostic warning = diagnostics.sorted().front();
    CHECK(warning.spot.line == 5);
    CHECK(warning.spot.column == 13);
    CHECK_THAT(warning.message, Catch::StartsWith("the picture “moor.jpg” prints at 20 × 30 mm with only 41 pixels"));
}

TEST_CASE("a layout that names a picture that is not there says where and what is", "[layout]") {
    Diagnostics diagnostics;
    CHECK(boxes("  column: [{picture: moon.jpg, height: 30 mm}]\n", diagnostics).empty());
    REQUIRE(diagnostics.errors() == 1);
    const Diagnostic error = diagnostics.sorted().front();
    CHECK(error.spot.line == 5);
    CHECK(error.spot.column == 22);
    CHECK(error.message == "there is no picture called “moon.jpg” beside this file");
    CHECK(error.help == "did you mean “moor.jpg”?");
}
