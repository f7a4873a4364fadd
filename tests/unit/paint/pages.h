// Pages painted and looked at.
#pragma once

#include "outside.h"
#include "paint/painter.h"
#include "pdf/pdf_writer.h"

#include <array>
#include <catch2/catch.hpp>
#include <cmath>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace dyeleaf {

inline DisplayList page(std::vector<DisplayItem> items = {}) {
    return {{mm(40), mm(30)}, std::move(items)};
}

inline std::string pdf_of(const std::vector<DisplayList>& pages) {
    std::string bytes;
    PdfWriter writer{[&](std::string_view more) { bytes += more; }};
    for (const DisplayList& list : pages)
        writer.page(list, [&](TaggedPage tagged) { return PdfPage{{{}, list.size}, {}, {}, {}, std::move(tagged)}; });
    writer.finish({});
    return bytes;
}

// A page of a PDF as pixels, ten to the millimetre.
class PaintedPage {
  public:
    explicit PaintedPage(const DisplayList& list) {
        const auto pdf = outside::written("picture.pdf", pdf_of({list}));
        const std::string ppm = outside::output("pdftoppm -r 254 -aaVector no " + pdf.string());
        int most = 0;
        int read = 0;
        REQUIRE(std::sscanf(ppm.c_str(), "P6 %d %d %d%n", &width_, &height_, &most, &read) == 3);
        pixels_ = ppm.substr(static_cast<std::size_t>(read) + 1);
    }
    [[nodiscard]] std::array<int, 3> at(double x_mm, double y_mm) const {
        const auto pixel = static_cast<std::size_t>(std::lround(y_mm * 10) * width_ + std::lround(x_mm * 10)) * 3;
        const auto channel = [&](std::size_t i) {
            return static_cast<int>(static_cast<unsigned char>(pixels_.at(pixel + i)));
        };
        return {channel(0), channel(1), channel(2)};
    }
    [[nodiscard]] int width() const { return width_; }
    [[nodiscard]] int height() const { return height_; }

  private:
    int width_ = 0;
    int height_ = 0;
    std::string pixels_;
};

} // namespace dyeleaf
