// A layout file as it was written: a tree of boxes with holes for facts. Layouts place, they never compute.
#pragma once

#include "base/geometry.h"
#include "base/spot.h"
#include "codes/code.h"
#include "facts/items.h"
#include "text/typesetter.h"

#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace dyeleaf {

// How wide or tall a box is.
class Extent {
  public:
    static Extent fit() { return Extent{Kind::fit, {}, 0}; } // by content
    static Extent fixed(Length length) { return Extent{Kind::fixed, length, 0}; }
    static Extent share(double parts) { return Extent{Kind::share, {}, parts}; } // of what the others leave

    [[nodiscard]] bool is_fit() const { return kind_ == Kind::fit; }
    [[nodiscard]] bool is_fixed() const { return kind_ == Kind::fixed; }
    [[nodiscard]] bool is_share() const { return kind_ == Kind::share; }
    [[nodiscard]] Length length() const { return length_; } // of a fixed one
    [[nodiscard]] double parts() const { return parts_; }   // of a share

  private:
    enum class Kind { fit, fixed, share };
    Extent(Kind kind, Length length, double parts) : kind_(kind), length_(length), parts_(parts) {}
    Kind kind_;
    Length length_;
    double parts_;
};

// A length as written, or the name of the fact that gives it: `width: jar.wrap.width`.
struct LengthOrFact {
    std::variant<Length, std::string> value;
    Spot spot;
};

enum class Align { start, centre, end, stretch, baseline }; // across the run of a row or column
enum class Justify { start, centre, end, between };         // along it
enum class TextAlign { start, centre, end };

struct TextStyle {
    Font font;
    Length size = pt(8);
    Length smallest = pt(6);
    double leading = 1.25; // baseline to baseline, in ems
    int lines = 0;         // at most; 0: as many as it takes
    bool balanced = false;
    TextAlign align = TextAlign::start;
    Rgb colour{}; // black
};

// A text with holes: pieces are literal text and fact names in turn.
struct Template {
    struct Piece {
        bool is_fact = false;
        std::string text; // literal, or the fact's name
    };
    std::vector<Piece> pieces;
    Spot spot;
};

// A text on the circle that fits into its box: on its upper half, or on its lower half and upright there as well.
enum class Around { top, bottom };

struct Box;

struct Column {
    std::vector<Box> holds;
};
struct Row {
    std::vector<Box> holds;
};
struct Grid {
    int columns = 1;
    int rows = 0;           // so many equal rows; 0: as many as it takes, each as tall as its content
    std::vector<Box> holds; // filled row by row
};
struct Layers {
    std::vector<Box> holds; // later ones on top
};
// One set of boxes for each item of a list, put in its place inside row, column, grid or layers.
struct Repeat {
    std::string over; // a list fact
    int most = 0;     // at most; 0: all
    std::vector<Box> holds;
};
struct TableColumn {
    Extent width = Extent::fit();
    std::vector<Box> head; // none or one
    std::vector<Box> cell; // exactly one
};
// A row of cells for each item of a list, in columns that line up; `gap` of the box stands between columns.
struct Table {
    std::string over;
    std::vector<TableColumn> columns;
    Length row_gap;
    Length rule; // a line between rows; none where zero
};
struct Text {
    Template content;
    std::optional<Template> otherwise; // printed when a fact of `content` is not recorded; none: the box is left out
    TextStyle style;
    std::optional<Around> around = std::nullopt;
};
// A colour, with boxes on it whose text is black or white by contrast.
struct SwatchBox {
    std::string patch; // a patch fact
    std::vector<Box> holds;
    TextStyle style = {}; // of what it says of itself: its code where it is hardly told from another, its source
};
struct Picture {
    std::variant<PictureFile, std::string> picture; // found beside the layout, or a picture fact
    std::optional<Template> alt;                    // what it shows, for readers who cannot see it
};
// A drawing that the program knows, as wide as its height asks for.
struct SymbolBox {
    std::string symbol; // a symbol fact
};
// A dye as it speckles, in true size: as much of it as the box shows.
struct SpecklesBox {
    std::string speckled; // a speckles fact
};
// A code to scan: black on white, with its quiet zone, as large as fits.
struct CodeBox {
    Template content;
    std::optional<Template> otherwise; // as of a text
    CodeKind as = CodeKind::qr;
    Length least_module; // more than what the kind asks for; else zero
    TextStyle style;     // of what stands below the bars
};
struct Rule {
    Length thickness = pt(0.5);
    Rgb colour{};
    bool dashed = false;
};
// Cautions are the program's own words at their own smallest sizes: a layout places them and cannot restyle them.
// `hazards` is `signal` and `statements` in one text.
enum class CautionKind { not_food, dust, airtight, hazards, signal, statements };
struct Caution {
    CautionKind kind = CautionKind::not_food;
    bool brief = false; // the short wording, for lids
    TextStyle style;    // its size may be raised, never lowered below the caution's own; it never shrinks
    std::optional<Around> around = std::nullopt;
};
// Marks where a hole is to be punched.
struct HoleMark {
    Length diameter = mm(4);
};
// Empty room along the run of the row or column it stands in.
struct Blank {
    Extent extent = Extent::share(1);
};

using BoxKind = std::variant<Column, Row, Grid, Layers, Repeat, Table, Text, SwatchBox, SymbolBox, CodeBox, Picture,
                             Rule, Caution, HoleMark, Blank, SpecklesBox>;

struct Box {
    BoxKind kind = Blank{};
    Spot spot;
    std::optional<Extent> width, height; // none: what the kind and its container want
    Length min_width, min_height;
    std::optional<Length> max_width, max_height;
    Insets margin, padding;
    Length gap; // between the boxes it holds
    Align align = Align::stretch;
    Justify justify = Justify::start;
    std::optional<Rgb> background;
    std::optional<Rgb> border_colour;
    Length border; // thickness, inside the box
    Length corner; // radius
    Turn turn = Turn::none;
    std::vector<std::string> with;    // left out unless every one of these facts is recorded
    std::vector<std::string> without; // left out when any of these is
};

// A hole punched or cut through the label: nothing may print within `clear` of its edge.
struct Hole {
    std::optional<Length> x, y; // of the centre, from the top left corner; none: the middle
    Length diameter;
    Length clear;
};

enum class Edge { left, right, top, bottom };

// The strip that ends up under the other end of a wrap: kept blank and marked.
struct OverlapStrip {
    Edge edge = Edge::right;
    LengthOrFact depth;
};
// Where the card is folded.
struct Fold {
    Edge from = Edge::top;
    LengthOrFact at;
};

struct Shape {
    LengthOrFact width, height;
    // The radius on which its middle lies, where it goes round a tapering wall: below 0 with the centre above it. None,
    // or a fact that is not recorded: a straight label.
    std::optional<LengthOrFact> arc;
    bool round = false;
    Length corner;
    Length clipped{}; // so much of either side is cut away with the two top corners, where a tag hangs from its string
    Length bleed;
    Length safe; // nothing but background within this of the trim
    // What the layout is made for, where the size comes from the record: smaller labels are warned of.
    Length least_width, least_height;
};

struct Design {
    std::string name;
    std::string about;
    ItemKind items = ItemKind::dyes;
    std::optional<Grouping> grouping;
    Shape shape;
    std::string stock; // the one it is meant for
    Spot stock_spot;
    std::vector<Hole> holes;
    std::vector<Fold> folds;
    std::optional<OverlapStrip> overlap;
    Box front;
    std::optional<Box> back;
    Spot spot;
};

} // namespace dyeleaf
