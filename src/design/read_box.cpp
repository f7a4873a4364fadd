#include "design/read_box.h"

#include "base/words.h"
#include "design/read_common.h"
#include "design/read_template.h"
#include "pictures/find_picture.h"
#include "source/fields.h"
#include "source/values.h"

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

namespace dyeleaf {

namespace {

constexpr LengthRange any_length{mm(0), metres(2)};

constexpr std::array kinds = {"column", "row",     "grid", "layers", "repeat",  "table", "text",  "swatch",
                              "symbol", "picture", "code", "rule",   "caution", "hole",  "blank", "speckles"};

std::string known_kinds() {
    return joined({kinds.begin(), kinds.end()}, ", ");
}

std::vector<Box> read_holds(const Node* node, const BoxContext& context) {
    std::vector<Box> boxes;
    if (node == nullptr) return boxes;
    if (node->kind != Node::Kind::list) {
        context.styles.diagnostics.error(node->spot, "what a box holds is a list of boxes",
                                         "write each box on a line of its own that starts with a dash");
        return boxes;
    }
    for (const Node& one : node->items())
        boxes.push_back(read_box(one, context));
    return boxes;
}

BoxContext inside_list(const FactRow* list, const BoxContext& context) {
    BoxContext inside = context;
    if (list != nullptr && list->items != nullptr) inside.facts.insert(inside.facts.begin(), list->items);
    return inside;
}

const FactRow* read_list_name(const Node& node, std::string& name, const BoxContext& context) {
    const auto text = read_text(node, "list", context.styles.diagnostics);
    if (!text) return nullptr;
    name = *text;
    return find_fact(name, node.spot, {FactKind::list}, context);
}

TableColumn read_table_column(const Node& node, const BoxContext& outside, const BoxContext& inside) {
    Fields fields{node, "table column", outside.styles.diagnostics};
    TableColumn column;
    if (const Node* width = fields.take("width")) {
        column.width = read_extent(*width, "width", outside.styles.diagnostics);
    }
    if (const Node* head = fields.take("head")) column.head.push_back(read_box(*head, outside));
    if (const Node* cell = fields.need("cell", R"(cell: {text: "{part.name}"})")) {
        column.cell.push_back(read_box(*cell, inside));
    }
    fields.refuse_the_rest();
    return column;
}

Table read_table(const Node& node, Fields& fields, const BoxContext& context) {
    Diagnostics& diagnostics = context.styles.diagnostics;
    Table table;
    const BoxContext inside = inside_list(read_list_name(node, table.over, context), context);
    if (const Node* columns = fields.need("columns", R"(columns: [{cell: {text: "{part.name}"}}])")) {
        for (const Node& column : columns->items())
            table.columns.push_back(read_table_column(column, context, inside));
        if (columns->items().empty()) diagnostics.error(columns->spot, "a table needs at least one column", "");
    }
    if (const Node* gap = fields.take("row gap")) {
        table.row_gap = read_length(*gap, "row gap", any_length, diagnostics).value_or(Length{});
    }
    if (const Node* rule = fields.take("row rule")) {
        table.rule = read_length(*rule, "row rule", {pt(0.25), mm(5)}, diagnostics).value_or(Length{});
    }
    return table;
}

TextStyle read_letters(Fields& fields, const BoxContext& context) {
    TextStyle style;
    if (const Node* node = fields.take("style")) {
        style = read_style(*node, context.styles);
    } else if (const auto body = context.styles.known.find("body"); body != context.styles.known.end()) {
        style = body->second;
    }
    if (style.font.family.empty() && !context.styles.families.empty())
        style.font.family = context.styles.families.front();
    return style;
}

TextStyle read_text_style(Fields& fields, const BoxContext& context) {
    TextStyle style = read_letters(fields, context);
    if (const Node* align = fields.take("align")) {
        style.align =
            read_choice<TextAlign>(
                *align, "align", {{"start", TextAlign::start}, {"centre", TextAlign::centre}, {"end", TextAlign::end}},
                context.styles.diagnostics)
                .value_or(style.align);
    }
    return style;
}

std::optional<Around> read_around(Fields& fields, const BoxContext& context) {
    const Node* node = fields.take("around");
    if (node == nullptr) return std::nullopt;
    return read_choice<Around>(*node, "around", {{"top", Around::top}, {"bottom", Around::bottom}},
                               context.styles.diagnostics);
}

Text read_text_box(const Node& node, Fields& fields, const BoxContext& context) {
    Text text;
    text.content = read_template(node, context);
    if (const Node* otherwise = fields.take("else")) text.otherwise = read_template(*otherwise, context);
    text.around = read_around(fields, context);
    text.style = read_text_style(fields, context);
    return text;
}

CodeBox read_code(const Node& node, Fields& fields, const BoxContext& context) {
    Diagnostics& diagnostics = context.styles.diagnostics;
    CodeBox code;
    code.content = read_template(node, context);
    if (const Node* otherwise = fields.take("else")) code.otherwise = read_template(*otherwise, context);
    if (const Node* as = fields.need("as", "as: qr")) {
        code.as = read_choice<CodeKind>(*as, "as",
                                        {{"qr", CodeKind::qr},
                                         {"ean-13", CodeKind::ean_13},
                                         {"upc-a", CodeKind::upc_a},
                                         {"code-128", CodeKind::code_128}},
                                        diagnostics)
                      .value_or(code.as);
    }
    if (const Node* module = fields.take("module")) {
        const CodeRules rules = code_rules(code.as);
        code.least_module =
            read_length(*module, "module", {rules.least_module, rules.most_module}, diagnostics).value_or(Length{});
    }
    code.style = read_text_style(fields, context);
    return code;
}

Caution read_caution(const Node& node, Fields& fields, const BoxContext& context) {
    Caution caution;
    if (context.items != ItemKind::jars && context.items != ItemKind::lots) {
        context.styles.diagnostics.error(node.spot, "only layouts for jars and lots have cautions to print",
                                         "take this box out, or change what stands after “for”");
    }
    Diagnostics& diagnostics = context.styles.diagnostics;
    caution.kind = read_choice<CautionKind>(node, "caution",
                                            {{"not-food", CautionKind::not_food},
                                             {"dust", CautionKind::dust},
                                             {"airtight", CautionKind::airtight},
                                             {"hazards", CautionKind::hazards},
                                             {"signal", CautionKind::signal},
                                             {"statements", CautionKind::statements}},
                                            diagnostics)
                       .value_or(CautionKind::not_food);
    caution.around = read_around(fields, context);
    if (const Node* brief = fields.take("brief")) {
        caution.brief = read_yes_no(*brief, "brief", diagnostics).value_or(false);
    }
    caution.style = read_text_style(fields, context);
    caution.style.colour = Rgb{};
    return caution;
}

SwatchBox read_swatch(const Node& node, Fields& fields, const BoxContext& context) {
    SwatchBox swatch;
    if (const auto name = read_text(node, "swatch", context.styles.diagnostics)) {
        swatch.patch = *name;
        find_fact(*name, node.spot, {FactKind::patch}, context);
    }
    swatch.holds = read_holds(fields.take("holds"), context);
    swatch.style = read_letters(fields, context);
    return swatch;
}

SymbolBox read_symbol(const Node& node, const BoxContext& context) {
    SymbolBox box;
    if (const auto name = read_text(node, "symbol", context.styles.diagnostics)) {
        box.symbol = *name;
        find_fact(*name, node.spot, {FactKind::symbol}, context);
    }
    return box;
}

SpecklesBox read_speckles(const Node& node, const BoxContext& context) {
    SpecklesBox box;
    if (const auto name = read_text(node, "speckles", context.styles.diagnostics)) {
        box.speckled = *name;
        find_fact(*name, node.spot, {FactKind::speckles}, context);
    }
    return box;
}

Rule read_rule(const Node& node, Fields& fields, Diagnostics& diagnostics) {
    Rule rule;
    rule.thickness = read_length(node, "rule", {pt(0.25), mm(20)}, diagnostics).value_or(rule.thickness);
    if (const Node* dashed = fields.take("dashed")) {
        rule.dashed = read_yes_no(*dashed, "dashed", diagnostics).value_or(false);
    }
    if (const Node* colour = fields.take("colour")) rule.colour = read_ink(*colour, diagnostics).value_or(rule.colour);
    return rule;
}

Grid read_grid(Fields& fields, const BoxContext& context) {
    Grid grid;
    Diagnostics& diagnostics = context.styles.diagnostics;
    if (const Node* columns = fields.need("columns", "columns: 2")) {
        grid.columns = read_whole(*columns, "columns", {1, 50}, diagnostics).value_or(1);
    }
    if (const Node* rows = fields.take("rows"))
        grid.rows = read_whole(*rows, "rows", {1, 100}, diagnostics).value_or(0);
    grid.holds = read_holds(fields.need("holds", "holds: [...]"), context);
    return grid;
}

// A file beside the layout, or a fact of the record.
Picture read_picture(const Node& node, Fields& fields, const BoxContext& context) {
    Picture picture;
    Diagnostics& diagnostics = context.styles.diagnostics;
    if (const Node* alt = fields.take("alt")) picture.alt = read_template(*alt, context);
    const auto name = read_text(node, "picture", diagnostics);
    if (!name) return picture;
    if (!names_a_picture(*name)) {
        picture.picture = *name;
        find_fact(*name, node.spot, {FactKind::picture}, context);
    } else if (auto file = find_picture(*name, context.folder, node.spot, diagnostics)) {
        picture.picture = std::move(*file);
    }
    return picture;
}

BoxKind read_kind(std::string_view kind, const Node& value, Fields& fields, const BoxContext& context) {
    Diagnostics& diagnostics = context.styles.diagnostics;
    if (kind == "text") return read_text_box(value, fields, context);
    if (kind == "code") return read_code(value, fields, context);
    if (kind == "swatch") return read_swatch(value, fields, context);
    if (kind == "symbol") return read_symbol(value, context);
    if (kind == "speckles") return read_speckles(value, context);
    if (kind == "caution") return read_caution(value, fields, context);
    if (kind == "table") return read_table(value, fields, context);
    if (kind == "picture") return read_picture(value, fields, context);
    if (kind == "rule") return read_rule(value, fields, diagnostics);
    if (kind == "hole") return HoleMark{read_length(value, "hole", {mm(1), mm(60)}, diagnostics).value_or(mm(4))};
    if (kind == "blank") return Blank{read_extent(value, "blank", diagnostics)};
    Repeat repeat;
    const BoxContext inside = inside_list(read_list_name(value, repeat.over, context), context);
    if (const Node* most = fields.take("most"))
        repeat.most = read_whole(*most, "most", {1, 10000}, diagnostics).value_or(0);
    repeat.holds = read_holds(fields.need("holds", "holds: [...]"), inside);
    return repeat;
}

BoxKind read_container(std::string_view kind, Fields& fields, const BoxContext& context) {
    if (kind == "grid") return read_grid(fields, context);
    std::vector<Box> holds = read_holds(fields.need("holds", "holds: [...]"), context);
    if (kind == "column") return Column{std::move(holds)};
    if (kind == "row") return Row{std::move(holds)};
    return Layers{std::move(holds)};
}

bool is_container(std::string_view kind) {
    return kind == "column" || kind == "row" || kind == "grid" || kind == "layers";
}

// `{row: [a, b], gap: 2 mm}` says the same as `{row: {gap: 2 mm, holds: [a, b]}}`.
Node with_list_as_holds(const Node& node, std::string_view kind) {
    Node map = node;
    for (Entry& entry : map.insides().entries) {
        if (entry.key == kind) entry.key = "holds";
    }
    return map;
}

} // namespace

Box read_box(const Node& node, const BoxContext& context) {
    Diagnostics& diagnostics = context.styles.diagnostics;
    Box box;
    box.spot = node.spot;
    if (node.kind != Node::Kind::map) {
        diagnostics.error(node.spot, "a box starts with its kind", "the kinds are: " + known_kinds());
        return box;
    }
    std::vector<std::string> found;
    for (const Entry& entry : node.entries()) {
        if (std::ranges::find(kinds, entry.key) != kinds.end()) found.push_back(entry.key);
    }
    if (found.size() != 1) {
        diagnostics.error(node.spot,
                          found.empty() ? "this box does not say its kind"
                                        : "a box has one kind, this one has " + joined(found, " and "),
                          "the kinds are: " + known_kinds());
        return box;
    }
    const std::string& kind = found.front();
    const auto entry = std::ranges::find(node.entries(), kind, &Entry::key);
    const Node& value = entry->value;
    box.spot = entry->key_spot;
    if (is_container(kind)) {
        if (value.kind == Node::Kind::map && node.entries().size() > 1) {
            const auto stray = std::ranges::find_if(node.entries(), [&](const Entry& one) { return one.key != kind; });
            diagnostics.error(stray->key_spot, in_quotes(stray->key) + " stands beside " + in_quotes(kind),
                              "move it in, under " + in_quotes(kind));
        }
        const Node map = value.kind == Node::Kind::map ? value : with_list_as_holds(node, kind);
        Fields fields{map, kind, diagnostics};
        read_common(fields, box, context);
        read_align(fields, box, diagnostics);
        box.kind = read_container(kind, fields, context);
        fields.refuse_the_rest();
        return box;
    }
    Fields fields{node, kind, diagnostics};
    fields.take(kind);
    read_common(fields, box, context);
    box.kind = read_kind(kind, value, fields, context);
    if (kind != "text" && kind != "caution" && kind != "code") read_align(fields, box, diagnostics);
    fields.refuse_the_rest();
    return box;
}

} // namespace dyeleaf
