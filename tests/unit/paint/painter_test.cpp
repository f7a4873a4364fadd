#include "paint/painter.h"
#include "project_folder.h"

#include "outside.h"
#include "pages.h"
#include "text/typesetter.h"

#include <catch2/catch.hpp>

#include <array>
#include <cmath>

using namespace dyeleaf;

namespace {

const Rgb red{1, 0, 0};
const Rgb blue{0, 0, 1};

const Typesetter& typesetter() {
    static Diagnostics diagnostics;
    static const Typesetter bundled({fonts_folder()}, diagnostics);
    return bundled;
}

void write(DisplayList& list, const std::string& text, Point at, Length size = pt(10), Font font = {"Inter"}) {
    for (const TextLine& line : typesetter().set(text, font, std::nullopt, false)->lines) {
        for (const PlacedRun& placed : line.runs) {
            list.items.push_back(DrawRun{placed.run, {at.x + size * placed.x, at.y}, size, {}});
        }
        at.y += size * 1.3;
    }
}

constexpr std::array white_pixel = {255, 255, 255};
constexpr std::array red_pixel = {255, 0, 0};
constexpr std::array blue_pixel = {0, 0, 255};

} // namespace

TEST_CASE("text in a PDF can be read back in its order", "[paint]") {
    DisplayList list = page();
    write(list, "Hedge in October", {mm(3), mm(8)}, pt(12), {"Inter", 700});
    write(list, "office ﬁne e\u0301 26.00 €", {mm(3), mm(14)}, pt(9), {"Vollkorn"});
    write(list, "Lot 26-117", {mm(3), mm(20)}, pt(9), {"Inter", 400, false, 0.05, true});
    const auto file = outside::written("text.pdf", pdf_of({list}));
    const std::string text = outside::output("pdftotext -raw " + file.string() + " -");
    CHECK(text.find("Hedge in October\n") != std::string::npos);
    CHECK(text.find("26.00 €\n") > text.find("Hedge"));
    CHECK(text.find("Lot 26-117\n") > text.find("26.00 €\n"));
    CHECK(text.find("office") != std::string::npos);
}

TEST_CASE("fonts in a PDF are embedded and cut down to what is used", "[paint]") {
    DisplayList list = page();
    write(list, "Oak", {mm(3), mm(8)});
    write(list, "Oak", {mm(3), mm(14)}, pt(9), {"Vollkorn"});
    const auto file = outside::written("fonts.pdf", pdf_of({list}));
    // name, type, encoding, then: embedded yes, subset yes, Unicode map yes.
    CHECK(outside::output("pdffonts " + file.string() + " | grep -c 'yes yes yes'") == "2\n");
    CHECK(outside::output("pdffonts " + file.string() + " | grep -c '+Inter-Regular'") == "1\n");
    CHECK(std::filesystem::file_size(file) < 20'000);
}

TEST_CASE("pages of a PDF have their own sizes, in points", "[paint]") {
    const auto file = outside::written("sizes.pdf", pdf_of({page(), {{inches(8.5), inches(11)}, {}}}));
    const std::string sizes = outside::output("pdfinfo -f 1 -l 2 " + file.string());
    CHECK(sizes.find("113.386 x 85.0394 pts") != std::string::npos);
    CHECK(sizes.find("612 x 792 pts") != std::string::npos);
}

TEST_CASE("painting twice gives the same bytes", "[paint]") {
    DisplayList list = page();
    write(list, "Hedge in October", {mm(3), mm(8)});
    const auto badge = std::make_shared<DisplayList>(list);
    const Path clip = circle_path({mm(10), mm(8)}, mm(6));
    for (int i = 0; i < 3; ++i)
        list.items.push_back(Group{badge, Transform::move({mm(i), mm(5 * i)}), clip});
    CHECK(pdf_of({list, list}) == pdf_of({list, list}));
    CHECK(paint_png(list, 96) == paint_png(list, 96));
    CHECK(paint_svg(list) == paint_svg(list));
}

TEST_CASE("ink lies where the list says", "[paint]") {
    const PaintedPage picture{
        page({FillPath{rect_path({{mm(5), mm(5)}, {mm(10), mm(4)}}), red},
              StrokePath{line_path({mm(5), mm(20)}, {mm(15), mm(20)}), blue, mm(2), {}},
              StrokePath{line_path({mm(20), mm(20)}, {mm(36), mm(20)}), blue, mm(2), {mm(4), mm(2)}}})};
    CHECK(std::abs(picture.width() - 400) <= 1);
    CHECK(std::abs(picture.height() - 300) <= 1);
    CHECK(picture.at(5.1, 5.1) == red_pixel);
    CHECK(picture.at(14.8, 8.8) == red_pixel);
    CHECK(picture.at(4.8, 5.1) == white_pixel);
    CHECK(picture.at(15.1, 9.1) == white_pixel);
    CHECK(picture.at(5.1, 19.1) == blue_pixel);
    CHECK(picture.at(14.8, 20.8) == blue_pixel);
    CHECK(picture.at(4.8, 20) == white_pixel); // butt caps
    CHECK(picture.at(23.8, 20) == blue_pixel);
    CHECK(picture.at(25, 20) == white_pixel);
    CHECK(picture.at(26.2, 20) == blue_pixel);
}

TEST_CASE("a group is turned, moved and clipped in its own coordinates", "[paint]") {
    // Red on the left half, blue on the right; clipped to all but the last millimetre.
    auto flag = std::make_shared<DisplayList>();
    flag->size = {mm(10), mm(4)};
    flag->items.push_back(FillPath{rect_path({{}, {mm(5), mm(4)}}), red});
    flag->items.push_back(FillPath{rect_path({{mm(5), {}}, {mm(5), mm(4)}}), blue});
    const Path all_but_one = rect_path({{}, {mm(9), mm(4)}});
    const Transform place = Transform::move({mm(20), mm(5)}).after(turned(Turn::right, flag->size));
    const PaintedPage picture{page({Group{flag, place, all_but_one}, FillPath{rect_path({{}, {mm(1), mm(1)}}), blue}})};
    CHECK(picture.at(20.2, 5.2) == red_pixel); // the top is what was left
    CHECK(picture.at(23.8, 9.8) == red_pixel);
    CHECK(picture.at(20.2, 13.8) == blue_pixel);
    CHECK(picture.at(20.2, 14.3) == white_pixel);
    CHECK(picture.at(0.5, 0.5) == blue_pixel); // the group's clip ended with it
}

TEST_CASE("a shared list is written once and shows wherever it is placed", "[paint]") {
    auto tag = std::make_shared<DisplayList>();
    tag->size = {mm(18), mm(8)};
    write(*tag, "Plain Sock, merino", {mm(1), mm(4)}, pt(5));
    tag->items.push_back(StrokePath{circle_path({mm(9), mm(6)}, mm(1)), {}, mm(0.2), {}});
    const auto sheet = [&](int copies, bool shared) {
        DisplayList list = page();
        for (int i = 0; i < copies; ++i) {
            list.items.push_back(Group{shared ? tag : std::make_shared<DisplayList>(*tag),
                                       Transform::move({mm(20 * (i % 2)), mm(8 * (i / 2))}),
                                       {}});
        }
        return list;
    };
    const std::string once = pdf_of({sheet(6, true), sheet(6, true), sheet(6, true)});
    const auto file = outside::written("shared.pdf", once);
    const std::string unpacked = "qpdf --qdf --object-streams=disable " + file.string() + " - | grep -a -c ";
    CHECK(outside::output(unpacked + "'/Subtype /Form'") == "1\n");
    CHECK(outside::output(unpacked + "'^/X[0-9]* Do'") == "17\n"); // all but the first, which is drawn
    const std::string text =
        outside::output("pdftotext -f 2 -l 2 " + file.string() + " - | grep -c 'Plain Sock, merino'");
    CHECK(text == "6\n");
}

TEST_CASE("a PNG has the pixels that its dots to the inch ask for", "[paint]") {
    const std::string png = paint_png({{inches(2), inches(1)}, {}}, 150);
    // Width and height stand in bytes 16 to 23 (PNG specification, 11.2.1): 300 and 150.
    CHECK(png.substr(16, 8) == std::string{"\0\0\x01\x2c\0\0\0\x96", 8});
}

TEST_CASE("a text whose letters do not add up, and a font that is gone, are errors", "[paint]") {
    DisplayList list = page();
    write(list, "Oak", {mm(3), mm(8)});
    ShapedRun run = *std::get<DrawRun>(list.items.front()).run;
    run.clusters.pop_back();
    std::get<DrawRun>(list.items.front()).run = std::make_shared<ShapedRun>(run);
    CHECK_THROWS_AS(pdf_of({list}), PaintError);

    run.face.file = "/no/such/font.otf";
    std::get<DrawRun>(list.items.front()).run = std::make_shared<ShapedRun>(run);
    CHECK_THROWS_WITH(pdf_of({list}), Catch::Contains("/no/such/font.otf"));
}

TEST_CASE("sizes beyond paper and memory are refused", "[paint]") {
    CHECK_THROWS_AS(pdf_of({{{mm(0), mm(10)}, {}}}), PaintError);
    CHECK_THROWS_AS(pdf_of({{{mm(10), mm(6000)}, {}}}), PaintError);
    CHECK_THROWS_AS(paint_png(page(), 20'000), PaintError);
    CHECK_THROWS_AS(paint_png(page(), std::nan("")), PaintError);
}

TEST_CASE("an SVG has its true size and glyphs as outlines", "[paint]") {
    DisplayList list{{inches(2), inches(1)}, {}};
    write(list, "Oak", {mm(3), mm(8)});
    const std::string svg = paint_svg(list);
    CHECK(svg.find("width=\"144pt\" height=\"72pt\"") != std::string::npos);
    CHECK(svg.find("<symbol") != std::string::npos);
    CHECK(svg.find("<text") == std::string::npos);
}
