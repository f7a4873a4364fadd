#include "design/read_design.h"

#include "base/words.h"
#include "design/check_cautions.h"
#include "design/read_box.h"
#include "source/fields.h"
#include "source/values.h"

#include <filesystem>
#include <string>
#include <utility>
#include <vector>

namespace dyeleaf {

namespace {

// Of the outlines that a label may have, only an arc and rounded corners go together.
void check_outline(const Node& node, const Shape& shape, Diagnostics& diagnostics) {
    std::vector<std::string> kinds;
    if (shape.round) kinds.push_back(in_quotes("round"));
    if (shape.clipped > Length{}) kinds.push_back(in_quotes("clipped"));
    if (shape.arc || shape.corner > Length{}) kinds.push_back(in_quotes(shape.arc ? "arc" : "corner"));
    if (kinds.size() < 2) return;
    diagnostics.error(node.spot, joined(kinds, " and ") + " do not go together in one shape", "keep one of them");
}

Shape read_shape(const Node& node, const BoxContext& context) {
    Diagnostics& diagnostics = context.styles.diagnostics;
    Fields fields{node, "shape", diagnostics};
    Shape shape;
    shape.width.value = mm(50);
    shape.height.value = mm(50);
    const Node* round = fields.take("round");
    const bool is_oval = round != nullptr && fields.has("width");
    if (is_oval) shape.round = read_yes_no(*round, "round", diagnostics).value_or(false);
    if (round != nullptr && !is_oval) {
        shape.round = true;
        if (const auto diameter = read_length_or_fact(*round, "round", context)) {
            shape.width = *diameter;
            shape.height = *diameter;
        }
    } else {
        if (const Node* width = fields.need("width", "width: 55 mm")) {
            shape.width = read_length_or_fact(*width, "width", context).value_or(shape.width);
        }
        if (const Node* height = fields.need("height", "height: 85 mm")) {
            shape.height = read_length_or_fact(*height, "height", context).value_or(shape.height);
        }
    }
    if (const Node* arc = fields.take("arc")) shape.arc = read_length_or_fact(*arc, "arc", context);
    const auto length = [&](std::string_view key, Length most = mm(50), Length otherwise = {}) {
        const Node* one = fields.take(key);
        return one == nullptr ? otherwise
                              : read_length(*one, std::string{key}, {mm(0), most}, diagnostics).value_or(Length{});
    };
    shape.corner = length("corner");
    shape.clipped = length("clipped");
    shape.bleed = length("bleed");
    // What bleeds is cut in piles, whose edges wander: print shops ask for 3 mm (common practice).
    shape.safe = length("safe", mm(50), shape.bleed > Length{} ? mm(3) : Length{});
    shape.least_width = length("least width", metres(2));
    shape.least_height = length("least height", metres(2));
    fields.refuse_the_rest();
    check_outline(node, shape, diagnostics);
    return shape;
}

std::optional<Grouping> read_grouping(const Node& node, Diagnostics& diagnostics) {
    Fields fields{node, "together", diagnostics};
    Grouping grouping;
    if (const Node* most = fields.need("most", "most: 6")) {
        grouping.most = read_whole(*most, "most", {1, 500}, diagnostics).value_or(1);
    }
    if (const Node* by = fields.take("by")) {
        grouping.together =
            read_choice<Together>(*by, "by", {{"line", Together::by_line}, {"hue", Together::by_hue}}, diagnostics)
                .value_or(grouping.together);
    }
    fields.refuse_the_rest();
    return grouping;
}

std::optional<Length> read_position(const Node* node, const std::string& what, Diagnostics& diagnostics) {
    if (node == nullptr || (node->kind == Node::Kind::scalar && node->text == "centre")) return std::nullopt;
    return read_length(*node, what, {mm(0), mm(1200)}, diagnostics);
}

Hole read_hole(const Node& node, Diagnostics& diagnostics) {
    Fields fields{node, "hole", diagnostics};
    Hole hole;
    hole.x = read_position(fields.need("x", "x: centre"), "x", diagnostics);
    hole.y = read_position(fields.need("y", "y: 7 mm"), "y", diagnostics);
    hole.diameter = mm(5);
    if (const Node* diameter = fields.take("diameter")) {
        hole.diameter = read_length(*diameter, "diameter", {mm(1), mm(60)}, diagnostics).value_or(hole.diameter);
    }
    if (const Node* clear = fields.take("clear")) {
        hole.clear = read_length(*clear, "clear", {mm(0), mm(30)}, diagnostics).value_or(Length{});
    }
    fields.refuse_the_rest();
    return hole;
}

Edge read_edge(const Node* node, Diagnostics& diagnostics) {
    if (node == nullptr) return Edge::top;
    return read_choice<Edge>(
               *node, "edge",
               {{"left", Edge::left}, {"right", Edge::right}, {"top", Edge::top}, {"bottom", Edge::bottom}},
               diagnostics)
        .value_or(Edge::top);
}

Fold read_fold(const Node& node, const BoxContext& context) {
    Fields fields{node, "fold", context.styles.diagnostics};
    Fold fold;
    fold.from = read_edge(fields.need("from", "from: top"), context.styles.diagnostics);
    fold.at.value = mm(10);
    if (const Node* at = fields.need("at", "at: 60 mm")) {
        fold.at = read_length_or_fact(*at, "at", context).value_or(fold.at);
    }
    fields.refuse_the_rest();
    return fold;
}

OverlapStrip read_overlap(const Node& node, const BoxContext& context) {
    Fields fields{node, "overlap", context.styles.diagnostics};
    OverlapStrip strip;
    strip.edge = read_edge(fields.need("edge", "edge: right"), context.styles.diagnostics);
    strip.depth.value = mm(5);
    if (const Node* depth = fields.need("depth", "depth: 5 mm")) {
        strip.depth = read_length_or_fact(*depth, "depth", context).value_or(strip.depth);
    }
    fields.refuse_the_rest();
    return strip;
}

template <class One, class Read>
std::vector<One> read_several(const Node* node, const std::string& what, Read read, Diagnostics& diagnostics) {
    std::vector<One> all;
    if (node == nullptr) return all;
    if (node->kind != Node::Kind::list) {
        diagnostics.error(node->spot, what + " is a list", "start its line with a dash");
        return all;
    }
    for (const Node& one : node->items())
        all.push_back(read(one));
    return all;
}

std::optional<ItemKind> read_item_kind(const Node& node, Diagnostics& diagnostics) {
    return read_choice<ItemKind>(node, "for",
                                 {{"dyes", ItemKind::dyes},
                                  {"jars", ItemKind::jars},
                                  {"skeins", ItemKind::skeins},
                                  {"lots", ItemKind::lots},
                                  {"bases", ItemKind::bases}},
                                 diagnostics);
}

// A string tears out of a hole whose centre lies nearer to an edge (common practice).
constexpr Length least_hold = mm(6);

// A hole is of use only where the label has paper all round it. Sizes that come from facts are checked when placed.
void check_holes(const Design& design, Diagnostics& diagnostics) {
    const auto* width = std::get_if<Length>(&design.shape.width.value);
    const auto* height = std::get_if<Length>(&design.shape.height.value);
    const auto inside = [](const std::optional<Length>& at, const Length* size, Length diameter) {
        return !at || size == nullptr || (fits(diameter / 2, *at) && fits(*at + diameter / 2, *size));
    };
    const auto too_near = [](const std::optional<Length>& at, const Length* size) {
        return at && size != nullptr && !(fits(least_hold, *at) && fits(*at + least_hold, *size));
    };
    for (const Hole& hole : design.holes) {
        const bool is_inside = inside(hole.x, width, hole.diameter) && inside(hole.y, height, hole.diameter);
        if (is_inside && (too_near(hole.x, width) || too_near(hole.y, height))) {
            diagnostics.warning(design.spot,
                                "a hole of " + to_string(hole.diameter) + " lies less than " + to_string(least_hold) +
                                    " from the edge, and may tear out",
                                "give its centre 6 mm or more on every side");
        }
        if (is_inside) continue;
        diagnostics.error(design.spot, "a hole of " + to_string(hole.diameter) + " does not lie on the label",
                          "x and y are its centre, measured from the label's top left corner");
    }
}

} // namespace

Styles read_style_file(const Node& node, const std::vector<std::string>& families, Diagnostics& diagnostics) {
    Fields fields{node, "style file", diagnostics};
    Styles styles;
    if (const Node* under = fields.need("styles", "styles:")) styles = read_styles(*under, {}, families, diagnostics);
    fields.refuse_the_rest();
    return styles;
}

std::optional<Sourced<std::string>> shared_styles_name(const Node& node) {
    for (const Entry& entry : node.entries()) {
        if (entry.key == "styles from") return Sourced<std::string>{entry.value.text, entry.value.spot};
    }
    return std::nullopt;
}

std::optional<Design> read_design(const Node& node, const Styles& shared, const std::vector<std::string>& families,
                                  Diagnostics& diagnostics, const std::vector<std::filesystem::path>& also) {
    const int errors_before = diagnostics.errors();
    Fields fields{node, "layout", diagnostics};
    Design design;
    design.spot = node.spot;
    fields.take("styles from");
    if (const Node* name = fields.need("layout", "layout: my-tag")) {
        design.name = read_text(*name, "layout", diagnostics).value_or("");
        design.spot = name->spot;
    }
    if (const Node* about = fields.take("about")) design.about = read_text(*about, "about", diagnostics).value_or("");
    if (const Node* stock = fields.take("stock")) {
        design.stock = read_text(*stock, "stock", diagnostics).value_or("");
        design.stock_spot = stock->spot;
    }
    if (const Node* items = fields.need("for", "for: dyes")) {
        design.items = read_item_kind(*items, diagnostics).value_or(ItemKind::dyes);
    }
    if (const Node* together = fields.take("together")) {
        if (design.items != ItemKind::dyes) {
            diagnostics.error(together->spot, "only dyes can share a label", "take “together” out");
        }
        design.grouping = read_grouping(*together, diagnostics);
    }
    Styles styles = shared;
    if (const Node* own = fields.take("styles")) styles = read_styles(*own, shared, families, diagnostics);
    const std::filesystem::path file = node.spot.file ? node.spot.file->name : std::string{};
    const BoxContext context{{styles, families, diagnostics},
                             design.items,
                             vocabularies(design.items, design.grouping.has_value()),
                             {file.parent_path(), also}};
    if (const Node* shape = fields.need("shape", "shape: {width: 55 mm, height: 85 mm}")) {
        design.shape = read_shape(*shape, context);
    }
    const auto hole = [&](const Node& one) { return read_hole(one, diagnostics); };
    const auto fold = [&](const Node& one) { return read_fold(one, context); };
    design.holes = read_several<Hole>(fields.take("holes"), "holes", hole, diagnostics);
    design.folds = read_several<Fold>(fields.take("folds"), "folds", fold, diagnostics);
    if (const Node* overlap = fields.take("overlap")) design.overlap = read_overlap(*overlap, context);
    if (const Node* front = fields.need("front", "front: {column: [...]}")) design.front = read_box(*front, context);
    if (const Node* back = fields.take("back")) design.back = read_box(*back, context);
    fields.refuse_the_rest();
    check_holes(design, diagnostics);
    check_cautions(design, diagnostics);
    if (diagnostics.errors() > errors_before) return std::nullopt;
    return design;
}

} // namespace dyeleaf
