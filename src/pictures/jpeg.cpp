#include "pictures/jpeg.h"

#include "pictures/faults.h"

#include <algorithm>
#include <csetjmp>
#include <cstdio>
#include <cstdlib>
#include <memory>
#include <utility>
#include <vector>

#include <jpeglib.h>

#include <jerror.h>
#include <libexif/exif-data.h>

namespace dyeleaf {

namespace {

// libjpeg leaves by a jump when it meets an error, and goes on with grey where data are missing.
struct ErrorHandler {
    jpeg_error_mgr functions{}; // first, so that libjpeg's pointer to it is one to the whole
    std::jmp_buf way_out{};
    bool incomplete = false;
};

ErrorHandler& handler_of(j_common_ptr jpeg) {
    return *reinterpret_cast<ErrorHandler*>(jpeg->err);
}

void leave(j_common_ptr jpeg) {
    std::longjmp(handler_of(jpeg).way_out, 1);
}

void note(j_common_ptr jpeg, int level) {
    const int code = jpeg->err->msg_code;
    if (level < 0 && (code == JWRN_JPEG_EOF || code == JWRN_HIT_MARKER)) handler_of(jpeg).incomplete = true;
}

// A progressive picture comes in scans, about ten of them, and each goes through all of it again.
constexpr int most_scans = 100;

void leave_at_too_many_scans(j_common_ptr jpeg) {
    if (reinterpret_cast<j_decompress_ptr>(jpeg)->input_scan_number > most_scans) leave(jpeg);
}

class Decoder {
  public:
    explicit Decoder(std::string_view bytes) {
        jpeg_.err = jpeg_std_error(&errors_.functions);
        errors_.functions.error_exit = leave;
        errors_.functions.emit_message = note;
        progress_.progress_monitor = leave_at_too_many_scans;
        opened_ = attempt([&] {
            jpeg_create_decompress(&jpeg_);
            jpeg_.progress = &progress_;
            jpeg_mem_src(&jpeg_, reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size());
            for (const int kind : {JPEG_APP0 + 1, JPEG_APP0 + 2}) // Exif, and ICC profiles
                jpeg_save_markers(&jpeg_, kind, 0xffff);
            jpeg_read_header(&jpeg_, TRUE);
        });
    }
    ~Decoder() { jpeg_destroy_decompress(&jpeg_); }
    Decoder(const Decoder&) = delete;
    Decoder& operator=(const Decoder&) = delete;

    [[nodiscard]] bool opened() const { return opened_; }
    [[nodiscard]] const jpeg_decompress_struct& header() const { return jpeg_; }

    // What a picture of several scans takes to unpack, for all of it is kept until the last of them.
    [[nodiscard]] std::size_t bytes_kept() {
        if (!jpeg_has_multiple_scans(&jpeg_)) return 0;
        std::size_t blocks = 0;
        for (const jpeg_component_info& part :
             std::span(jpeg_.comp_info, static_cast<std::size_t>(jpeg_.num_components)))
            blocks += std::size_t{part.width_in_blocks} * part.height_in_blocks;
        return blocks * sizeof(JBLOCK);
    }

    // The first `rows`, in pixels `coarser` times as large as the stored ones. False where data are missing.
    bool unpack(unsigned coarser, int rows, const std::function<void(std::span<const unsigned char>)>& row) {
        jpeg_.scale_num = 1;
        jpeg_.scale_denom = coarser;
        jpeg_.out_color_space = JCS_RGB;
        if (!attempt([&] { jpeg_start_decompress(&jpeg_); })) return false;
        std::vector<unsigned char> pixels(std::size_t{jpeg_.output_width} * 3);
        unsigned char* place = pixels.data();
        const auto end = std::min(jpeg_.output_height, static_cast<JDIMENSION>(rows));
        while (jpeg_.output_scanline < end) {
            if (!attempt([&] { jpeg_read_scanlines(&jpeg_, &place, 1); })) return false;
            row(pixels);
        }
        if (end < jpeg_.output_height) return !errors_.incomplete;
        return attempt([&] { jpeg_finish_decompress(&jpeg_); }) && !errors_.incomplete;
    }

    // ICC.1:2010, B.4: in pieces.
    std::string profile() {
        JOCTET* pieces = nullptr;
        unsigned length = 0;
        const bool sound = attempt([&] { jpeg_read_icc_profile(&jpeg_, &pieces, &length); });
        const std::unique_ptr<JOCTET, void (*)(void*)> kept{pieces, std::free};
        return sound && pieces != nullptr ? std::string{reinterpret_cast<const char*>(pieces), length} : std::string{};
    }

  private:
    // Requires: a step that holds nothing to be tidied up when it is left in its middle.
    template <class Step> bool attempt(const Step& step) {
        if (setjmp(errors_.way_out) != 0) return false;
        step();
        return true;
    }

    ErrorHandler errors_;
    jpeg_progress_mgr progress_{};
    jpeg_decompress_struct jpeg_{};
    bool opened_ = false;
};

using Exif = std::unique_ptr<ExifData, void (*)(ExifData*)>;

// Calls `found` with each Exif block until it says that it has what it looks for.
void look_into_exif(const jpeg_decompress_struct& header, const std::function<bool(ExifData&)>& found) {
    for (jpeg_saved_marker_ptr marker = header.marker_list; marker != nullptr; marker = marker->next) {
        if (marker->marker != JPEG_APP0 + 1) continue;
        const Exif exif{exif_data_new_from_data(marker->data, marker->data_length), exif_data_unref};
        if (exif && found(*exif)) return;
    }
}

int short_in(ExifData& exif, ExifIfd folder, ExifTag tag) {
    const ExifEntry* entry = exif_content_get_entry(exif.ifd[folder], tag);
    if (entry == nullptr || entry->format != EXIF_FORMAT_SHORT || entry->components == 0) return 0;
    return exif_get_short(entry->data, exif_data_get_byte_order(&exif));
}

// Exif 2.32, tag 274; 1 where there is none or it is none of the eight.
int orientation_in(const jpeg_decompress_struct& header) {
    int orientation = 1;
    look_into_exif(header, [&](ExifData& exif) {
        const int value = short_in(exif, EXIF_IFD_0, EXIF_TAG_ORIENTATION);
        if (value < 1 || value > 8) return false;
        orientation = value;
        return true;
    });
    return orientation;
}

// Adobe RGB (1998), which cameras name without adding a profile: DCF 2.0 (JEITA CP-3461B), from memory.
constexpr StatedLights dcf_option{{0.3127, 0.3290}, {0.64, 0.33}, {0.21, 0.71}, {0.15, 0.06}, 563.0 / 256};

// Exif 2.32, tag 40961, and the index of interoperability "R03".
StatedColours colours_in(const jpeg_decompress_struct& header) {
    StatedColours colours;
    look_into_exif(header, [&](ExifData& exif) {
        const ExifEntry* index =
            exif_content_get_entry(exif.ifd[EXIF_IFD_INTEROPERABILITY], EXIF_TAG_INTEROPERABILITY_INDEX);
        if (index != nullptr && index->size >= 3 &&
            std::string_view{reinterpret_cast<const char*>(index->data), 3} == "R03")
            colours = dcf_option;
        else if (short_in(exif, EXIF_IFD_EXIF, EXIF_TAG_COLOR_SPACE) == 1)
            colours = StatedSrgb{};
        return !std::holds_alternative<NotStated>(colours);
    });
    return colours;
}

} // namespace

bool is_jpeg(std::string_view bytes) {
    return bytes.starts_with("\xff\xd8\xff");
}

// Enough for 40 megapixels, or for 80 with their colours at half the resolution, as most are.
constexpr std::size_t most_bytes_kept = 250'000'000;

PictureOrFault read_jpeg(std::string_view bytes) {
    Decoder decoder{bytes};
    if (!decoder.opened()) return broken();
    const jpeg_decompress_struct& header = decoder.header();
    if (header.num_components == 4) {
        return PictureFault{"is in the four inks of a press (CMYK)", "save it in RGB colours, as cameras do"};
    }
    PictureFile picture{{},
                        PictureKind::jpeg,
                        {static_cast<int>(header.image_width), static_cast<int>(header.image_height)},
                        orientation_in(header),
                        1};
    if (!is_sound(picture.stored)) return too_large(picture.stored);
    if (decoder.bytes_kept() > most_bytes_kept) {
        return PictureFault{"is a progressive JPEG, and too large to be unpacked all at once",
                            "save it again without “progressive”, or a smaller copy of it"};
    }
    if (!decoder.unpack(8, most_pixels, [](auto) {})) return broken();
    picture.shape = static_cast<double>(seen(picture).across) / seen(picture).down;
    return picture;
}

std::string jpeg_profile(std::string_view bytes) {
    Decoder decoder{bytes};
    return decoder.opened() ? decoder.profile() : std::string{};
}

std::optional<Coding> coding_of_jpeg(std::string_view bytes) {
    Decoder decoder{bytes};
    if (!decoder.opened()) return std::nullopt;
    const jpeg_decompress_struct& header = decoder.header();
    Coding coding{{static_cast<int>(header.image_width), static_cast<int>(header.image_height)},
                  header.num_components == 1,
                  colours_in(header)};
    if (std::string profile = decoder.profile(); !profile.empty()) coding.colours = StatedProfile{std::move(profile)};
    return coding;
}

bool unpack_jpeg(std::string_view bytes, const std::function<void(std::span<const unsigned char>)>& row, int rows) {
    Decoder decoder{bytes};
    return decoder.opened() && decoder.header().num_components != 4 && decoder.unpack(1, rows, row);
}

} // namespace dyeleaf
