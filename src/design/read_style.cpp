#include "design/read_style.h"

#include "base/nearest.h"
#include "base/words.h"
#include "source/fields.h"
#include "source/values.h"

#include <algorithm>

namespace dyeleaf {

namespace {

std::vector<std::string> names_of(const Styles& styles) {
    std::vector<std::string> names;
    for (const auto& [name, style] : styles)
        names.push_back(name);
    return names;
}

TextStyle named_style(const Node& node, const StyleContext& context) {
    const auto name = read_text(node, "style", context.diagnostics);
    if (!name) return {};
    const auto found = context.known.find(*name);
    if (found != context.known.end()) return found->second;
    context.diagnostics.error(node.spot, "there is no style called " + in_quotes(*name),
                              suggest(*name, names_of(context.known)));
    return {};
}

void read_font(Fields& fields, Font& font, const StyleContext& context) {
    Diagnostics& diagnostics = context.diagnostics;
    if (const Node* node = fields.take("font")) {
        if (const auto family = read_text(*node, "font", diagnostics)) {
            if (std::ranges::find(context.families, *family) == context.families.end()) {
                diagnostics.error(node->spot, "there is no font called " + in_quotes(*family),
                                  suggest(*family, context.families));
            }
            font.family = *family;
        }
    }
    if (const Node* node = fields.take("weight")) {
        const auto weight = read_choice<int>(
            *node, "weight", {{"regular", 400}, {"medium", 500}, {"semibold", 600}, {"bold", 700}}, diagnostics);
        font.weight = weight.value_or(font.weight);
    }
    if (const Node* node = fields.take("italic")) {
        font.italic = read_yes_no(*node, "italic", diagnostics).value_or(font.italic);
    }
    if (const Node* node = fields.take("tracking")) { // in hundredths of an em, as typographers count
        const auto tracking = read_decimal(*node, "tracking", {-20, 60}, diagnostics);
        if (tracking) font.tracking = *tracking / 100.0;
    }
    if (const Node* node = fields.take("figures")) {
        const auto tabular =
            read_choice<bool>(*node, "figures", {{"tabular", true}, {"proportional", false}}, diagnostics);
        font.tabular_figures = tabular.value_or(font.tabular_figures);
    }
}

} // namespace

TextStyle read_style(const Node& node, const StyleContext& context) {
    if (node.kind != Node::Kind::map) return named_style(node, context);
    Diagnostics& diagnostics = context.diagnostics;
    Fields fields{node, "style", diagnostics};
    TextStyle style;
    if (const Node* like = fields.take("like")) style = named_style(*like, context);
    read_font(fields, style.font, context);
    const bool sized = fields.has("size");
    if (const Node* size = fields.take("size")) {
        style.size = read_type_size(*size, "size", {pt(2), pt(400)}, diagnostics).value_or(style.size);
    }
    if (const Node* smallest = fields.take("smallest")) {
        style.smallest = read_type_size(*smallest, "smallest", {pt(2), pt(400)}, diagnostics).value_or(style.smallest);
    } else if (sized) {
        style.smallest = smaller(style.smallest, style.size);
    }
    if (const Node* leading = fields.take("leading")) {
        style.leading = read_decimal(*leading, "leading", {0.7, 3}, diagnostics).value_or(style.leading);
    }
    if (const Node* lines = fields.take("lines")) {
        style.lines = read_whole(*lines, "lines", {1, 100}, diagnostics).value_or(style.lines);
    }
    if (const Node* balanced = fields.take("balanced")) {
        style.balanced = read_yes_no(*balanced, "balanced", diagnostics).value_or(style.balanced);
    }
    if (const Node* align = fields.take("align")) {
        style.align =
            read_choice<TextAlign>(
                *align, "align", {{"start", TextAlign::start}, {"centre", TextAlign::centre}, {"end", TextAlign::end}},
                diagnostics)
                .value_or(style.align);
    }
    if (const Node* colour = fields.take("colour"))
        style.colour = read_ink(*colour, diagnostics).value_or(style.colour);
    fields.refuse_the_rest();
    if (style.smallest > style.size) {
        diagnostics.error(node.spot, "the smallest size is larger than the size itself",
                          "write a smaller smallest, or a larger size");
    }
    return style;
}

Styles read_styles(const Node& node, const Styles& shared, const std::vector<std::string>& families,
                   Diagnostics& diagnostics) {
    Styles styles = shared;
    if (node.kind != Node::Kind::map) {
        diagnostics.error(node.spot, "styles are written as names, each with what it sets",
                          "for example: name: {font: Inter, size: 12 pt}");
        return styles;
    }
    for (const Entry& entry : node.entries()) {
        styles[entry.key] = read_style(entry.value, {styles, families, diagnostics});
    }
    return styles;
}

} // namespace dyeleaf
