#include "sheets/stock.h"

#include "base/nearest.h"
#include "base/words.h"
#include "source/fields.h"
#include "source/values.h"

namespace dyeleaf {

namespace {

constexpr LengthRange paper_side = {mm(10), mm(2000)};
constexpr LengthRange on_paper = {mm(0), mm(2000)};
constexpr LengthRange cell_side = {mm(2), mm(2000)};

std::optional<Length> need_length(Fields& fields, std::string_view key, LengthRange range) {
    const std::string name{key};
    const Node* node = fields.need(key, name + ": 60 mm");
    return node == nullptr ? std::nullopt : read_length(*node, name, range, fields.diagnostics());
}

// As written, or `otherwise`.
Length take_length(Fields& fields, std::string_view key, LengthRange range, Length otherwise) {
    const Node* node = fields.take(key);
    if (node == nullptr) return otherwise;
    return read_length(*node, std::string{key}, range, fields.diagnostics()).value_or(otherwise);
}

bool take_yes_no(Fields& fields, std::string_view key, bool otherwise) {
    const Node* node = fields.take(key);
    if (node == nullptr) return otherwise;
    return read_yes_no(*node, std::string{key}, fields.diagnostics()).value_or(otherwise);
}

std::optional<Size> read_paper(const Node& node, Diagnostics& diagnostics) {
    if (node.kind == Node::Kind::map) {
        Fields fields{node, "paper", diagnostics};
        const auto width = need_length(fields, "width", paper_side);
        const auto height = need_length(fields, "height", paper_side);
        fields.refuse_the_rest();
        return width && height ? std::optional{Size{*width, *height}} : std::nullopt;
    }
    const auto name = read_text(node, "paper", diagnostics);
    if (!name) return std::nullopt;
    const auto size = find_paper(*name);
    if (!size) {
        diagnostics.error(node.spot, "there is no paper called " + in_quotes(*name),
                          suggest(*name, paper_names()) +
                              "; for another size write paper: {width: 210 mm, height: 297 mm}");
    }
    return size;
}

// One direction of the grid: how many cells of which size at which pitch.
struct Run {
    std::string key;   // of the pitch
    std::string edge;  // "wide", "high"
    std::string first; // the key of where it starts
    int count = 1;
    Length cell, pitch, start, paper;
};

// "3 cells of 70 mm at a pitch of 72 mm from 5 mm reach 219 mm, the sheet is 210 mm wide".
void check_run(const Run& run, const Spot& spot, Diagnostics& diagnostics) {
    if (run.count > 1 && !fits(run.cell, run.pitch)) {
        diagnostics.error(
            spot,
            "cells that are " + to_string(run.cell) + " " + run.edge + " overlap at a pitch of " + to_string(run.pitch),
            in_quotes(run.key) + " is the distance from one cell to the next, edge to same edge: at least " +
                to_string(run.cell));
        return;
    }
    const Length end = run.start + run.pitch * (run.count - 1) + run.cell;
    if (fits(end, run.paper)) return;
    std::string cells = counted(run.count, "cell", "cells") + " of " + to_string(run.cell);
    if (run.count > 1) cells += " at a pitch of " + to_string(run.pitch);
    diagnostics.error(spot,
                      cells + " from " + to_string(run.start) + (run.count > 1 ? " reach " : " reaches ") +
                          to_string(end) + ", the sheet is " + to_string(run.paper) + " " + run.edge,
                      "measure a sheet: " + in_quotes(run.first) +
                          " is the distance from the sheet's edge to the first cell, " + in_quotes(run.key) +
                          " from one cell to the next");
}

std::optional<CellGrid> read_cells(const Node& node, Size paper, Diagnostics& diagnostics) {
    const int errors_before = diagnostics.errors();
    Fields fields{node, "cells", diagnostics};
    const auto count = [&](std::string_view key) {
        const Node* one = fields.need(key, std::string{key} + ": 3");
        return one == nullptr ? 1 : read_whole(*one, std::string{key}, {1, 200}, diagnostics).value_or(1);
    };
    CellGrid grid;
    grid.columns = count("columns");
    grid.rows = count("rows");
    const auto width = need_length(fields, "width", cell_side);
    const auto height = need_length(fields, "height", cell_side);
    grid.cell = {width.value_or(Length{}), height.value_or(Length{})};
    grid.round = take_yes_no(fields, "round", false);
    const auto left = need_length(fields, "left", on_paper);
    const auto top = need_length(fields, "top", on_paper);
    grid.first = {left.value_or(Length{}), top.value_or(Length{})};
    // A single column or row needs no pitch.
    const auto pitch = [&](std::string_view key, int cells, Length cell) {
        if (cells == 1) return take_length(fields, key, on_paper, cell);
        return need_length(fields, key, on_paper).value_or(cell);
    };
    grid.across = pitch("across", grid.columns, grid.cell.width);
    grid.down = pitch("down", grid.rows, grid.cell.height);
    fields.refuse_the_rest();
    if (diagnostics.errors() > errors_before) return std::nullopt;
    check_run({"across", "wide", "left", grid.columns, grid.cell.width, grid.across, grid.first.x, paper.width},
              node.spot, diagnostics);
    check_run({"down", "high", "top", grid.rows, grid.cell.height, grid.down, grid.first.y, paper.height}, node.spot,
              diagnostics);
    return grid;
}

// What has no meaning for this kind of stock would otherwise seem to work.
void refuse(Fields& fields, std::string_view key, const std::string& why) {
    const Node* node = fields.take(key);
    if (node != nullptr)
        fields.diagnostics().error(node->spot, in_quotes(key) + " says nothing here: " + why, "take it out");
}

} // namespace

std::optional<Stock> read_stock(const Node& node, Diagnostics& diagnostics) {
    const int errors_before = diagnostics.errors();
    Fields fields{node, "stock", diagnostics};
    Stock stock;
    stock.spot = node.spot;
    if (const Node* name = fields.need("stock", "stock: my-card"))
        stock.name = read_text(*name, "stock", diagnostics).value_or("");
    if (const Node* about = fields.take("about")) stock.about = read_text(*about, "about", diagnostics).value_or("");
    stock.page_per_label = take_yes_no(fields, "page per label", false);
    if (stock.page_per_label) {
        for (const std::string_view key : {"paper", "sideways", "margin", "gap", "turn", "cells"})
            refuse(fields, key, "the page is as large as the label");
        stock.page_marks = take_yes_no(fields, "cut marks", false);
        fields.refuse_the_rest();
        return diagnostics.errors() > errors_before ? std::nullopt : std::optional{stock};
    }
    const Node* paper = fields.need("paper", "paper: A4");
    stock.paper = (paper == nullptr ? std::nullopt : read_paper(*paper, diagnostics)).value_or(Size{});
    if (take_yes_no(fields, "sideways", false)) stock.paper = turned_size(Turn::right, stock.paper);
    constexpr LengthRange rim = {mm(0), mm(100)};
    stock.margin = take_length(fields, "margin", rim, mm(6));
    const bool paper_known = paper != nullptr && diagnostics.errors() == errors_before;
    if (const Node* cells = fields.take("cells")) {
        for (const std::string_view key : {"gap", "turn"})
            refuse(fields, key, "the cells are where they are");
        // Without a sound paper the arithmetic would be wrong as well.
        if (paper_known) stock.cells = read_cells(*cells, stock.paper, diagnostics);
    } else {
        stock.gap = take_length(fields, "gap", rim, mm(6));
        stock.may_turn = take_yes_no(fields, "turn", true);
    }
    fields.refuse_the_rest();
    return diagnostics.errors() > errors_before ? std::nullopt : std::optional{stock};
}

} // namespace dyeleaf
