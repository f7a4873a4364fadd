// What can be said about a text before it is read as YAML.
#pragma once

#include "base/diagnostic.h"
#include "source/document.h"
#include "source/places.h"

#include <optional>
#include <string_view>

namespace dyeleaf {

// True when the bytes are UTF-8 text without control characters, with ordinary spaces as indentation and lines of
// sane length; else errors, each at its place.
bool is_sound_text(Places& places, const DocumentLimits& limits, Diagnostics& diagnostics);

// Where the first character stands that is neither printed nor a tab or a line end, in UTF-8 text; or nothing.
std::optional<std::size_t> find_control(std::string_view text);

} // namespace dyeleaf
