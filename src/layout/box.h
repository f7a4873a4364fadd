// A design filled with one item's facts: every text is words, every list is boxes, every absent thing is gone.
#pragma once

#include "design/design.h"
#include "display/display_list.h"

#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace dyeleaf {

struct FilledBox;

enum class Direction { down, across };

struct Flow { // a column or a row
    Direction direction = Direction::down;
    std::vector<FilledBox> children;
};
struct FilledGrid {
    int columns = 1, rows = 0;
    std::vector<FilledBox> children;
};
struct Stack { // all in one place, later ones on top
    std::vector<FilledBox> children;
};
struct FilledTable {
    std::vector<Extent> widths;
    std::vector<std::vector<FilledBox>> rows; // each as long as `widths`
    Length row_gap, rule;
};
struct Words {
    std::string text;
    TextStyle style;
    bool is_caution = false;
    std::optional<Around> around = std::nullopt;
};
struct PatchBox {
    Patch patch;
    std::vector<FilledBox> children; // stacked on the colour
    TextStyle style;                 // of what stands on it: its code, its source
    bool carries_code = false;       // it is hardly told from another one on the label
};
struct SymbolMark {
    Symbol symbol;
    std::shared_ptr<const DisplayList> drawing;
};
struct SpeckleMark {
    Speckled speckled;
};
struct PictureMark {
    PictureFile picture;
    std::string alt;   // read in its place
    std::string owner; // whose record names it; empty: the layout does
};
struct CodeMark {
    std::variant<Code, CodeFault> code;
    std::string description; // for readers who cannot see it
    Length least_module, dot;
    TextStyle style;
};
struct FilledBlank {
    Extent extent = Extent::share(1);
};

using FilledKind = std::variant<Flow, FilledGrid, Stack, FilledTable, Words, PatchBox, PictureMark, Rule, HoleMark,
                                FilledBlank, SymbolMark, CodeMark, SpeckleMark>;

struct FilledBox {
    FilledKind kind = FilledBlank{};
    const Box* box = nullptr; // where it came from: margins, extents, place in the file
};

} // namespace dyeleaf
