#include "layout/hue_pattern.h"

#include "colour/hue.h"
#include "colour/spaces.h"

#include <utility>

namespace dyeleaf {

namespace {

constexpr Length pitch = mm(1.4); // from line to line: a patch 4 mm high has three of any kind

void add_line(Path& path, Point from, Point to) {
    path.emplace_back(MoveTo{from});
    path.emplace_back(LineTo{to});
}

Path upright(Size size) {
    Path path;
    for (Length x = pitch / 2; x < size.width; x += pitch)
        add_line(path, {x, {}}, {x, size.height});
    return path;
}

Path level(Size size) {
    Path path;
    for (Length y = pitch / 2; y < size.height; y += pitch)
        add_line(path, {{}, y}, {size.width, y});
    return path;
}

// At 45 degrees, as far apart as the others.
constexpr Length slant_pitch = pitch * 1.41421356;

Path rising(Size size) {
    Path path;
    for (Length x = -size.height + slant_pitch / 2; x < size.width; x += slant_pitch)
        add_line(path, {x, size.height}, {x + size.height, {}});
    return path;
}

Path falling(Size size) {
    Path path;
    for (Length x = -size.height + slant_pitch / 2; x < size.width; x += slant_pitch)
        add_line(path, {x, {}}, {x + size.height, size.height});
    return path;
}

// Between the upright lines, every other column half a pitch lower. As strokes with round ends, too short to be seen
// as lines.
Path dots(Size size) {
    constexpr Length length = mm(0.01);
    Path path;
    bool lower = false;
    for (Length x = pitch; x < size.width; x += pitch, lower = !lower) {
        for (Length y = lower ? pitch : pitch / 2; y < size.height; y += pitch)
            add_line(path, {x, y}, {x + length, y});
    }
    return path;
}

} // namespace

DisplayList hue_pattern(Rgb colour, Size size, Rgb ink, Length line) {
    DisplayList list{size, {}};
    const auto lines = [&](Path path) { list.items.emplace_back(StrokePath{std::move(path), ink, line, {}}); };
    const auto spots = [&](Path path) {
        list.items.emplace_back(StrokePath{std::move(path), ink, line * 1.8, {}, true});
    };
    const Lab lab = to_lab(colour);
    switch (hue_family(lab)) {
    case HueFamily::pink:
        lines(upright(size));
        lines(rising(size));
        break;
    case HueFamily::red: lines(upright(size)); break;
    case HueFamily::orange_brown:
        lines(upright(size));
        spots(dots(size));
        break;
    case HueFamily::yellow: spots(dots(size)); break;
    case HueFamily::green: lines(falling(size)); break;
    case HueFamily::turquoise:
        lines(level(size));
        lines(falling(size));
        break;
    case HueFamily::blue: lines(level(size)); break;
    case HueFamily::violet: lines(rising(size)); break;
    case HueFamily::grey:
        if (lab.lightness >= 50) break;
        lines(upright(size));
        lines(level(size));
        break;
    }
    return list;
}

} // namespace dyeleaf
