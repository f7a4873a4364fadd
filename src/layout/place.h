// Gives every filled box its rectangle and its ink.
#pragma once

#include "base/geometry.h"
#include "base/ink.h"
#include "base/quad.h"
#include "display/display_list.h"
#include "layout/box.h"
#include "layout/set_words.h"

#include <array>
#include <string>
#include <vector>

namespace dyeleaf {

// How far texts are shrunk in turn, from their size (0) to their smallest (1), until what they stand in fits.
inline constexpr std::array shrink_levels = {0.0, 0.25, 0.5, 0.75, 1.0};

// A rectangle of the label that matters to others, in the order in which it was inked: later ones lie on top.
struct Zone {
    enum class Kind { words, caution, symbol, code, colour, background, picture, hole };
    Kind kind = Kind::words;
    Rect rect; // of the ink's lines, on the label
    const Box* box = nullptr;
    std::string text;
    std::vector<Quad> letters = {}; // of a text on an arc, which fills little of its rectangle
};

// Whether the two share any ink.
bool overlap(const Zone& zone, Rect rect);
bool overlap(const Zone& zone, const Zone& other);

// What did not fit.
struct Misfit {
    enum class Kind { cut, broken, too_tall, too_wide, small_symbol, small_code, no_code };
    Kind kind = Kind::cut;
    const Box* box = nullptr;
    Length excess; // how much is missing: of room, or of a symbol's least height
    std::string text;
    bool is_caution = false;
    std::string help = {}; // of a code: what to do about what `text` says
};

// A text that is cut or broken is at its smallest already: more room elsewhere would not help it.
bool wants_more_room(const Misfit& misfit);

struct MissingGlyph {
    const Box* box = nullptr;
    std::string character;
    std::string text;
    bool is_caution = false;
};

// A picture as large as it prints.
struct PlacedPicture {
    const Box* box = nullptr;
    PictureMark mark;
    Size size;
};

// A box's rectangle, for dumps: depth in the tree, kind, and where it lies on the label.
struct PlacedBox {
    int depth = 0;
    std::string kind;
    Rect rect;
};

// A patch that is too small for what should stand on it.
struct SilentPatch {
    enum class Lacks { code, source };
    Lacks lacks = Lacks::code;
    const Box* box = nullptr;
    Rect rect;                     // on the label
    std::vector<std::string> says; // one of these beside it is as good
};

struct Placement {
    DisplayList list;
    std::vector<Zone> zones;
    std::vector<Misfit> misfits;
    std::vector<MissingGlyph> missing;
    std::vector<PlacedPicture> pictures;
    std::vector<SilentPatch> silent_patches;
    std::vector<PlacedBox> boxes;
};

// The box on a label of `size`. Backgrounds and colours that reach the label's edge run `bleed` beyond it.
// With sparing ink, backgrounds are outlines.
Placement place(const FilledBox& box, Size size, Length bleed, const Trial& trial, Ink ink = {});

} // namespace dyeleaf
