// What picture files are found to be, and what is said of those that cannot be placed.
#include "pictures/find_picture.h"
#include "pictures/jpeg.h"
#include "pictures/read_picture.h"

#include "sample_pictures.h"

#include <catch2/catch.hpp>

#include <filesystem>

using namespace dyeleaf;

namespace {

PictureOrFault read(const std::string& bytes) {
    return read_picture(outside::written("picture", bytes).string());
}

PictureFile sound(const std::string& bytes) {
    const auto picture = read(bytes);
    if (const auto* fault = std::get_if<PictureFault>(&picture)) FAIL(fault->message);
    return std::get<PictureFile>(picture);
}

std::string fault(const std::string& bytes) {
    const auto picture = read(bytes);
    const auto* found = std::get_if<PictureFault>(&picture);
    return found == nullptr ? "sound" : found->message + " | " + found->help;
}

// ISO/IEC 10918-1, B.2.2: height and width stand five bytes behind the marker of the frame.
std::string with_size(std::string jpeg, int across, int down) {
    const auto frame = jpeg.find("\xff\xc0");
    REQUIRE(frame != std::string::npos);
    for (const auto& [at, side] : {std::pair{5, down}, std::pair{7, across}}) {
        jpeg[frame + static_cast<std::size_t>(at)] = static_cast<char>(side >> 8);
        jpeg[frame + static_cast<std::size_t>(at) + 1] = static_cast<char>(side & 0xff);
    }
    return jpeg;
}

std::string svg(const std::string& inside, const std::string& size = "viewBox='0 0 30 20'") {
    return "<?xml version='1.0'?>\n<svg xmlns='http://www.w3.org/2000/svg' "
           "xmlns:xlink='http://www.w3.org/1999/xlink' " +
           size + ">\n" + inside + "</svg>\n";
}

const std::string broken = "is broken: it cannot be read to its end | copy it again from where it came";

} // namespace

TEST_CASE("a picture is told by what it holds", "[pictures]") {
    CHECK(sound(quarters("jpg")).kind == PictureKind::jpeg);
    CHECK(sound(quarters("png")).kind == PictureKind::png);
    CHECK(sound(svg("<path d='M0 0H9V9Z'/>")).kind == PictureKind::svg);
    for (const char* format : {"jpg", "png"}) {
        const PictureFile picture = sound(quarters(format));
        CHECK(picture.stored == Pixels{48, 32});
        CHECK(picture.orientation == 1);
        CHECK(picture.shape == Approx(1.5));
    }
    CHECK(sound(quarters("jpg", "-interlace JPEG")).stored == Pixels{48, 32}); // progressive
    CHECK(sound(quarters("jpg", "-colorspace Gray")).stored == Pixels{48, 32});
}

TEST_CASE("orientation is read as ImageMagick reads it", "[pictures]") {
    const std::string jpeg = quarters("jpg");
    for (int orientation = 1; orientation <= 8; ++orientation) {
        const std::string turned = oriented(jpeg, orientation);
        const PictureFile picture = sound(turned);
        CHECK(picture.orientation == orientation);
        CHECK(picture.stored == Pixels{48, 32});
        const auto file = outside::written("oriented.jpg", turned).string();
        const std::string size = outside::output("convert " + file + " -auto-orient -format %wx%h info:");
        CHECK(std::to_string(seen(picture).across) + "x" + std::to_string(seen(picture).down) == size);
        CHECK(picture.shape == Approx(static_cast<double>(seen(picture).across) / seen(picture).down));
    }
    CHECK(sound(oriented(jpeg, 0)).orientation == 1);
    CHECK(sound(oriented(jpeg, 9)).orientation == 1);
    // An Exif block that ends too soon says nothing.
    std::string torn = oriented(jpeg, 6);
    torn.erase(16, 22).replace(4, 2, std::string{"\0\x0c", 2});
    CHECK(sound(torn).orientation == 1);
}

TEST_CASE("what cannot be placed says why and what to do", "[pictures]") {
    const std::string save = " | open it in a picture program and save it as JPEG, or a drawing as PNG";
    CHECK(fault("") == "is empty | copy it again from where it came");
    CHECK(fault("Dear picture, how are you?") ==
          "is not a picture | open it in a picture program and save it as JPEG, or a drawing as PNG or SVG");
    const auto heic = std::string{"\0\0\0\x18"
                                  "ftypheic\0\0\0\0",
                                  16};
    CHECK(fault(heic) == "is a HEIC file, which cannot be printed" + save);
    CHECK(fault(quarters("gif")) == "is a GIF file, which cannot be printed" + save);
    CHECK(fault(quarters("tiff")) == "is a TIFF file, which cannot be printed" + save);
    CHECK(fault("%PDF-1.7\n") == "is a PDF file, which cannot be printed" + save);
    CHECK(fault(quarters("jpg", "-colorspace CMYK")) ==
          "is in the four inks of a press (CMYK) | save it in RGB colours, as cameras do");
    const auto folder = read_picture(std::filesystem::temp_directory_path().string());
    CHECK(std::get<PictureFault>(folder).message == "is a folder");
}

TEST_CASE("a picture that ends too soon is broken, wherever it ends", "[pictures]") {
    for (const std::string& whole : {quarters("jpg"), quarters("jpg", "-interlace JPEG"), quarters("png")}) {
        CHECK(fault(whole) == "sound");
        for (const std::size_t length : {whole.size() - 13, whole.size() * 3 / 4, whole.size() / 2, std::size_t{40}})
            CHECK(fault(whole.substr(0, length)) == broken);
    }
}

TEST_CASE("a picture that claims more pixels than memory holds is refused unread", "[pictures]") {
    const std::string too_large = "is 50000 × 50000 pixels large; the most is 10000 a side | "
                                  "save a smaller copy of it: 300 pixels to the inch are enough for any label";
    CHECK(fault(with_size(quarters("jpg"), 50'000, 50'000)) == too_large);
    std::string png = quarters("png");
    CHECK(fault(png.replace(16, 8, std::string{"\0\0\xc3\x50\0\0\xc3\x50", 8})) == too_large);
    CHECK(fault(png.replace(16, 4, std::string{"\xff\xff\xff\xff", 4})) == broken);
    CHECK(fault(png.replace(16, 4, std::string{"\0\0\0\0", 4})) == broken);
}

TEST_CASE("an unpacked JPEG has the pixels that ImageMagick finds", "[pictures]") {
    const std::string jpeg = quarters("jpg");
    std::string pixels;
    REQUIRE(unpack_jpeg(jpeg, [&](auto row) { pixels.append(row.begin(), row.end()); }));
    REQUIRE(pixels.size() == 48 * 32 * 3);
    const auto file = outside::written("quarters.jpg", jpeg).string();
    const std::string theirs = outside::output("convert " + file + " -depth 8 rgb:-");
    CHECK(pixels == theirs);
    CHECK_FALSE(unpack_jpeg(jpeg.substr(0, jpeg.size() / 2), [](auto) {}));
}

TEST_CASE("a drawing's shape comes from its size, else from its view box", "[pictures]") {
    CHECK(sound(svg("")).shape == Approx(1.5));
    CHECK(sound(svg("", "width='4cm' height='20mm' viewBox='0 0 1 1'")).shape == Approx(2));
    CHECK(sound(svg("", "width='1in' height='72pt'")).shape == Approx(1));
    CHECK(sound(svg("", "width='100%' height='100%' viewBox='-5,-5 10,40'")).shape == Approx(0.25));
    const std::string none = "does not say how wide and how high it is | "
                             "save it again with a page size: it needs width and height, or a viewBox";
    CHECK(fault(svg("", "")) == none);
    CHECK(fault(svg("", "viewBox='0 0 10 0'")) == none);
    CHECK(fault(svg("", "viewBox='0 0 wide high'")) == none);
}

TEST_CASE("a drawing that would print otherwise than it was drawn is refused", "[pictures]") {
    CHECK(fault(svg("<g>\n<text x='3'>Quillmoor</text></g>")) ==
          "has words in it, and their font is not known here (on its line 4) | "
          "turn the words into outlines in your drawing program, and save it again");
    CHECK_THAT(fault(svg("<image xlink:href='data:image/png;base64,AAAA'/>")),
               Catch::StartsWith("has a picture in it"));
    CHECK_THAT(fault(svg("<filter id='f'/>")), Catch::StartsWith("has an effect"));
    CHECK_THAT(fault(svg("<script>alert(1)</script>")), Catch::StartsWith("has a script in it"));
    const std::string outside = "needs something that lies outside the file";
    for (const char* inside :
         {"<use href='other.svg#a'/>", "<use xlink:href='https://quillmoor.example/a.svg#a'/>",
          "<path d='M0 0' fill='url(other.svg#g)'/>", "<path d='M0 0' style=\"fill: url('file:///etc/passwd')\"/>",
          "<style>@import 'other.css';</style>", "<style><![CDATA[path { fill: url(a.svg#b) }]]></style>"}) {
        INFO(inside);
        CHECK_THAT(fault(svg(inside)), Catch::StartsWith(outside));
    }
    CHECK_THAT(fault("<?xml-stylesheet href='a.css'?>" + svg("").substr(22)), Catch::StartsWith(outside));
    CHECK_THAT(fault(svg("<g>")), Catch::StartsWith("is broken: it is not sound XML from line 3 on"));
    // Inside is well.
    CHECK(fault(svg("<title>Quill</title><defs><path id='a' d='M0 0'/></defs><use xlink:href='#a' fill='url(#g)'/>"
                    "<a href='https://quillmoor.example'><path d='M0 0'/></a>")) == "sound");
    // Notes of drawing programs are nobody's ink.
    CHECK(fault(svg("<n:note xmlns:n='urn:notes' href='x.png'><n:text>sketch</n:text></n:note>")) == "sound");
}

TEST_CASE("entities that multiply without end are no drawing", "[pictures]") {
    std::string bomb = "<!DOCTYPE svg [<!ENTITY a 'aaaaaaaaaa'>";
    for (char name = 'b'; name <= 'k'; ++name) {
        bomb += std::string{"<!ENTITY "} + name + " '";
        for (int i = 0; i < 10; ++i)
            bomb += std::string{"&"} + static_cast<char>(name - 1) + ";";
        bomb += "'>";
    }
    bomb += "]>\n<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 1 1'><path id='&k;'/></svg>";
    CHECK_THAT(fault(bomb), Catch::StartsWith("is broken"));
}

TEST_CASE("a picture that is not there is reported with the nearest one", "[pictures]") {
    const auto folder = std::filesystem::temp_directory_path() / "dyeleaf-test-pictures";
    std::filesystem::remove_all(folder);
    std::filesystem::create_directories(folder);
    const auto complaint = [&](const std::string& name) {
        Diagnostics diagnostics;
        CHECK_FALSE(find_picture(name, folder, {}, diagnostics));
        REQUIRE(diagnostics.errors() == 1);
        return diagnostics.sorted().front().message + " | " + diagnostics.sorted().front().help;
    };
    CHECK(complaint("moor.png") == "there is no picture called “moor.png” beside this file | "
                                   "put the picture there: a JPEG, PNG or SVG file");
    std::ofstream{folder / "moor.jpg", std::ios::binary} << quarters("jpg");
    CHECK(complaint("more.jpg") == "there is no picture called “more.jpg” beside this file | did you mean “moor.jpg”?");
    for (const auto* outside : {"../moor.jpg", "/moor.jpg", "..\\moor.jpg", "a/../../moor.jpg"}) {
        CHECK(complaint(outside) ==
              "the picture must lie in the folder of this file | copy it there and write its name "
              "alone, or allow its folder with --also-read FOLDER");
    }
    Diagnostics diagnostics;
    CHECK(find_picture("moor.jpg", folder, {}, diagnostics));
    CHECK(diagnostics.errors() == 0);
}

TEST_CASE("a picture may lie in another folder that is allowed", "[pictures]") {
    const auto here = std::filesystem::temp_directory_path() / "dyeleaf-test-reach";
    std::filesystem::remove_all(here);
    for (const auto* name : {"studio", "photos", "photos-of-others"}) {
        std::filesystem::create_directories(here / name);
        std::ofstream{here / name / "moor.jpg", std::ios::binary} << quarters("jpg");
    }
    std::filesystem::create_symlink("../photos/moor.jpg", here / "studio" / "link.jpg");
    std::filesystem::create_symlink("../photos-of-others/moor.jpg", here / "photos" / "elsewhere.jpg");
    std::filesystem::create_symlink("photos", here / "album");
    const auto complaint = [&](const std::string& name, const std::vector<std::filesystem::path>& also) {
        Diagnostics diagnostics;
        const auto found = find_picture(name, {here / "studio", also}, {}, diagnostics);
        CHECK(found.has_value() == (diagnostics.errors() == 0));
        return found ? "found" : diagnostics.sorted().front().message;
    };
    const auto photos = here / "photos";
    for (const auto& name :
         {std::string{"../photos/moor.jpg"}, (photos / "moor.jpg").string(), std::string{"link.jpg"}}) {
        CHECK(complaint(name, {photos}) == "found");
        CHECK(complaint(name, {here / "nowhere", here / "album"}) == "found");
        CHECK(complaint(name, {here / "photos-of-others"}) != "found");
        CHECK(complaint(name, {}) != "found");
    }
    CHECK(complaint("moor.jpg", {photos}) == "found");
    const std::string outside = "the picture must lie in the folder of this file";
    CHECK(complaint("../photos-of-others/moor.jpg", {photos}) == outside);
    CHECK(complaint("../photos/../photos-of-others/moor.jpg", {photos}) == outside);
    CHECK(complaint("../photos/elsewhere.jpg", {photos}) == outside);
    CHECK(complaint("../photos/gone.jpg", {photos}) == "there is no picture called “../photos/gone.jpg”");
}

TEST_CASE("names of pictures are told from names of facts", "[pictures]") {
    CHECK(names_a_picture("logo.SVG"));
    CHECK(names_a_picture("IMG_0012.heic"));
    CHECK_FALSE(names_a_picture("studio.logo"));
    CHECK_FALSE(names_a_picture("lot.picture"));
}
