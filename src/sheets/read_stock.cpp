#include "sheets/stock.h"

#include "base/nearest.h"
#include "base/words.h"
#include "sheets/read_cells.h"
#include "sheets/read_fields.h"

#include <algorithm>

namespace dyeleaf {

namespace {

constexpr LengthRange paper_side = {mm(10), mm(2000)};
constexpr LengthRange rim = {mm(0), mm(100)};
constexpr Length usual_rim = mm(6);

// {width: 210 mm, height: 297 mm}, or a name that `find` knows.
std::optional<Size> read_size(const Node& node, const std::string& what, std::optional<Size> (*find)(std::string_view),
                              const std::vector<std::string>& names, Diagnostics& diagnostics) {
    if (node.kind == Node::Kind::map) {
        Fields fields{node, what, diagnostics};
        const auto width = need_length(fields, "width", paper_side);
        const auto height = need_length(fields, "height", paper_side);
        fields.refuse_the_rest();
        return width && height ? std::optional{Size{*width, *height}} : std::nullopt;
    }
    const auto name = read_text(node, what, diagnostics);
    if (!name) return std::nullopt;
    const auto size = find(*name);
    if (!size) {
        diagnostics.error(node.spot, "there is no " + what + " called " + in_quotes(*name),
                          suggest(*name, names) + "; for another size write " + what +
                              ": {width: 210 mm, height: 297 mm}");
    }
    return size;
}

// The paper as it lies before the reader; nothing after an error, without which all arithmetic would be wrong as well.
std::optional<Size> take_paper(Fields& fields) {
    const Node* node = fields.need("paper", "paper: A4");
    const auto paper =
        node == nullptr ? std::nullopt : read_size(*node, "paper", find_paper, paper_names(), fields.diagnostics());
    const bool sideways = take_yes_no(fields, "sideways", false);
    return paper && sideways ? turned_size(Turn::right, *paper) : paper;
}

void read_page(Fields& fields, Stock& stock) {
    for (const std::string_view key :
         {"roll", "paper", "sideways", "margin", "gap", "turn", "cells", "cut", "laminate"})
        refuse(fields, key, "the page is as large as the label");
    stock.page_marks = take_yes_no(fields, "cut marks", false);
}

// "62 mm", or the width with the length of its labels; the width again, if it is sound.
std::optional<Length> read_roll_width(const Node& node, Diagnostics& diagnostics, Roll& roll) {
    std::optional<Length> width;
    if (node.kind == Node::Kind::scalar) {
        width = read_length(node, "roll", paper_side, diagnostics);
    } else {
        Fields fields{node, "roll", diagnostics};
        width = need_length(fields, "width", paper_side);
        if (const Node* length = fields.take("length"))
            roll.length = read_length(*length, "length", paper_side, diagnostics);
        fields.refuse_the_rest();
    }
    roll.width = width.value_or(Length{});
    return width;
}

void read_roll(const Node& node, Fields& fields, Stock& stock) {
    for (const std::string_view key : {"paper", "sideways", "cells", "cut", "cut marks", "laminate"})
        refuse(fields, key, "a roll has one label a page");
    const auto width = read_roll_width(node, fields.diagnostics(), stock.roll.emplace());
    stock.page_per_label = true;
    stock.margin = take_length(fields, "margin", rim, {});
    stock.may_turn = take_yes_no(fields, "turn", true);
    if (stock.roll->length) {
        refuse(fields, "gap", "the labels are where they are on the roll");
    } else {
        stock.gap = take_length(fields, "gap", rim, {});
    }
    if (width && !fits(stock.margin * 2 + paper_side.least, *width)) {
        fields.diagnostics().error(node.spot, "a roll of " + to_string(*width) + " has no room within a margin of " +
                                                  to_string(stock.margin) + " on either side");
    }
}

std::optional<Laminate> read_laminate(const Node& node, std::optional<Size> paper, Diagnostics& diagnostics) {
    constexpr LengthRange film = {mm(2), mm(30)}; // below 2 mm a pouch does not seal (common practice)
    Fields fields{node, "laminate", diagnostics};
    const Node* named = fields.need("pouch", "pouch: A4");
    const auto pouch =
        named == nullptr ? std::nullopt : read_size(*named, "pouch", find_pouch, pouch_names(), diagnostics);
    Laminate laminate{pouch.value_or(Size{}), take_length(fields, "film", film, mm(4)),
                      take_yes_no(fields, "card per pouch", false)};
    fields.refuse_the_rest();
    if (!pouch) return std::nullopt;
    const Size turned = turned_size(Turn::right, *pouch);
    const auto holds = [&](Size size) { return fits(paper->width, size.width) && fits(paper->height, size.height); };
    if (paper && !laminate.one_each && !holds(*pouch) && !holds(turned)) {
        diagnostics.error(named->spot,
                          "the pouch is " + measures(*pouch) + ", and the sheet, whose cards go into it together, is " +
                              measures(*paper),
                          "take a larger pouch; where each card has a pouch of its own, write card per pouch: yes");
    }
    return laminate;
}

// The gap as it is written; cards that share a pouch stand apart by the film of both.
void read_gap(Fields& fields, Stock& stock) {
    const bool share_pouch = stock.laminate && !stock.laminate->one_each;
    const Length least = share_pouch ? stock.laminate->film * 2 : Length{};
    if (stock.cut == Cut::single_cuts) {
        refuse(fields, "gap", "with single cuts the labels touch");
        if (share_pouch) {
            fields.diagnostics().error(fields.node().spot,
                                       "single cuts leave no room between the cards for the film round each",
                                       "take another cut, or give each card a pouch of its own: card per pouch: yes");
        }
        return;
    }
    const Node* node = fields.take("gap");
    stock.gap = larger(usual_rim, least);
    if (node == nullptr) return;
    stock.gap = read_length(*node, "gap", rim, fields.diagnostics()).value_or(stock.gap);
    if (fits(least, stock.gap)) return;
    fields.diagnostics().error(node->spot,
                               "two cards with " + to_string(stock.laminate->film) + " of film round each stand 2 × " +
                                   to_string(stock.laminate->film) + " = " + to_string(least) +
                                   " apart, and the gap is " + to_string(stock.gap),
                               "write gap: " + to_string(least) + ", or less film");
}

void read_card(Fields& fields, std::optional<Size> paper, Stock& stock) {
    static const std::vector<std::pair<std::string, Cut>> cuts = {
        {"corner marks", Cut::corner_marks}, {"full lines", Cut::full_lines}, {"single cuts", Cut::single_cuts}};
    if (const Node* cut = fields.take("cut"))
        stock.cut = read_choice(*cut, "cut", cuts, fields.diagnostics()).value_or(Cut::corner_marks);
    if (const Node* laminate = fields.take("laminate"))
        stock.laminate = read_laminate(*laminate, paper, fields.diagnostics());
    read_gap(fields, stock);
    stock.may_turn = take_yes_no(fields, "turn", true);
}

void read_sheet(Fields& fields, Stock& stock) {
    const auto paper = take_paper(fields);
    stock.paper = paper.value_or(Size{});
    stock.margin = take_length(fields, "margin", rim, usual_rim);
    const Node* cells = fields.take("cells");
    if (cells == nullptr) return read_card(fields, paper, stock);
    for (const std::string_view key : {"gap", "turn", "cut", "laminate"})
        refuse(fields, key, "the cells are where they are");
    if (paper) stock.cells = read_cells(*cells, *paper, fields.diagnostics());
}

// Whether a length is written so; names and remarks may end like one.
bool speaks_inches(const Node& node) {
    return is_imperial(node) || std::ranges::any_of(node.entries(), [](const Entry& entry) {
               return entry.key != "stock" && entry.key != "about" && speaks_inches(entry.value);
           });
}

} // namespace

std::optional<Stock> read_stock(const Node& node, Diagnostics& diagnostics) {
    const int errors_before = diagnostics.errors();
    Fields fields{node, "stock", diagnostics};
    Stock stock;
    stock.spot = node.spot;
    stock.in_inches = speaks_inches(node);
    if (const Node* name = fields.need("stock", "stock: my-card"))
        stock.name = read_text(*name, "stock", diagnostics).value_or("");
    if (const Node* about = fields.take("about")) stock.about = read_text(*about, "about", diagnostics).value_or("");
    stock.page_per_label = take_yes_no(fields, "page per label", false);
    const Node* roll = stock.page_per_label ? nullptr : fields.take("roll");
    if (stock.page_per_label) {
        read_page(fields, stock);
    } else if (roll != nullptr) {
        read_roll(*roll, fields, stock);
    } else {
        read_sheet(fields, stock);
    }
    fields.refuse_the_rest();
    return diagnostics.errors() > errors_before ? std::nullopt : std::optional{stock};
}

} // namespace dyeleaf
