// What can be said about a text before it is read as YAML.
#pragma once

#include "base/diagnostic.h"

#include <cstddef>
#include <memory>
#include <string_view>
#include <vector>

namespace dyeleaf {

// The place of byte `offset`: line from 1, column from 1 in characters.
Spot spot_at(const std::shared_ptr<const SourceFile>& file, std::size_t offset);

// Places by line and byte column, as YAML readers count them, both from 0. Fast when asked in reading order.
class Places {
  public:
    explicit Places(std::shared_ptr<const SourceFile> file);
    [[nodiscard]] Spot at(int line, int byte_column);

  private:
    std::shared_ptr<const SourceFile> file_;
    std::vector<std::string_view> lines_;
    // Where the last question ended, to count on from there.
    int line_ = -1;
    std::size_t bytes_ = 0;
    int characters_ = 0;
};

// True when the bytes are UTF-8 text without control characters and without tabs as indentation; else errors, each at
// its place.
bool is_sound_text(const std::shared_ptr<const SourceFile>& file, Diagnostics& diagnostics);

// The text less a byte order mark.
std::string_view without_mark(std::string_view text);

} // namespace dyeleaf
