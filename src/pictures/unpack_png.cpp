#include "pictures/unpack_png.h"

#include "pictures/png.h"
#include "pictures/read_picture.h"

#include <csetjmp>
#include <cstring>
#include <vector>

#include <png.h>

namespace dyeleaf {

namespace {

// libpng leaves by a jump when it meets an error.
class PngReader {
  public:
    explicit PngReader(std::string_view bytes) : rest_(bytes) {
        png_ = png_create_read_struct(
            PNG_LIBPNG_VER_STRING, nullptr, [](png_structp png, auto) { png_longjmp(png, 1); },
            [](png_structp, auto) {});
        info_ = png_ == nullptr ? nullptr : png_create_info_struct(png_);
        if (info_ == nullptr) return;
        png_set_read_fn(png_, &rest_, take);
        opened_ = attempt([&] {
            png_set_user_limits(png_, most_pixels, most_pixels);
            png_read_info(png_, info_);
        });
    }
    ~PngReader() { png_destroy_read_struct(&png_, &info_, nullptr); }
    PngReader(const PngReader&) = delete;
    PngReader& operator=(const PngReader&) = delete;

    [[nodiscard]] bool opened() const { return opened_; }

    bool unpack(const std::function<void(const PngRow&)>& row, int rows) {
        const bool ready = attempt([&] {
            png_set_expand_16(png_);
            png_set_gray_to_rgb(png_);
            png_set_strip_alpha(png_);
            png_read_update_info(png_, info_);
        });
        if (!ready) return false;
        const bool interlaced = png_get_interlace_type(png_, info_) == PNG_INTERLACE_ADAM7;
        std::vector<unsigned char> bytes(png_get_rowbytes(png_, info_));
        const auto height = static_cast<int>(png_get_image_height(png_, info_));
        const auto width = static_cast<int>(png_get_image_width(png_, info_));
        const auto read = [&](PngRow place, int pixels) {
            if (!attempt([&] { png_read_row(png_, bytes.data(), nullptr); })) return false;
            place.bytes = std::span{bytes}.first(static_cast<std::size_t>(pixels) * 6);
            row(place);
            return true;
        };
        if (!interlaced) {
            for (int y = 0; y < std::min(height, rows); ++y) {
                if (!read({y, 0, 1, {}}, width)) return false;
            }
            return true;
        }
        // 8: in seven passes, each with some rows and columns; those without any are not in the file.
        for (int pass = 0; pass < PNG_INTERLACE_ADAM7_PASSES; ++pass) {
            const int columns = PNG_PASS_COLS(width, pass);
            for (int y = PNG_PASS_START_ROW(pass); columns > 0 && y < height; y += PNG_PASS_ROW_OFFSET(pass)) {
                if (!read({y, PNG_PASS_START_COL(pass), PNG_PASS_COL_OFFSET(pass), {}}, columns)) return false;
            }
        }
        return true;
    }

    [[nodiscard]] Pixels stored() const {
        return {static_cast<int>(png_get_image_width(png_, info_)),
                static_cast<int>(png_get_image_height(png_, info_))};
    }
    [[nodiscard]] bool in_grey() const { return (png_get_color_type(png_, info_) & PNG_COLOR_MASK_COLOR) == 0; }

    [[nodiscard]] StatedColours colours() const {
        png_charp name = nullptr;
        png_bytep profile = nullptr;
        png_uint_32 length = 0;
        int compression = 0;
        if (png_get_iCCP(png_, info_, &name, &compression, &profile, &length) != 0)
            return StatedProfile{{reinterpret_cast<const char*>(profile), length}};
        int intent = 0;
        if (png_get_sRGB(png_, info_, &intent) != 0) return StatedSrgb{};
        double gamma = 0;
        if (png_get_gAMA(png_, info_, &gamma) == 0 || gamma <= 0) return NotStated{};
        // IEC 61966-2-1
        StatedLights lights{{0.3127, 0.3290}, {0.64, 0.33}, {0.30, 0.60}, {0.15, 0.06}, 1 / gamma};
        png_get_cHRM(png_, info_, &lights.white.x, &lights.white.y, &lights.red.x, &lights.red.y, &lights.green.x,
                     &lights.green.y, &lights.blue.x, &lights.blue.y);
        return lights;
    }

  private:
    static void take(png_structp png, png_bytep into, std::size_t length) {
        auto& rest = *static_cast<std::string_view*>(png_get_io_ptr(png));
        if (rest.size() < length) png_error(png, "ends too soon");
        std::memcpy(into, rest.data(), length);
        rest.remove_prefix(length);
    }
    // Requires: a step that holds nothing to be tidied up when it is left in its middle.
    template <class Step> bool attempt(const Step& step) {
        if (setjmp(png_jmpbuf(png_)) != 0) return false;
        step();
        return true;
    }

    std::string_view rest_;
    png_structp png_ = nullptr;
    png_infop info_ = nullptr;
    bool opened_ = false;
};

} // namespace

bool unpack_png(std::string_view bytes, const std::function<void(const PngRow&)>& row, int rows) {
    PngReader reader{bytes};
    return reader.opened() && reader.unpack(row, rows);
}

std::optional<Coding> coding_of_png(std::string_view bytes) {
    const PngReader reader{bytes};
    if (!reader.opened()) return std::nullopt;
    Coding coding{reader.stored(), reader.in_grey(), reader.colours()};
    // libpng passes over a profile in which it finds a fault.
    const bool skipped = !std::holds_alternative<StatedProfile>(coding.colours) && has_png_chunk(bytes, "iCCP");
    if (skipped) coding.colours = StatedProfile{};
    return coding;
}

} // namespace dyeleaf
