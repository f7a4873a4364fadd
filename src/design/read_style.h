// Text styles: defined once, built upon one another.
#pragma once

#include "design/read_design.h"
#include "source/document.h"

#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

// What the reading of one file needs to know.
struct StyleContext {
    const Styles& known;
    const std::vector<std::string>& families;
    Diagnostics& diagnostics;
};

// A style's name, or a map that starts from one (`like`) and changes some of it.
TextStyle read_style(const Node& node, const StyleContext& context);

} // namespace dyeleaf
