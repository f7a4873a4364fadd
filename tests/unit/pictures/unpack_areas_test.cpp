// Parts of photographs have the pixels that ImageMagick finds there.
#include "pictures/unpack_areas.h"

#include "sample_pictures.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

constexpr std::size_t all = 1'000'000;

PictureFile picture_of(const std::string& name, const std::string& bytes) {
    const auto picture = read_picture(outside::written(name, bytes).string());
    if (const auto* fault = std::get_if<PictureFault>(&picture)) FAIL(fault->message);
    return std::get<PictureFile>(picture);
}

UnpackedAreas unpacked(const PictureFile& picture, std::vector<PixelArea> areas, std::size_t most = all) {
    auto result = unpack_areas(picture, areas, most);
    if (const auto* fault = std::get_if<PictureFault>(&result)) FAIL(fault->message);
    return std::get<UnpackedAreas>(std::move(result));
}

std::string fault(const PictureFile& picture) {
    const auto result = unpack_areas(picture, std::vector<PixelArea>{{0, 0, 4, 4}}, all);
    const auto* found = std::get_if<PictureFault>(&result);
    return found == nullptr ? "sound" : found->message;
}

// The same pixels in any order.
std::vector<CodedPixel> sorted(std::vector<CodedPixel> pixels) {
    std::ranges::sort(pixels);
    return pixels;
}

std::vector<CodedPixel> as_imagemagick_has_them(const PictureFile& picture, PixelArea area) {
    const std::string crop = std::to_string(area.across) + "x" + std::to_string(area.down) + "+" +
                             std::to_string(area.left) + "+" + std::to_string(area.top);
    const std::string bytes = outside::output("convert " + picture.file + " -alpha off -auto-orient +repage -crop " +
                                              crop + " -depth 16 -endian MSB rgb:-");
    std::vector<CodedPixel> pixels;
    for (std::size_t at = 0; at + 6 <= bytes.size(); at += 6) {
        CodedPixel pixel{};
        for (std::size_t i = 0; i < 3; ++i)
            pixel.at(i) = static_cast<std::uint16_t>(static_cast<unsigned char>(bytes[at + i * 2]) << 8U |
                                                     static_cast<unsigned char>(bytes[at + i * 2 + 1]));
        pixels.push_back(pixel);
    }
    return pixels;
}

// 60 × 40 pixels, each of another colour.
std::string gradient(const std::string& format, const std::string& options = "") {
    const std::string file = outside::written("gradient." + format, "").string();
    outside::output("convert -size 60x40 gradient:red-blue -size 60x40 gradient:black-lime -rotate 180 "
                    "-compose plus -composite \\( -size 40x60 gradient:black-white -rotate 90 \\) -compose multiply "
                    "-composite -quality 95 " +
                    options + " " + file);
    return outside::contents(file);
}

// With a chunk behind its header (PNG specification, third edition, 5.3, and its checksum by annex D).
std::string with_chunk(const std::string& png, const std::string& name, const std::string& content) {
    const auto big_endian = [](std::uint32_t value) {
        std::string bytes;
        for (int shift = 24; shift >= 0; shift -= 8)
            bytes += static_cast<char>(value >> shift & 0xffU);
        return bytes;
    };
    std::uint32_t sum = 0xffffffffU;
    for (const char byte : name + content) {
        sum ^= static_cast<unsigned char>(byte);
        for (int bit = 0; bit < 8; ++bit)
            sum = (sum & 1U) != 0 ? 0xedb88320U ^ sum >> 1U : sum >> 1U;
    }
    constexpr std::size_t behind_header = 33;
    return png.substr(0, behind_header) + big_endian(static_cast<std::uint32_t>(content.size())) + name + content +
           big_endian(~sum) + png.substr(behind_header);
}

} // namespace

TEST_CASE("an area of a picture is found where it is seen, however the picture is packed", "[pictures]") {
    const PixelArea area{7, 3, 20, 11};
    const auto [format, options] = GENERATE(table<std::string, std::string>({
        {"jpg", "-sampling-factor 1x1"},
        {"jpg", "-sampling-factor 2x2"},
        {"jpg", "-interlace JPEG"},
        {"png", "-depth 8"},
        {"png", "-depth 16"},
        {"png", "-depth 16 -interlace PNG"},
        {"png", "-interlace PNG -depth 8"},
        {"png", "-colors 60 -type Palette"},
        {"png", "-alpha set -channel A -evaluate set 50% -depth 8"},
    }));
    INFO(format + " " + options);
    const PictureFile picture = picture_of("area." + format, gradient(format, options));
    const auto result = unpacked(picture, {area, {0, 0, 60, 40}});
    CHECK(result.areas[0].across == 20);
    CHECK(result.areas[0].pixels == as_imagemagick_has_them(picture, area));
    CHECK(result.areas[1].pixels == as_imagemagick_has_them(picture, {0, 0, 60, 40}));
}

TEST_CASE("an area of a picture is found whichever way the camera was held", "[pictures]") {
    const std::string jpeg = gradient("jpg", "-sampling-factor 1x1");
    for (int orientation = 1; orientation <= 8; ++orientation) {
        const PictureFile picture = picture_of("held.jpg", oriented(jpeg, orientation));
        for (const PixelArea area : {PixelArea{5, 2, 12, 9}, PixelArea{0, 0, 1, 1}, PixelArea{30, 31, 7, 4}}) {
            INFO(orientation << ", " << area.left);
            CHECK(sorted(unpacked(picture, {area}).areas[0].pixels) == sorted(as_imagemagick_has_them(picture, area)));
        }
    }
}

TEST_CASE("of a large area every nth pixel is kept", "[pictures]") {
    for (const std::string options : {"", "-interlace PNG"}) {
        const PictureFile picture = picture_of("large.png", gradient("png", "-depth 8 " + options));
        const auto whole = unpacked(picture, {{0, 0, 60, 40}}).areas[0];
        const auto few = unpacked(picture, {{0, 0, 60, 40}}, 300).areas[0]; // every third: 20 × 14
        CHECK(few.across == 20);
        CHECK(few.down == 14);
        REQUIRE(few.pixels.size() == 280);
        CHECK(few.pixels[0] == whole.pixels[0]);
        CHECK(few.pixels[21] == whole.pixels[3 * 60 + 3]);
        CHECK(few.pixels[279] == whole.pixels[39 * 60 + 57]);
    }
}

TEST_CASE("what a picture says of its colours is kept", "[pictures]") {
    const auto colours = [](const std::string& name, const std::string& bytes) {
        return unpacked(picture_of(name, bytes), {{0, 0, 4, 4}}).colours;
    };
    const std::string profile = "/usr/share/color/icc/ghostscript/a98.icc";
    const std::string plain = gradient("png", "-strip -define png:include-chunk=none");
    CHECK(std::holds_alternative<NotStated>(colours("a.jpg", gradient("jpg", "-strip"))));
    CHECK(std::holds_alternative<NotStated>(colours("a.png", plain)));
    CHECK(std::holds_alternative<StatedSrgb>(colours("a.png", with_chunk(plain, "sRGB", std::string(1, '\0')))));
    for (const std::string format : {"jpg", "png"}) {
        const auto stated = colours("a." + format, gradient(format, "-profile " + profile));
        REQUIRE(std::holds_alternative<StatedProfile>(stated));
        CHECK(std::get<StatedProfile>(stated).bytes == outside::contents(profile));
    }
    const std::string gamma = with_chunk(plain, "gAMA", std::string{"\0\0\xc3\x50", 4}); // 0.5
    const auto lights = std::get<StatedLights>(colours("a.png", gamma));
    CHECK(lights.gamma == Approx(2));
    CHECK(lights.red.x == Approx(0.64));
    std::string chromaticities; // Adobe RGB's, in hundred thousandths
    for (const int value : {31270, 32900, 64000, 33000, 21000, 71000, 15000, 6000})
        chromaticities += std::string{'\0', static_cast<char>(value >> 16), static_cast<char>(value >> 8 & 0xff),
                                      static_cast<char>(value & 0xff)};
    const auto adobe = std::get<StatedLights>(colours("a.png", with_chunk(gamma, "cHRM", chromaticities)));
    CHECK(adobe.green.x == Approx(0.21));
    CHECK(adobe.blue.y == Approx(0.06));
    // Its bytes are not packed as they should be: libpng passes over it, and it is known to be broken.
    const auto torn = colours("a.png", with_chunk(plain, "iCCP", std::string{"p\0\0torn", 7}));
    REQUIRE(std::holds_alternative<StatedProfile>(torn));
    CHECK(std::get<StatedProfile>(torn).bytes.empty());
}

// Exif 2.32, 4.6.3 and 4.6.8: an index of interoperability, and the colour space 65535, "uncalibrated".
TEST_CASE("a camera's Adobe RGB is known by its Exif block", "[pictures]") {
    const auto with_exif = [](const std::string& jpeg, int space, const std::string& index) {
        const std::string block =
            std::string{"Exif\0\0II\x2a\0\x08\0\0\0", 14} +
            std::string{"\x01\0\x69\x87\x04\0\x01\0\0\0\x1a\0\0\0\0\0\0\0", 18} + // to the Exif folder
            std::string{"\x02\0\x01\xa0\x03\0\x01\0\0\0", 10} +
            std::string{static_cast<char>(space & 0xff), static_cast<char>(space >> 8), 0, 0} +
            std::string{"\x05\xa0\x04\0\x01\0\0\0\x38\0\0\0\0\0\0\0", 16} + // to interoperability
            std::string{"\x01\0\x01\0\x02\0\x04\0\0\0", 10} + index + std::string{"\0\0\0\0\0", 5};
        const std::size_t length = block.size() + 2;
        return jpeg.substr(0, 2) + "\xff\xe1" + static_cast<char>(length >> 8) + static_cast<char>(length & 0xff) +
               block + jpeg.substr(2);
    };
    const std::string jpeg = gradient("jpg", "-strip");
    const auto colours = [&](int space, const std::string& index) {
        return unpacked(picture_of("dcf.jpg", with_exif(jpeg, space, index)), {{0, 0, 4, 4}}).colours;
    };
    CHECK(std::holds_alternative<StatedSrgb>(colours(1, "R98")));
    REQUIRE(std::holds_alternative<StatedLights>(colours(0xffff, "R03")));
    CHECK(std::get<StatedLights>(colours(0xffff, "R03")).green.y == 0.71);
    CHECK(std::holds_alternative<NotStated>(colours(0xffff, "R98")));
}

TEST_CASE("pixels that are not there are a fault", "[pictures]") {
    CHECK(fault(picture_of("grey.jpg", gradient("jpg", "-colorspace Gray"))) == "is in shades of grey");
    CHECK(fault(picture_of("grey.png", gradient("png", "-colorspace Gray"))) == "is in shades of grey");
    // Sound chunk after chunk, but for what is in them.
    std::string png = gradient("png", "-depth 8");
    const std::size_t data = png.find("IDAT");
    REQUIRE(data != std::string::npos);
    png[data + 9] = static_cast<char>(png[data + 9] ^ 0x55);
    CHECK(fault(picture_of("torn.png", png)) == "is broken: it cannot be read to its end");
    // Another file by now.
    PictureFile picture = picture_of("grown.png", gradient("png"));
    ++picture.stored.across;
    CHECK(fault(picture) == "is broken: it cannot be read to its end");
}
