// What can be said about a text before it is read as YAML.
#pragma once

#include "base/diagnostic.h"
#include "source/document.h"
#include "source/places.h"

namespace dyeleaf {

// True when the bytes are UTF-8 text without control characters, with ordinary spaces as indentation and lines of
// sane length; else errors, each at its place.
bool is_sound_text(Places& places, const DocumentLimits& limits, Diagnostics& diagnostics);

} // namespace dyeleaf
