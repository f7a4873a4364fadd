// Pictures on paper: unchanged where they can be, upright, in their place.
#include "pictures/read_picture.h"

#include "pages.h"
#include "pictures/sample_pictures.h"

#include <catch2/catch.hpp>

#include <cstdlib>
#include <filesystem>

using namespace dyeleaf;

namespace {

PictureFile picture_of(const std::string& name, const std::string& bytes) {
    return std::get<PictureFile>(read_picture(outside::written(name, bytes).string()));
}

std::string drawing(const std::string& colour) {
    return "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 40 20'><path d='M0 0H20V20H0Z' fill='" + colour +
           "'/></svg>";
}

bool alike(std::array<int, 3> a, std::array<int, 3> b) {
    for (std::size_t i = 0; i < 3; ++i) {
        if (std::abs(a.at(i) - b.at(i)) > 6) return false;
    }
    return true;
}

// The colour of one pixel as ImageMagick finds it in the picture turned upright.
std::array<int, 3> upright_pixel(const std::string& file, const std::string& x, const std::string& y) {
    const std::string pixel = outside::output("convert " + file + " -auto-orient -format '%[fx:round(255*p{w*" + x +
                                              ",h*" + y + "}.r)] %[fx:round(255*p{w*" + x + ",h*" + y +
                                              "}.g)] %[fx:round(255*p{w*" + x + ",h*" + y + "}.b)]' info:");
    std::array<int, 3> channels{};
    REQUIRE(std::sscanf(pixel.c_str(), "%d %d %d", channels.data(), &channels[1], &channels[2]) == 3);
    return channels;
}

std::string images_in(const DisplayList& list) {
    return outside::output("pdfimages -list " + outside::written("images.pdf", pdf_of({list})).string() +
                           " | tail -n +3");
}

constexpr std::array white_pixel = {255, 255, 255};
constexpr std::array red_pixel = {255, 0, 0};

} // namespace

TEST_CASE("pictures keep their shape and stand in the middle of their rectangle", "[paint]") {
    const DisplayList quarter{{mm(4), mm(4)}, {FillPath{rect_path({{}, {mm(2), mm(4)}}), Rgb{1, 0, 0}}}};
    const PictureFile png = picture_of("half-red.png", paint_png(quarter, 254));
    const PictureFile svg = picture_of("half-red.svg", "<svg xmlns='http://www.w3.org/2000/svg' width='7' height='7'>"
                                                       "<path d='M0 0H3.5V7H0Z' fill='red'/></svg>");
    for (const PictureFile& file : {png, svg}) {
        const PaintedPage picture{page({DrawPicture{file, {{mm(10), mm(10)}, {mm(20), mm(5)}}}})};
        // A square in 20 × 5 mm: 5 mm wide, from 17.5 mm on, its left half red.
        CHECK(picture.at(17, 12) == white_pixel);
        CHECK(picture.at(17.7, 10.2) == red_pixel);
        CHECK(picture.at(19.7, 14.8) == red_pixel);
        CHECK(picture.at(20.4, 12) == white_pixel);
        CHECK(picture.at(17.7, 15.3) == white_pixel);
    }
}

TEST_CASE("a JPEG goes into a PDF byte for byte, once for all its pages", "[paint]") {
    const std::string jpeg = oriented(quarters("jpg"), 6);
    const PictureFile picture = picture_of("kept.jpg", jpeg);
    const DisplayList list = page({DrawPicture{picture, {{mm(2), mm(2)}, {mm(20), mm(20)}}}});
    const auto pdf = outside::written("kept.pdf", pdf_of({list, list})).string();
    const auto stem = (std::filesystem::temp_directory_path() / "dyeleaf-test-kept-image").string();
    outside::output("pdfimages -all " + pdf + " " + stem);
    CHECK(outside::contents(stem + "-000.jpg") == jpeg);
    const std::string objects =
        outside::output("pdfimages -list " + pdf + " | tail -n +3 | awk '{print $11}' | sort -u");
    CHECK(std::count(objects.begin(), objects.end(), '\n') == 1);
}

TEST_CASE("a JPEG stands upright in all its orientations, in every output", "[paint]") {
    const std::string jpeg = quarters("jpg");
    for (int orientation = 1; orientation <= 8; ++orientation) {
        INFO("orientation " << orientation);
        const PictureFile picture = picture_of("turned.jpg", oriented(jpeg, orientation));
        // As large as its shape allows in 24 × 24 mm around (14, 14).
        const double width = picture.shape > 1 ? 24 : 16;
        const double height = picture.shape > 1 ? 16 : 24;
        const DisplayList list = page({DrawPicture{picture, {{mm(2), mm(2)}, {mm(24), mm(24)}}}});
        const PaintedPage pdf{list};
        const auto png = outside::written("turned.png", paint_png(list, 254)).string();
        for (const auto& [x, y] : {std::pair{"0.25", "0.25"}, {"0.75", "0.25"}, {"0.25", "0.75"}, {"0.75", "0.75"}}) {
            const auto wanted = upright_pixel(picture.file, x, y);
            const double left = 14 + (std::atof(x) - 0.5) * width;
            const double top = 14 + (std::atof(y) - 0.5) * height;
            CHECK(alike(pdf.at(left, top), wanted));
            CHECK(alike(upright_pixel(png, std::to_string(left / 40), std::to_string(top / 30)), wanted));
        }
        CHECK(pdf.at(14 - width / 2 - 0.5, 14) == white_pixel);
        CHECK(pdf.at(14, 14 - height / 2 - 0.5) == white_pixel);
    }
}

TEST_CASE("a drawing is paths in a PDF", "[paint]") {
    const PictureFile picture = picture_of("drawing.svg", drawing("#c04000"));
    DrawPicture draw{picture, {{mm(10), mm(10)}, {mm(20), mm(10)}}};
    CHECK(images_in(page({draw})).empty());
    const PaintedPage in_colour{page({draw})};
    CHECK(alike(in_colour.at(11, 11), {0xc0, 0x40, 0}));
    CHECK(in_colour.at(21, 11) == white_pixel);
    CHECK_THAT(paint_svg(page({draw})), !Catch::Contains("<image"));

    // Grey: as pixels where it has colours, as paths where it has none. W3C's relative luminance gives the grey.
    draw.grey = true;
    const auto grey = PaintedPage{page({draw})}.at(11, 11);
    CHECK((grey[0] == grey[1] && grey[1] == grey[2] && grey[0] > 0 && grey[0] < 255));
    CHECK_FALSE(images_in(page({draw})).empty());
    const DrawPicture black{picture_of("black.svg", drawing("#333")), draw.rect, true};
    CHECK(images_in(page({black})).empty());
}

TEST_CASE("a grey photograph has no colour", "[paint]") {
    const PictureFile picture = picture_of("grey.jpg", quarters("jpg"));
    const DisplayList list = page({DrawPicture{picture, {{mm(2), mm(2)}, {mm(24), mm(16)}}, true}});
    const PaintedPage paper{list};
    for (const double x : {8.0, 20.0}) {
        const auto pixel = paper.at(x, 6);
        CHECK((pixel[0] == pixel[1] && pixel[1] == pixel[2]));
    }
    CHECK(paper.at(8, 6) != paper.at(20, 6)); // red is darker than lime
}

TEST_CASE("pictures paint the same bytes twice", "[paint]") {
    const Rect place{{mm(2), mm(2)}, {mm(20), mm(20)}};
    const DisplayList list = page({DrawPicture{picture_of("same.jpg", quarters("jpg")), place},
                                   DrawPicture{picture_of("same.png", quarters("png")), place},
                                   DrawPicture{picture_of("same.svg", drawing("red")), place}});
    CHECK(pdf_of({list, list}) == pdf_of({list, list}));
    CHECK(paint_png(list, 96) == paint_png(list, 96));
    CHECK(paint_svg(list) == paint_svg(list));
}

TEST_CASE("a picture that has gone or changed for the worse is an error that names it", "[paint]") {
    const PictureFile png = picture_of("gone.png", quarters("png"));
    const PictureFile jpeg = picture_of("gone.jpg", quarters("jpg"));
    const PictureFile svg = picture_of("gone.svg", drawing("red"));
    for (const PictureFile& picture : {png, jpeg, svg}) {
        std::filesystem::remove(picture.file);
        const DisplayList list = page({DrawPicture{picture, {{}, {mm(5), mm(5)}}}});
        CHECK_THROWS_WITH(pdf_of({list}), Catch::Contains(picture.file));
        CHECK_THROWS_AS(paint_png(list, 72), PaintError);
    }
    outside::written("gone.png", quarters("png").substr(0, 60));
    CHECK_THROWS_AS(pdf_of({page({DrawPicture{png, {{}, {mm(5), mm(5)}}}})}), PaintError);
}
