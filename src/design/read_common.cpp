#include "design/read_common.h"

#include "base/nearest.h"
#include "base/words.h"
#include "source/values.h"

#include <array>
#include <optional>
#include <string_view>
#include <vector>

namespace dyeleaf {

namespace {

constexpr LengthRange any_extent{mm(0), metres(2)};

// One length for all sides, or four in the order of CSS: top, right, bottom, left.
Insets read_insets(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    if (node.kind != Node::Kind::list) {
        return Insets::all(read_length(node, what, any_extent, diagnostics).value_or(Length{}));
    }
    if (node.items().size() != 4) {
        diagnostics.error(node.spot, what + " takes one length or four", "write [top, right, bottom, left]");
        return {};
    }
    std::array<Length, 4> sides;
    for (std::size_t i = 0; i < sides.size(); ++i) {
        sides.at(i) = read_length(node.items()[i], what, any_extent, diagnostics).value_or(Length{});
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
        for (const Node& one : node.items())
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

} // namespace

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
    return Extent::fixed(read_length(node, what, any_extent, diagnostics).value_or(Length{}));
}

void read_common(Fields& fields, Box& box, const BoxContext& context) {
    Diagnostics& diagnostics = context.styles.diagnostics;
    if (const Node* node = fields.take("width")) box.width = read_extent(*node, "width", diagnostics);
    if (const Node* node = fields.take("height")) box.height = read_extent(*node, "height", diagnostics);
    const auto length = [&](std::string_view key) -> std::optional<Length> {
        const Node* node = fields.take(key);
        return node == nullptr ? std::nullopt : read_length(*node, std::string{key}, any_extent, diagnostics);
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

} // namespace dyeleaf
