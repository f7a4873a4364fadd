// What ink lies where, in millimetres from the top left corner of one label or sheet. Plain values; no box, no record
// and no drawing library inside. Later items lie on top of earlier ones; text stands in reading order.
#pragma once

#include "base/colour.h"
#include "base/geometry.h"
#include "display/tag.h"
#include "pictures/picture_file.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace dyeleaf {

struct MoveTo {
    Point to;
};
struct LineTo {
    Point to;
};
struct CurveTo { // cubic Bézier
    Point control1, control2, to;
};
struct ClosePath {};
using Path = std::vector<std::variant<MoveTo, LineTo, CurveTo, ClosePath>>;

Path line_path(Point from, Point to);
Path rect_path(Rect rect);
// Corners as quarter circles of `radius`, no more than half the shorter side.
Path rounded_path(Rect rect, Length radius);
Path circle_path(Point centre, Length radius);

struct FontFace {
    std::string file; // path of the font file
    int index = 0;    // of the face inside it
    friend bool operator==(const FontFace&, const FontFace&) = default;
};

// Positions are in ems, so that one shaped text serves every size.
struct Glyph {
    std::uint32_t index = 0;
    double x = 0, y = 0; // of the glyph's origin, right and down from the run's
};
struct Cluster {
    int bytes = 0, glyphs = 0;
};
struct ShapedRun {
    FontFace face;
    std::string text;              // UTF-8
    std::vector<Glyph> glyphs;     // left to right
    std::vector<Cluster> clusters; // in text order; bytes and glyphs add up to the run's
    bool right_to_left = false;    // then clusters run through the glyphs from the end
    double width = 0;              // in ems
};

struct DrawRun {
    std::shared_ptr<const ShapedRun> run;
    Point baseline; // of the run's left end
    Length size;    // of the em
    Rgb colour;
    Length anchor{}; // x of the point that its line hangs on: its start, middle or end, as the text is aligned
    double turn = 0; // clockwise about `baseline`, in radians
};
struct FillPath {
    Path path;
    Rgb colour;
    // Of a printer: the path is moved so that its first point lies on a whole one of the page, and is drawn without
    // rounding. Zero: it stays where it is.
    Length dot = {};
};
struct StrokePath {
    Path path;
    Rgb colour;
    Length width;
    std::vector<Length> dash; // on, off, …; empty: unbroken
    bool round = false;       // ends and corners; else cut straight and pointed
};
struct DrawPicture {
    PictureFile picture;
    Rect rect; // as large as fits in it, in the middle, its shape kept
    bool grey = false;
};

struct DisplayList;

struct Group {
    std::shared_ptr<const DisplayList> list;
    Transform transform;
    std::optional<Path> clip; // in the group's own coordinates
    bool is_label = false;    // a whole one on its sheet: what it holds is read together
};

// What lies between the two is one part to a reader; parts hold no parts. Ink outside every part is decoration, which
// is never read aloud.
struct BeginTag {
    Tag tag;
};
struct EndTag {};

using DisplayItem = std::variant<FillPath, StrokePath, DrawRun, DrawPicture, Group, BeginTag, EndTag>;

struct DisplayList {
    Size size;
    std::vector<DisplayItem> items;
};

// The same in black, white and greys.
DisplayList in_grey(const DisplayList& list);

// What the tagged parts say, one a line.
std::string reading_text(const DisplayList& list);

// The list as text, one item a line, for tests and for people.
std::string dump(const DisplayList& list);

} // namespace dyeleaf
