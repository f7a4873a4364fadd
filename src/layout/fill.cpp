#include "layout/fill.h"

#include "base/overloaded.h"
#include "symbols/symbols.h"

#include <algorithm>
#include <filesystem>
#include <string_view>

namespace dyeleaf {

namespace {

std::optional<std::string> filled(const Template& content, const Facts& facts) {
    std::string text;
    for (const Template::Piece& piece : content.pieces) {
        if (!piece.is_fact) {
            text += piece.text;
            continue;
        }
        const auto value = facts.find(piece.text);
        const auto* words = value ? std::get_if<std::string>(&*value) : nullptr;
        if (words == nullptr) return std::nullopt;
        text += *words;
    }
    return text;
}

std::vector<Facts> items_of(const std::string& list, const Facts& facts) {
    const auto value = facts.find(list);
    const auto* items = value ? std::get_if<std::vector<Facts>>(&*value) : nullptr;
    return items == nullptr ? std::vector<Facts>{} : *items;
}

bool recorded(const std::string& name, const Facts& facts) {
    const auto value = facts.find(name);
    if (!value) return false;
    const auto* items = std::get_if<std::vector<Facts>>(&*value);
    return items == nullptr || !items->empty();
}

std::vector<FilledBox> fill_all(const std::vector<Box>& boxes, const Facts& facts);

void append_repeated(const Repeat& repeat, const Facts& facts, std::vector<FilledBox>& into) {
    std::vector<Facts> items = items_of(repeat.over, facts);
    if (repeat.most > 0 && items.size() > static_cast<std::size_t>(repeat.most)) {
        items.resize(static_cast<std::size_t>(repeat.most));
    }
    for (const Facts& item : items) {
        for (FilledBox& box : fill_all(repeat.holds, item.within(facts)))
            into.push_back(std::move(box));
    }
}

bool is_left_out(const Box& box, const Facts& facts) {
    const auto known = [&](const std::string& name) { return recorded(name, facts); };
    return !std::ranges::all_of(box.with, known) || std::ranges::any_of(box.without, known);
}

std::vector<FilledBox> fill_all(const std::vector<Box>& boxes, const Facts& facts) {
    std::vector<FilledBox> result;
    for (const Box& box : boxes) {
        if (const auto* repeat = std::get_if<Repeat>(&box.kind)) {
            if (!is_left_out(box, facts)) append_repeated(*repeat, facts, result);
        } else if (auto one = fill(box, facts)) {
            result.push_back(std::move(*one));
        }
    }
    return result;
}

std::optional<FilledKind> fill_table(const Table& table, const Facts& facts) {
    const std::vector<Facts> items = items_of(table.over, facts);
    if (items.empty()) return std::nullopt;
    FilledTable result{{}, {}, table.row_gap, table.rule};
    const auto add_row = [&](const Facts& scope, std::vector<Box> TableColumn::*boxes) {
        std::vector<FilledBox> row;
        for (const TableColumn& column : table.columns) {
            const std::vector<FilledBox> cell = fill_all(column.*boxes, scope);
            row.push_back(cell.empty() ? FilledBox{FilledBlank{Extent::fit()}, nullptr} : cell.front());
        }
        result.rows.push_back(std::move(row));
    };
    for (const TableColumn& column : table.columns)
        result.widths.push_back(column.width);
    if (std::ranges::any_of(table.columns, [](const TableColumn& column) { return !column.head.empty(); })) {
        add_row(facts, &TableColumn::head);
    }
    for (const Facts& item : items)
        add_row(item.within(facts), &TableColumn::cell);
    return result;
}

std::optional<FilledKind> fill_text(const Text& text, const Facts& facts) {
    auto words = filled(text.content, facts);
    if (!words && text.otherwise) words = filled(*text.otherwise, facts);
    if (!words || words->empty()) return std::nullopt;
    return Words{std::move(*words), text.style, false, text.around};
}

std::string_view caution_fact(const Caution& caution) {
    switch (caution.kind) {
    case CautionKind::not_food: return "caution.not_food";
    case CautionKind::dust: return caution.brief ? "caution.dust.short" : "caution.dust";
    case CautionKind::airtight: return caution.brief ? "caution.airtight.short" : "caution.airtight";
    case CautionKind::hazards: return caution.brief ? "caution.hazards.short" : "caution.hazards";
    case CautionKind::signal: return "caution.signal";
    case CautionKind::statements: return "caution.statements";
    }
    return {};
}

std::optional<FilledKind> fill_caution(const Caution& caution, const Facts& facts) {
    const auto value = facts.find(caution_fact(caution));
    const auto* words = value ? std::get_if<std::string>(&*value) : nullptr;
    if (words == nullptr) return std::nullopt; // no signal word; the others are always there
    TextStyle style = caution.style;
    style.size = larger(style.size, least_caution_size(caution.kind, caution.brief));
    style.smallest = style.size;
    style.lines = 0;
    return Words{*words, style, true, caution.around};
}

std::optional<FilledKind> fill_patch(const SwatchBox& swatch, const Facts& facts) {
    const auto value = facts.find(swatch.patch);
    const auto* patch = value ? std::get_if<Patch>(&*value) : nullptr;
    if (patch == nullptr) return std::nullopt;
    return PatchBox{*patch, fill_all(swatch.holds, facts), swatch.style};
}

std::optional<FilledKind> fill_symbol(const SymbolBox& box, const Facts& facts) {
    const auto value = facts.find(box.symbol);
    const auto* symbol = value ? std::get_if<Symbol>(&*value) : nullptr;
    if (symbol == nullptr) return std::nullopt;
    auto drawing = symbol_drawing(symbol->key, symbol->mono);
    if (drawing == nullptr) return std::nullopt;
    return SymbolMark{*symbol, std::move(drawing)};
}

std::optional<FilledKind> fill_speckles(const SpecklesBox& box, const Facts& facts) {
    const auto value = facts.find(box.speckled);
    const auto* speckled = value ? std::get_if<Speckled>(&*value) : nullptr;
    if (speckled == nullptr) return std::nullopt;
    return SpeckleMark{*speckled};
}

std::optional<FilledKind> fill_picture(const Picture& picture, const Facts& facts) {
    const auto alt = picture.alt ? filled(*picture.alt, facts) : std::nullopt;
    if (const auto* file = std::get_if<PictureFile>(&picture.picture)) {
        const std::string name = std::filesystem::path{file->file}.stem().string();
        return PictureMark{*file, alt.value_or(name), {}};
    }
    const auto value = facts.find(std::get<std::string>(picture.picture));
    const auto* recorded = value ? std::get_if<Illustration>(&*value) : nullptr;
    if (recorded == nullptr) return std::nullopt;
    return PictureMark{recorded->picture, alt.value_or(recorded->description), recorded->owner};
}

std::optional<FilledKind> fill_code(const CodeBox& box, const Facts& facts) {
    auto text = filled(box.content, facts);
    if (!text && box.otherwise) text = filled(*box.otherwise, facts);
    if (!text || text->empty()) return std::nullopt;
    const auto dot = facts.find("printer.dot");
    return CodeMark{make_code(box.as, *text), facts.say(is_linear(box.as) ? "code.bars" : "code.qr", {{"text", *text}}),
                    box.least_module, std::get<Length>(dot.value()), box.style};
}

// A container whose boxes are all left out goes with them, unless its size or dress is there to be seen.
bool is_empty(const FilledKind& kind) {
    if (const auto* flow = std::get_if<Flow>(&kind)) return flow->children.empty();
    if (const auto* grid = std::get_if<FilledGrid>(&kind)) return grid->children.empty();
    if (const auto* stack = std::get_if<Stack>(&kind)) return stack->children.empty();
    return false;
}

bool is_plain(const Box& box) {
    return !box.width && !box.height && !box.background && box.border == Length{};
}

} // namespace

// Common practice: NOT FOOD from 14 pt, the one-line warning and the signal word from 10 pt, everything else from 7 pt,
// so that a jar in the hand is read through goggles. The long dust sentence is body text; the brief one is the one-line
// warning.
Length least_caution_size(CautionKind kind, bool brief) {
    switch (kind) {
    case CautionKind::not_food: return pt(14);
    case CautionKind::dust: return brief ? pt(10) : pt(7);
    case CautionKind::signal: return pt(10);
    case CautionKind::airtight:
    case CautionKind::hazards:
    case CautionKind::statements: return pt(7);
    }
    return pt(14);
}

std::optional<FilledBox> fill(const Box& box, const Facts& facts) {
    if (is_left_out(box, facts)) return std::nullopt;
    using Result = std::optional<FilledKind>;
    Result kind = std::visit(Overloaded{
                                 [&](const Column& column) -> Result {
                                     return Flow{Direction::down, fill_all(column.holds, facts)};
                                 },
                                 [&](const Row& row) -> Result {
                                     return Flow{Direction::across, fill_all(row.holds, facts)};
                                 },
                                 [&](const Grid& grid) -> Result {
                                     return FilledGrid{grid.columns, grid.rows, fill_all(grid.holds, facts)};
                                 },
                                 [&](const Layers& layers) -> Result { return Stack{fill_all(layers.holds, facts)}; },
                                 [&](const Repeat& repeat) -> Result {
                                     Flow flow;
                                     append_repeated(repeat, facts, flow.children);
                                     return flow;
                                 },
                                 [&](const Table& table) -> Result { return fill_table(table, facts); },
                                 [&](const Text& text) -> Result { return fill_text(text, facts); },
                                 [&](const SwatchBox& swatch) -> Result { return fill_patch(swatch, facts); },
                                 [&](const SymbolBox& symbol) -> Result { return fill_symbol(symbol, facts); },
                                 [&](const SpecklesBox& box) -> Result { return fill_speckles(box, facts); },
                                 [&](const CodeBox& code) -> Result { return fill_code(code, facts); },
                                 [&](const Caution& caution) -> Result { return fill_caution(caution, facts); },
                                 [&](const Picture& picture) -> Result { return fill_picture(picture, facts); },
                                 [](const Rule& rule) -> Result { return rule; },
                                 [](const HoleMark& hole) -> Result { return hole; },
                                 [](const Blank& blank) -> Result { return FilledBlank{blank.extent}; },
                             },
                             box.kind);
    if (!kind || (is_empty(*kind) && is_plain(box))) return std::nullopt;
    return FilledBox{std::move(*kind), &box};
}

} // namespace dyeleaf
