// A YAML reader's complaints in words for people who have never seen YAML.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace dyeleaf {

struct Explanation {
    std::size_t offset; // where in the text the cause stands, which is often before the reader noticed
    std::string message, help;
    std::size_t bytes = 1; // to underline
};

// What the reader said, and where.
struct ReaderComplaint {
    std::string_view said;
    std::size_t offset = 0;
};

// The keys that a file may hold: a line that begins with one is known to lack its colon.
using KnownKeys = std::span<const std::string_view>;

Explanation explain(std::string_view text, const ReaderComplaint& complaint, KnownKeys keys);

// What begins at `offset` belongs to nothing above it.
Explanation about_second_root(std::string_view text, std::size_t offset, KnownKeys keys);
// `words` stand where a key and a colon should: “name:Sloe” lacks a space, “name Sloe” has no colon. Without a help
// where neither a key nor a colon is to be seen.
Explanation about_words_without_colon(std::string_view words, std::size_t offset, KnownKeys keys);
// A value begins with what means something else to the reader.
Explanation about_first_character(std::string_view text, std::size_t offset, bool in_brackets);
// In brackets, the # at `offset` makes a remark of the rest of the line.
Explanation about_remark(std::string_view text, std::size_t offset);

} // namespace dyeleaf
