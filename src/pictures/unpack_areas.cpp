#include "pictures/unpack_areas.h"

#include "pictures/faults.h"
#include "pictures/file_bytes.h"
#include "pictures/jpeg.h"
#include "pictures/unpack_png.h"

#include <algorithm>

namespace dyeleaf {

namespace {

// Exif 2.32, tag 274: where an area of the picture as seen lies among the stored pixels.
PixelArea as_stored(PixelArea seen, const PictureFile& picture) {
    const auto [left, top, across, down] = seen;
    const int from_right = picture.stored.across - left - across; // where rows and columns stay what they are
    const int from_bottom = picture.stored.down - top - down;
    const int columns_back = picture.stored.across - top - down; // where rows are seen as columns
    const int rows_back = picture.stored.down - left - across;
    switch (picture.orientation) {
    case 2: return {from_right, top, across, down};
    case 3: return {from_right, from_bottom, across, down};
    case 4: return {left, from_bottom, across, down};
    case 5: return {top, left, down, across};
    case 6: return {top, rows_back, down, across};
    case 7: return {columns_back, rows_back, down, across};
    case 8: return {columns_back, left, down, across};
    default: return seen;
    }
}

int counted_by(int step, int length) {
    return (length + step - 1) / step;
}

// Picks an area's pixels out of rows as they come by.
class Sampler {
  public:
    Sampler(PixelArea stored, std::size_t most) : area_(stored) {
        const auto count = [&] {
            return static_cast<std::size_t>(counted_by(step_, stored.across)) *
                   static_cast<std::size_t>(counted_by(step_, stored.down));
        };
        while (count() > most)
            ++step_;
        grid_.across = counted_by(step_, stored.across);
        grid_.down = counted_by(step_, stored.down);
        grid_.pixels.resize(count());
    }

    // A stored row; `pixel(i)` is its pixel in column `first` + i × `apart`.
    template <class Pixel> void take(int y, int first, int apart, const Pixel& pixel) {
        const int down = y - area_.top;
        if (down < 0 || down >= area_.down || down % step_ != 0) return;
        const std::size_t row = static_cast<std::size_t>(down / step_) * static_cast<std::size_t>(grid_.across);
        for (int column = 0; column < grid_.across; ++column) {
            const int x = area_.left + column * step_ - first;
            if (x < 0 || x % apart != 0) continue;
            grid_.pixels[row + static_cast<std::size_t>(column)] = pixel(static_cast<std::size_t>(x / apart));
        }
    }

    [[nodiscard]] int end() const { return area_.top + area_.down; }
    [[nodiscard]] PixelGrid grid() && { return std::move(grid_); }

  private:
    PixelArea area_;
    int step_ = 1;
    PixelGrid grid_;
};

bool sample_jpeg(std::string_view bytes, int rows, std::vector<Sampler>& samplers) {
    int y = 0;
    const auto take = [&](std::span<const unsigned char> row) {
        const auto pixel = [row](std::size_t x) {
            const auto channel = [&](std::size_t i) { return static_cast<std::uint16_t>(row[x * 3 + i] * 257); };
            return CodedPixel{channel(0), channel(1), channel(2)};
        };
        for (Sampler& sampler : samplers)
            sampler.take(y, 0, 1, pixel);
        ++y;
    };
    return unpack_jpeg(bytes, take, rows);
}

bool sample_png(std::string_view bytes, int rows, std::vector<Sampler>& samplers) {
    const auto take = [&](const PngRow& row) {
        const auto pixel = [&row](std::size_t i) {
            const auto channel = [&](std::size_t at) {
                return static_cast<std::uint16_t>(row.bytes[at] << 8U | row.bytes[at + 1]);
            };
            return CodedPixel{channel(i * 6), channel(i * 6 + 2), channel(i * 6 + 4)};
        };
        for (Sampler& sampler : samplers)
            sampler.take(row.y, row.first, row.apart, pixel);
    };
    return unpack_png(bytes, take, rows);
}

} // namespace

std::variant<UnpackedAreas, PictureFault> unpack_areas(const PictureFile& picture, std::span<const PixelArea> areas,
                                                       std::size_t most) {
    const auto bytes = file_bytes(picture.file).value_or(std::string{});
    const bool is_jpeg = dyeleaf::is_jpeg(bytes);
    auto coding = is_jpeg ? coding_of_jpeg(bytes) : coding_of_png(bytes);
    if (!coding || coding->stored != picture.stored) return broken(); // or another file by now
    if (coding->in_grey) return PictureFault{"is in shades of grey", "take a picture in colours"};
    std::vector<Sampler> samplers;
    int rows = 0;
    for (const PixelArea& area : areas) {
        samplers.emplace_back(as_stored(area, picture), most);
        rows = std::max(rows, samplers.back().end());
    }
    if (!(is_jpeg ? sample_jpeg(bytes, rows, samplers) : sample_png(bytes, rows, samplers))) return broken();
    UnpackedAreas result{std::move(coding->colours), {}};
    for (Sampler& sampler : samplers)
        result.areas.push_back(std::move(sampler).grid());
    return result;
}

} // namespace dyeleaf
