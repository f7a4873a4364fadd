// Where the bytes of a file stand, in lines and characters.
#pragma once

#include "base/spot.h"

#include <cstddef>
#include <memory>
#include <string_view>
#include <vector>

namespace dyeleaf {

// Offsets count bytes of text(), which leaves a byte order mark out. Fast when asked in reading order.
class Places {
  public:
    explicit Places(std::shared_ptr<const SourceFile> file);

    [[nodiscard]] std::string_view text() const { return text_; }
    // `bytes` are underlined, as far as the line goes. An offset beyond the end is the end.
    [[nodiscard]] Spot at(std::size_t offset, std::size_t bytes = 1);
    // The file as a whole.
    [[nodiscard]] Spot nowhere() const { return {file_, 0, 0, 1}; }

  private:
    std::shared_ptr<const SourceFile> file_;
    std::string_view text_;
    std::vector<std::size_t> line_starts_;
    // Where the last question ended, to count on from there.
    std::size_t last_offset_ = 0;
    int last_column_ = 1;
};

} // namespace dyeleaf
