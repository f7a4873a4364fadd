// Small pictures, made by ImageMagick.
#pragma once

#include "paint/outside.h"

#include <string>

namespace dyeleaf {

// 48 × 32 pixels: red and lime above, blue and yellow below. `options` go before the name of the file.
inline std::string quarters(const std::string& format, const std::string& options = "") {
    const std::string file = outside::written("quarters." + format, "").string();
    outside::output("convert \\( xc:red xc:lime +append \\) \\( xc:blue xc:yellow +append \\) -append -sample 48x32! "
                    "-quality 100 -sampling-factor 1x1 " +
                    options + " " + file);
    return outside::contents(file);
}

// With an Exif block that says nothing but its orientation (Exif 2.32, 4.5 and 4.6.2, in the byte order "II").
inline std::string oriented(const std::string& jpeg, int orientation) {
    std::string block{"\xff\xe1\x00\x22"
                      "Exif\0\0"
                      "II\x2a\0\x08\0\0\0"
                      "\x01\0"
                      "\x12\x01\x03\0\x01\0\0\0\0\0\0\0"
                      "\0\0\0\0",
                      36};
    block[28] = static_cast<char>(orientation);
    return jpeg.substr(0, 2) + block + jpeg.substr(2);
}

} // namespace dyeleaf
