// Formats by the bytes their files begin with.
#pragma once

#include <string>
#include <string_view>

namespace dyeleaf {

// One that people mistake for a picture that prints: "HEIC", "GIF", "PDF" …; empty where it is none that is known.
std::string foreign_format(std::string_view bytes);

} // namespace dyeleaf
