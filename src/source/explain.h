// A YAML reader's complaints in words for people who have never seen YAML.
#pragma once

#include <string>
#include <string_view>

namespace dyeleaf {

struct Explanation {
    std::string message, help;
};

// `complaint` is the reader's own text.
Explanation explain(std::string_view complaint);

} // namespace dyeleaf
