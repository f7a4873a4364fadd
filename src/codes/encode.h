// From a text to its modules: the one place that knows the library which does it.
#pragma once

#include "codes/code.h"

#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

struct Modules {
    int columns = 0, rows = 0;
    std::vector<bool> dark; // row by row
    [[nodiscard]] bool is_dark(int x, int y) const {
        return dark[static_cast<std::size_t>(y) * static_cast<std::size_t>(columns) + static_cast<std::size_t>(x)];
    }
};

// Nothing for a text that no code of this kind holds. Requires: characters that the kind knows.
std::optional<Modules> encode(CodeKind kind, const std::string& text);

} // namespace dyeleaf
