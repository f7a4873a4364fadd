// What is known of a picture file before any of it is painted.
#pragma once

#include <string>

namespace dyeleaf {

enum class PictureKind { jpeg, png, svg };

struct Pixels {
    int across = 0, down = 0;
    friend bool operator==(Pixels, Pixels) = default;
};

struct PictureFile {
    std::string file; // its path
    PictureKind kind = PictureKind::png;
    Pixels stored; // as they lie in the file; none in a drawing
    // How the stored rows and columns are to be seen, 1 to 8 (Exif 2.32, CIPA DC-008, tag 274): 1 as they lie, 3 turned
    // by half, 6 turned right, 8 turned left; the even ones up to 4 and odd ones from 5 are mirrored.
    int orientation = 1;
    double shape = 1; // width to height, as seen
};

// Those from 5 show the stored columns as rows.
inline bool lies_on_its_side(const PictureFile& picture) {
    return picture.orientation >= 5;
}

// As seen.
inline Pixels seen(const PictureFile& picture) {
    const Pixels stored = picture.stored;
    return lies_on_its_side(picture) ? Pixels{stored.down, stored.across} : stored;
}

} // namespace dyeleaf
