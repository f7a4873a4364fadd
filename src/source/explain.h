// A YAML reader's complaints in words for people who have never seen YAML.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace dyeleaf {

struct Explanation {
    std::size_t offset; // where in the text the cause stands, which is often before the reader noticed
    std::string message, help;
};

// What the reader said, and where.
struct ReaderComplaint {
    std::string_view said;
    std::size_t offset = 0;
    std::optional<std::size_t> bracket; // the innermost [ or { still open
};

Explanation explain(std::string_view text, const ReaderComplaint& complaint);

// `text` in quotes as YAML needs them: "4:1", or 'say "so"'; nothing when it holds too much for either.
std::optional<std::string> in_yaml_quotes(std::string_view text);

// A word that ends where the reader would end it.
std::string_view first_word(std::string_view text);

} // namespace dyeleaf
