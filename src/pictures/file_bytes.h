// A whole file in memory.
#pragma once

#include <cstddef>
#include <optional>
#include <string>

namespace dyeleaf {

inline constexpr std::size_t most_file_bytes = 100U << 20U;

// Nothing where it is no plain file or cannot be read; of one that is longer, one byte more than `most_file_bytes`.
std::optional<std::string> file_bytes(const std::string& file);

} // namespace dyeleaf
