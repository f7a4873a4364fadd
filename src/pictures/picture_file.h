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

// From stored pixels to pixels as seen: x' = a x + c y + e, y' = b x + d y + f.
struct Uprighting {
    double a = 1, b = 0, c = 0, d = 1, e = 0, f = 0;
};

// Exif 2.32, tag 274, as where the stored point (x, y) of w by h pixels is seen.
inline Uprighting upright(const PictureFile& picture) {
    const double w = picture.stored.across;
    const double h = picture.stored.down;
    switch (picture.orientation) {
    case 2: return {-1, 0, 0, 1, w, 0};  // (w - x, y)
    case 3: return {-1, 0, 0, -1, w, h}; // (w - x, h - y)
    case 4: return {1, 0, 0, -1, 0, h};  // (x, h - y)
    case 5: return {0, 1, 1, 0, 0, 0};   // (y, x)
    case 6: return {0, 1, -1, 0, h, 0};  // (h - y, x)
    case 7: return {0, -1, -1, 0, h, w}; // (h - y, w - x)
    case 8: return {0, -1, 1, 0, 0, w};  // (y, w - x)
    default: return {1, 0, 0, 1, 0, 0};
    }
}

} // namespace dyeleaf
