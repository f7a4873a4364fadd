#include "pdf/images.h"

#include "base/words.h"
#include "paint/painter.h"
#include "pdf/imported_page.h"
#include "pdf/syntax.h"
#include "pictures/file_bytes.h"
#include "pictures/jpeg.h"

#include <fmt/format.h>

#include <optional>

namespace dyeleaf {

namespace {

// ICC.1:2010, 7.2: the kind of colours stands in bytes 16 to 19, the mark of a profile in 36 to 39.
std::size_t components_of(const std::string& profile) {
    if (profile.size() < 128 || profile.compare(36, 4, "acsp") != 0) return 0;
    if (profile.compare(16, 4, "RGB ") == 0) return 3;
    return profile.compare(16, 4, "GRAY") == 0 ? 1 : 0;
}

std::string image_entries(Pixels size, const std::string& colour_space) {
    return fmt::format("/Type/XObject/Subtype/Image/Width {}/Height {}/BitsPerComponent 8/ColorSpace{}", size.across,
                       size.down, colour_space);
}

// An image fills the unit square, its top row at 1 (8.9.3).
PageMatrix square_of(double width, double height) {
    return {width, 0, 0, -height, 0, height};
}

} // namespace

ShownPicture Images::show(const PictureFile& picture, bool grey, double width, double height) {
    if (picture.kind == PictureKind::svg) return show_drawing(picture, grey, width, height);
    const Pixels pixels = seen(picture);
    const Uprighting t = upright(picture);
    const PageMatrix scaled{width / pixels.across, 0, 0, height / pixels.down, 0, 0};
    return {image(picture, grey),
            scaled.after({t.a, t.b, t.c, t.d, t.e, t.f}).after(square_of(picture.stored.across, picture.stored.down))};
}

// A drawing in colours becomes pixels where it must be grey; one in black, white and greys stays as it is.
ShownPicture Images::show_drawing(const PictureFile& picture, bool grey, double width, double height) {
    bool as_pixels = false;
    if (grey) {
        const auto [known, is_new] = coloured_.try_emplace(picture.file);
        if (is_new) known->second = artwork_.is_coloured(picture);
        as_pixels = known->second;
    }
    if (as_pixels) {
        const auto [known, is_new] = grey_drawings_.try_emplace({picture.file, width, height});
        if (is_new) known->second = put(artwork_.grey_pixels(picture, width, height));
        return {known->second, square_of(width, height)};
    }
    const auto [known, is_new] = drawings_.try_emplace(picture.file);
    if (is_new) known->second = import_page(artwork_.as_pdf(picture), file_);
    const double scale = height / Artwork::page_height;
    return {known->second, {scale, 0, 0, -scale, 0, height}};
}

int Images::image(const PictureFile& picture, bool grey) {
    const auto [known, is_new] = pictures_.try_emplace({picture.file, grey});
    if (is_new) {
        const bool packed = picture.kind == PictureKind::jpeg && !grey;
        known->second = packed ? packed_jpeg(picture) : put(artwork_.pixels(picture, grey));
    }
    return known->second;
}

int Images::packed_jpeg(const PictureFile& picture) {
    const auto bytes = file_bytes(picture.file);
    const auto coding = bytes ? coding_of_jpeg(*bytes) : std::nullopt;
    if (!coding) throw PaintError("the picture " + in_quotes(picture.file) + " cannot be opened");
    const int object = file_.reserve();
    const std::string colours = colour_space(jpeg_profile(*bytes), coding->in_grey);
    file_.put_packed(object, image_entries(coding->stored, colours) + "/Filter/DCTDecode", *bytes);
    return object;
}

// Colours are the picture's own where it states them by a profile that suits its pixels.
std::string Images::colour_space(const std::string& profile, bool grey) {
    std::string plain = grey ? "/DeviceGray" : "/DeviceRGB";
    const std::size_t components = grey ? 1 : 3;
    if (components_of(profile) != components) return plain;
    const auto [known, is_new] = profiles_.try_emplace(profile);
    if (is_new) known->second = file_.put_stream(fmt::format("/N {}/Alternate{}", components, plain), profile);
    return "[/ICCBased " + reference(known->second) + "]";
}

int Images::put(const Bitmap& bitmap) {
    const Pixels size{bitmap.across, bitmap.down};
    std::string entries = image_entries(size, bitmap.is_grey ? "/DeviceGray" : "/DeviceRGB");
    if (!bitmap.alpha.empty()) {
        entries += "/SMask " + reference(file_.put_stream(image_entries(size, "/DeviceGray"), bitmap.alpha));
    }
    return file_.put_stream(entries, bitmap.colours);
}

} // namespace dyeleaf
