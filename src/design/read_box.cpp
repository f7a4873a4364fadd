#include "design/read_box.h"

#include "base/nearest.h"
#include "base/words.h"
#include "design/read_template.h"
#include "source/fields.h"
#include "source/values.h"

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

namespace dyeleaf {

namespace {

constexpr LengthRange any_length{mm(0), metres(2)};

constexpr std::array kinds = {"column", "row",     "grid", "layers",  "repeat", "table", "text",
                              "swatch", "picture", "rule", "caution", "hole",   "blank"};

std::string known_kinds() {
    return joined({kinds.begin(), kinds.end()}, ", ");
}

Extent read_extent(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    const std::string_view text = trimmed(node.text);
    if (node.kind == Node::Kind::scalar) {
        if (text == "fit") return Extent::fit();
        if (text == "fill") return Extent::share(1);
        if (text.starts_with("fill ")) {
            Node parts = node;
            parts.text = std::string{trimmed(text.substr(5))};
            return Extent::share(read_decimal(parts, what, {0.01, 1000}, diagnostics).value_or(1));
        }
    }
    return Extent::fixed(read_length(node, what, any_length, diagnostics).value_or(Length{}));
}

// One length for all sides, or four in the order of CSS: top, right, bottom, left.
Insets read_insets(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    if (node.kind != Node::Kind::list) {
        return Insets::all(read_length(node, what, any_length, diagnostics).value_or(Length{}));
    }
    if (node.items.size() != 4) {
        diagnostics.error(node.spot, what + " takes one length or four", "write [top, right, bottom, left]");
        return {};
    }
    std::array<Length, 4> sides;
    for (std::size_t i = 0; i < sides.size(); ++i) {
        sides.at(i) = read_length(node.items[i], what, any_length, diagnostics).value_or(Length{});
    }
    return {sides[0], sides[1], sides[2], sides[3]};
}

std::vector<std::string> read_conditions(const Node& node, const BoxContext& context) {
    std::vector<std::string> names;
    const auto add = [&](const Node& one) {
        const auto name = read_text(one, "fact", context.styles.diagnostics);
        if (name && find_fact(*name, one.spot, {}, context) != nullptr) names.push_back(*name);
    };
    if (node.kind == Node::Kind::list) {
        for (const Node& one : node.items)
            add(one);
    } else {
        add(node);
    }
    return names;
}

void read_border(const Node& node, Box& box, Diagnostics& diagnostics) {
    const LengthRange thickness{pt(0.25), mm(20)};
    if (node.kind != Node::Kind::map) {
        box.border = read_length(node, "border", thickness, diagnostics).value_or(Length{});
        return;
    }
    Fields fields{node, "border", diagnostics};
    if (const Node* width = fields.need("width", "width: 0.5 pt")) {
        box.border = read_length(*width, "border", thickness, diagnostics).value_or(Length{});
    }
    if (const Node* colour = fields.take("colour")) box.border_colour = read_ink(*colour, diagnostics);
    fields.refuse_the_rest();
}

// What every kind of box can have.
void read_common(Fields& fields, Box& box, const BoxContext& context) {
    Diagnostics& diagnostics = context.styles.diagnostics;
    if (const Node* node = fields.take("width")) box.width = read_extent(*node, "width", diagnostics);
    if (const Node* node = fields.take("height")) box.height = read_extent(*node, "height", diagnostics);
    const auto length = [&](std::string_view key) -> std::optional<Length> {
        const Node* node = fields.take(key);
        return node == nullptr ? std::nullopt : read_length(*node, std::string{key}, any_length, diagnostics);
    };
    box.min_width = length("min width").value_or(Length{});
    box.min_height = length("min height").value_or(Length{});
    box.max_width = length("max width");
    box.max_height = length("max height");
    box.gap = length("gap").value_or(Length{});
    box.corner = length("corner").value_or(Length{});
    if (const Node* node = fields.take("margin")) box.margin = read_insets(*node, "margin", diagnostics);
    if (const Node* node = fields.take("padding")) box.padding = read_insets(*node, "padding", diagnostics);
    if (const Node* node = fields.take("justify")) {
        box.justify = read_choice<Justify>(*node, "justify",
                                           {{"start", Justify::start},
                                            {"centre", Justify::centre},
                                            {"end", Justify::end},
                                            {"between", Justify::between}},
                                           diagnostics)
                          .value_or(box.justify);
    }
    if (const Node* node = fields.take("background")) box.background = read_ink(*node, diagnostics);
    if (const Node* node = fields.take("border")) read_border(*node, box, diagnostics);
    if (const Node* node = fields.take("turn")) {
        box.turn = read_choice<Turn>(*node, "turn",
                                     {{"right", Turn::right}, {"half", Turn::half}, {"left", Turn::left}}, diagnostics)
                       .value_or(box.turn);
    }
    if (const Node* node = fields.take("with")) box.with = read_conditions(*node, context);
    if (const Node* node = fields.take("without")) box.without = read_conditions(*node, context);
}

// How a container places its boxes across its run. Texts use the same word for their lines.
void read_align(Fields& fields, Box& box, Diagnostics& diagnostics) {
    const Node* node = fields.take("align");
    if (node == nullptr) return;
    box.align = read_choice<Align>(*node, "align",
                                   {{"start", Align::start},
                                    {"centre", Align::centre},
                                    {"end", Align::end},
                                    {"stretch", Align::stretch},
                                    {"baseline", Align::baseline}},
                                   diagnostics)
                    .value_or(box.align);
}

std::vector<Box> read_holds(const Node* node, const BoxContext& context) {
    std::vector<Box> boxes;
    if (node == nullptr) return boxes;
    if (node->kind != Node::Kind::list) {
        context.styles.diagnostics.error(node->spot, "what a box holds is a list of boxes",
                                         "write each box on a line of its own that starts with a dash");
        return boxes;
    }
    for (const Node& one : node->items)
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
        for (const Node& column : columns->items)
            table.columns.push_back(read_table_column(column, context, inside));
        if (columns->items.empty()) diagnostics.error(columns->spot, "a table needs at least one column", "");
    }
    if (const Node* gap = fields.take("row gap")) {
        table.row_gap = read_length(*gap, "row gap", any_length, diagnostics).value_or(Length{});
    }
    if (const Node* rule = fields.take("row rule")) {
        table.rule = read_length(*rule, "row rule", {pt(0.25), mm(5)}, diagnostics).value_or(Length{});
    }
    return table;
}

TextStyle read_text_style(Fields& fields, const BoxContext& context) {
    TextStyle style;
    if (const Node* node = fields.take("style")) {
        style = read_style(*node, context.styles);
    } else if (const auto body = context.styles.known.find("body"); body != context.styles.known.end()) {
        style = body->second;
    }
    if (style.font.family.empty() && !context.styles.families.empty())
        style.font.family = context.styles.families.front();
    if (const Node* align = fields.take("align")) {
        style.align =
            read_choice<TextAlign>(
                *align, "align", {{"start", TextAlign::start}, {"centre", TextAlign::centre}, {"end", TextAlign::end}},
                context.styles.diagnostics)
                .value_or(style.align);
    }
    return style;
}

Text read_text_box(const Node& node, Fields& fields, const BoxContext& context) {
    Text text;
    text.content = read_template(node, context);
    if (const Node* otherwise = fields.take("else")) text.otherwise = read_template(*otherwise, context);
    text.style = read_text_style(fields, context);
    return text;
}

Caution read_caution(const Node& node, Fields& fields, const BoxContext& context) {
    Caution caution;
    Diagnostics& diagnostics = context.styles.diagnostics;
    caution.kind = read_choice<CautionKind>(node, "caution",
                                            {{"not-food", CautionKind::not_food},
                                             {"dust", CautionKind::dust},
                                             {"airtight", CautionKind::airtight},
                                             {"hazards", CautionKind::hazards}},
                                            diagnostics)
                       .value_or(CautionKind::not_food);
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
    return swatch;
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

// A picture lies beside the layout, never outside its folder.
Picture read_picture(const Node& node, const BoxContext& context) {
    Picture picture;
    const auto name = read_text(node, "picture", context.styles.diagnostics);
    if (!name) return picture;
    if (name->find("..") != std::string::npos || name->starts_with('/')) {
        context.styles.diagnostics.error(node.spot, "the picture must lie in the layout's own folder",
                                         "copy it beside the layout file and write its name alone");
    }
    picture.file = context.folder.empty() ? *name : context.folder + "/" + *name;
    return picture;
}

BoxKind read_kind(std::string_view kind, const Node& value, Fields& fields, const BoxContext& context) {
    Diagnostics& diagnostics = context.styles.diagnostics;
    if (kind == "text") return read_text_box(value, fields, context);
    if (kind == "swatch") return read_swatch(value, fields, context);
    if (kind == "caution") return read_caution(value, fields, context);
    if (kind == "table") return read_table(value, fields, context);
    if (kind == "picture") return read_picture(value, context);
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
    for (Entry& entry : map.entries) {
        if (entry.key == kind) entry.key = "holds";
    }
    return map;
}

struct KindName {
    ItemKind kind;
    const char* name;
};
constexpr std::array item_kinds = {KindName{ItemKind::dyes, "dyes"}, KindName{ItemKind::jars, "jars"},
                                   KindName{ItemKind::skeins, "skeins"}, KindName{ItemKind::lots, "lots"},
                                   KindName{ItemKind::bases, "bases"}};

// Says so when the fact is one that layouts for something else can place.
bool belongs_elsewhere(const std::string& name, const Spot& spot, const BoxContext& context) {
    const std::string own = std::ranges::find(item_kinds, context.items, &KindName::kind)->name;
    for (const KindName& other : item_kinds) {
        const auto known = vocabularies(other.kind, false);
        if (std::ranges::none_of(known, [&](const Vocabulary* one) { return one->find(name) != nullptr; })) continue;
        context.styles.diagnostics.error(
            spot, in_quotes(name) + " is a fact of " + other.name + ", and this layout is for " + own,
            "place a fact of " + own + ", or change what stands after “for”");
        return true;
    }
    return false;
}

} // namespace

const FactRow* find_fact(const std::string& name, const Spot& spot, const std::vector<FactKind>& wanted,
                         const BoxContext& context) {
    std::vector<std::string> names;
    const auto suits = [&](const FactRow& row) {
        return wanted.empty() || std::ranges::find(wanted, row.kind) != wanted.end();
    };
    for (const Vocabulary* vocabulary : context.facts) {
        if (const FactRow* row = vocabulary->find(name)) {
            if (suits(*row)) return row;
            constexpr std::array what = {"a text", "a colour", "a length", "a list"};
            context.styles.diagnostics.error(
                spot,
                in_quotes(name) + " is " + what.at(static_cast<std::size_t>(row->kind)) +
                    ", which cannot be placed here",
                "a text goes into text, a colour into swatch, a list into repeat or table");
            return nullptr;
        }
        for (const FactRow& row : vocabulary->rows) {
            if (suits(row)) names.push_back(row.name);
        }
    }
    if (!nearest(name, names) && belongs_elsewhere(name, spot, context)) return nullptr;
    context.styles.diagnostics.error(spot, "there is no fact called " + in_quotes(name) + " here",
                                     suggest(name, names));
    return nullptr;
}

std::optional<LengthOrFact> read_length_or_fact(const Node& node, const std::string& what, const BoxContext& context) {
    const std::string_view text = trimmed(node.text);
    const bool is_name = node.kind == Node::Kind::scalar && !text.empty() && text.front() >= 'a' && text.front() <= 'z';
    if (is_name) {
        if (find_fact(std::string{text}, node.spot, {FactKind::length}, context) == nullptr) return std::nullopt;
        return LengthOrFact{std::string{text}, node.spot};
    }
    const auto length = read_length(node, what, {mm(1), metres(2)}, context.styles.diagnostics);
    if (!length) return std::nullopt;
    return LengthOrFact{*length, node.spot};
}

Box read_box(const Node& node, const BoxContext& context) {
    Diagnostics& diagnostics = context.styles.diagnostics;
    Box box;
    box.spot = node.spot;
    if (node.kind != Node::Kind::map) {
        diagnostics.error(node.spot, "a box starts with its kind", "the kinds are: " + known_kinds());
        return box;
    }
    std::vector<std::string> found;
    for (const Entry& entry : node.entries) {
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
    const auto entry = std::ranges::find(node.entries, kind, &Entry::key);
    const Node& value = entry->node();
    box.spot = entry->key_spot;
    if (is_container(kind)) {
        if (value.kind == Node::Kind::map && node.entries.size() > 1) {
            const auto stray = std::ranges::find_if(node.entries, [&](const Entry& one) { return one.key != kind; });
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
    if (kind != "text" && kind != "caution") read_align(fields, box, diagnostics);
    fields.refuse_the_rest();
    return box;
}

} // namespace dyeleaf
