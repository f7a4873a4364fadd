#include "sheets/read_cells.h"

#include "base/number.h"
#include "base/words.h"
#include "sheets/read_fields.h"

namespace dyeleaf {

namespace {

constexpr LengthRange on_paper = {mm(0), mm(2000)};
constexpr LengthRange cell_side = {mm(2), mm(2000)};

// How far measures that were taken with a ruler, or rounded, may be from adding up.
constexpr Length ruler_play = mm(0.1);

bool about_equal(Length a, Length b) {
    return fits(a, b + ruler_play) && fits(b, a + ruler_play);
}

// The keys of one direction of the grid, and how long the sheet is that way.
struct Direction {
    std::string_view count, size, start, end, pitch, edge;
    Length paper;
};

// A length with the place where it stands.
struct Written {
    Length length;
    Spot spot;
};

std::optional<Written> take_written(Fields& fields, std::string_view key) {
    const Node* node = fields.take(key);
    if (node == nullptr) return std::nullopt;
    const auto length = read_length(*node, std::string{key}, on_paper, fields.diagnostics());
    return length ? std::optional{Written{*length, node->spot}} : std::nullopt;
}

// One that is written and cannot be read has been complained of already.
struct Gutter {
    bool is_written = false;
    std::optional<Length> length;
};

Gutter read_gutter(const Node* node, std::string_view key, Diagnostics& diagnostics) {
    if (node == nullptr) return {};
    return {true, read_length(*node, std::string{key}, on_paper, diagnostics)};
}

struct Gutters {
    Gutter across, down;
};

Gutters take_gutters(Fields& fields) {
    const Gutter one = read_gutter(fields.take("gutter"), "gutter", fields.diagnostics());
    const Node* two = fields.take("gutters");
    if (two == nullptr) return {one, one};
    if (one.is_written) {
        fields.diagnostics().error(two->spot, "“gutter” and “gutters” are both written",
                                   "keep one: gutter: 2.5 mm where they are alike, else gutters: {across: 2.5 mm, "
                                   "down: 0 mm}");
    }
    Fields each{*two, "gutters", fields.diagnostics()};
    Gutters gutters{read_gutter(each.take("across"), "across", fields.diagnostics()),
                    read_gutter(each.take("down"), "down", fields.diagnostics())};
    each.refuse_the_rest();
    return gutters;
}

// One direction of the grid: how many cells of which size at which pitch.
struct Run {
    Direction keys;
    int count = 1;
    Length cell, start, pitch;
    std::optional<Written> end;
    bool by_gutter = false; // its pitch is made of cell and gutter
    bool in_inches = false; // as the cell is written

    [[nodiscard]] Length gutter() const { return pitch - cell; }
    [[nodiscard]] Length reach() const { return start + pitch * (count - 1) + cell; }
    [[nodiscard]] std::string figure(Length length) const {
        return in_inches ? decimal(length.in_mm() / 25.4, 4) : decimal(length.in_mm(), 2);
    }
    [[nodiscard]] std::string words(Length length) const { return figure(length) + (in_inches ? " in" : " mm"); }
};

// "7.25 + 3 × 63.5 + 2 × 2.5 + 7.25 = 210 mm, the sheet is 215.9 mm wide".
std::string sum(const Run& run) {
    std::string text = run.figure(run.start) + " + ";
    text += run.count > 1 ? std::to_string(run.count) + " × " + run.figure(run.cell) : run.figure(run.cell);
    const int gutters = run.count - 1;
    if (gutters > 0 && !near(run.gutter(), {}))
        text += " + " + (gutters > 1 ? std::to_string(gutters) + " × " : "") + run.figure(run.gutter());
    if (run.end) text += " + " + run.figure(run.end->length);
    const Length total = run.reach() + (run.end ? run.end->length : Length{});
    return text + " = " + run.words(total) + ", the sheet is " + run.words(run.keys.paper) + " " +
           std::string{run.keys.edge};
}

void check_run(const Run& run, const Spot& spot, Diagnostics& diagnostics) {
    const Direction& keys = run.keys;
    if (run.count > 1 && !fits(run.cell, run.pitch)) {
        diagnostics.error(spot,
                          "cells that are " + run.words(run.cell) + " " + std::string{keys.edge} +
                              " overlap at a pitch of " + run.words(run.pitch),
                          in_quotes(keys.pitch) +
                              " is the distance from one cell to the next, edge to same edge: at "
                              "least " +
                              run.words(run.cell));
        return;
    }
    const Length total = run.reach() + (run.end ? run.end->length : Length{});
    if (run.end && !about_equal(total, keys.paper)) {
        const std::string rest = total < keys.paper ? run.words(keys.paper - total) + " left over"
                                                    : run.words(total - keys.paper) + " too much";
        diagnostics.error(run.end->spot, sum(run) + ": " + rest,
                          "measure a sheet again: " + in_quotes(keys.start) +
                              ", the cells, the gutters between them "
                              "and " +
                              in_quotes(keys.end) + " must add up to the sheet");
        return;
    }
    if (fits(run.reach(), keys.paper)) return;
    diagnostics.error(spot, sum(run) + ": the cells run " + run.words(run.reach() - keys.paper) + " off it",
                      "measure a sheet: " + in_quotes(keys.start) +
                          " is the distance from the sheet's edge to the first cell, " +
                          (run.by_gutter ? "a gutter the gap between two cells"
                                         : in_quotes(keys.pitch) + " from one cell to the next, edge to same edge"));
}

// The pitch as it is written, or what cell and gutter make it.
Length take_pitch(Fields& fields, const Run& run, const Gutter& gutter) {
    const std::string key{run.keys.pitch};
    if (run.count == 1) return take_length(fields, key, on_paper, run.cell);
    if (!gutter.is_written) return need_length(fields, key, on_paper).value_or(run.cell);
    const Length made = run.cell + gutter.length.value_or(Length{});
    const auto pitch = take_written(fields, key);
    if (pitch && gutter.length && !about_equal(pitch->length, made)) {
        fields.diagnostics().error(
            pitch->spot,
            "a cell of " + run.words(run.cell) + " and a gutter of " + run.words(*gutter.length) + " make " +
                run.figure(run.cell) + " + " + run.figure(*gutter.length) + " = " + run.words(made) + ", but " +
                in_quotes(key) + " says " + run.words(pitch->length),
            in_quotes(key) + " is the distance from one cell to the next, edge to same edge; write it or the gutter");
    }
    return pitch ? pitch->length : made;
}

Run take_run(Fields& fields, const Direction& keys, const Gutter& gutter) {
    Diagnostics& diagnostics = fields.diagnostics();
    Run run;
    run.keys = keys;
    if (const Node* count = fields.need(keys.count, std::string{keys.count} + ": 3"))
        run.count = read_whole(*count, std::string{keys.count}, {1, 200}, diagnostics).value_or(1);
    if (const Node* cell = fields.need(keys.size, std::string{keys.size} + ": 60 mm")) {
        run.cell = read_length(*cell, std::string{keys.size}, cell_side, diagnostics).value_or(Length{});
        run.in_inches = is_imperial(*cell);
    }
    run.start = need_length(fields, keys.start, on_paper).value_or(Length{});
    run.end = take_written(fields, keys.end);
    run.by_gutter = gutter.is_written;
    run.pitch = take_pitch(fields, run, gutter);
    return run;
}

// The radius of the corners; more than half the shorter side would be another shape.
Length take_corner(Fields& fields, const CellGrid& grid) {
    const auto corner = take_written(fields, "corner");
    if (!corner) return {};
    const Length most = smaller(grid.cell.width, grid.cell.height) / 2;
    if (grid.round) {
        fields.diagnostics().error(corner->spot, "a round cell has no corners",
                                   "take “corner” out, or “round” if the cells are rectangles with rounded corners");
    } else if (most > Length{} && !fits(corner->length, most)) {
        fields.diagnostics().error(corner->spot,
                                   "corners with a radius of " + to_string(corner->length) + " do not fit a cell of " +
                                       measures(grid.cell),
                                   "at most half its shorter side: " + to_string(most));
    }
    return corner->length;
}

} // namespace

std::optional<CellGrid> read_cells(const Node& node, Size paper, Diagnostics& diagnostics) {
    const int errors_before = diagnostics.errors();
    Fields fields{node, "cells", diagnostics};
    const Gutters gutters = take_gutters(fields);
    const Run across =
        take_run(fields, {"columns", "width", "left", "right", "across", "wide", paper.width}, gutters.across);
    const Run down = take_run(fields, {"rows", "height", "top", "bottom", "down", "high", paper.height}, gutters.down);
    CellGrid grid{across.count,
                  down.count,
                  {across.cell, down.cell},
                  take_yes_no(fields, "round", false),
                  {across.start, down.start},
                  across.pitch,
                  down.pitch,
                  {}};
    grid.corner = take_corner(fields, grid);
    fields.refuse_the_rest();
    if (diagnostics.errors() > errors_before) return std::nullopt;
    check_run(across, node.spot, diagnostics);
    check_run(down, node.spot, diagnostics);
    return grid;
}

} // namespace dyeleaf
