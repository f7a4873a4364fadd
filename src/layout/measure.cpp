#include "layout/measure.h"

#include "layout/code_mark.h"
#include "symbols/symbols.h"

#include <numeric>
#include <utility>

namespace dyeleaf {

namespace {

// Wide enough for any label; a box turned on its side is measured in it.
constexpr Length boundless = metres(10);

const Box& plain_box() {
    static const Box box;
    return box;
}

const Box& box_of(const FilledBox& filled) {
    return filled.box == nullptr ? plain_box() : *filled.box;
}

bool on_side(const Box& box) {
    return box.turn == Turn::left || box.turn == Turn::right;
}

Length clamped(Length value, Length least, const std::optional<Length>& most) {
    if (most) value = smaller(value, *most);
    return larger(value, least);
}

std::optional<Length> fixed_inside(const std::optional<Extent>& extent, Length frame) {
    return extent && extent->is_fixed() ? std::optional{extent->length() - frame} : std::nullopt;
}

Length sum(const std::vector<Length>& lengths) {
    return std::accumulate(lengths.begin(), lengths.end(), Length{});
}

Length gaps(std::size_t boxes, Length gap) {
    return boxes < 2 ? Length{} : gap * static_cast<double>(boxes - 1);
}

// Shares of `rest` to the places in `lengths` where `extents` say so, none less than its own in `least`: one that needs
// more than its share gets what it needs, and the others share what that leaves.
void hand_out(const std::vector<Extent>& extents, const std::vector<Length>& least, Length rest,
              std::vector<Length>& lengths) {
    std::vector<bool> open;
    for (const Extent& extent : extents)
        open.push_back(extent.is_share());
    for (bool settled = false; !settled;) {
        settled = true;
        double parts = 0;
        for (std::size_t i = 0; i < extents.size(); ++i)
            parts += open[i] ? extents[i].parts() : 0;
        Length left = rest;
        for (std::size_t i = 0; i < extents.size(); ++i) {
            if (!open[i]) continue;
            lengths[i] = larger(rest, Length{}) * (extents[i].parts() / parts);
            if (fits(least[i], lengths[i])) continue;
            lengths[i] = least[i];
            open[i] = false;
            left -= least[i];
            settled = false;
        }
        rest = left;
    }
}

struct ContentMeasure {
    const Box& box;
    Length width;  // on offer
    Length across; // the label's own width on offer, which is the height of what lies on its side
    const Trial& trial;

    Size operator()(const Flow& flow) const {
        return flow.direction == Direction::down ? column(flow.children) : row(flow.children);
    }
    Size column(const std::vector<FilledBox>& children) const {
        Size size{{}, gaps(children.size(), box.gap)};
        for (const FilledBox& child : children) {
            const Size wanted = wanted_size(child, width, trial);
            size.width = larger(size.width, wanted.width);
            size.height += wanted.height;
        }
        return size;
    }
    Size row(const std::vector<FilledBox>& children) const {
        const std::vector<Length> widths = row_widths(children, width, box.gap, trial);
        Length above;
        Length below;
        Length tallest;
        for (std::size_t i = 0; i < children.size(); ++i) {
            const Length height = wanted_size(children[i], widths[i], trial).height;
            tallest = larger(tallest, height);
            if (box.align != Align::baseline) continue;
            const Length baseline = baseline_of(children[i], widths[i], trial).value_or(height);
            above = larger(above, baseline);
            below = larger(below, height - baseline);
        }
        return {sum(widths) + gaps(children.size(), box.gap), larger(tallest, above + below)};
    }
    Size operator()(const FilledGrid& grid) const {
        const auto columns = static_cast<std::size_t>(grid.columns);
        const Length cell = (width - box.gap * static_cast<double>(columns - 1)) / static_cast<double>(columns);
        std::vector<Length> rows;
        for (std::size_t i = 0; i < grid.children.size(); ++i) {
            if (i % columns == 0) rows.emplace_back();
            rows.back() = larger(rows.back(), wanted_size(grid.children[i], cell, trial).height);
        }
        return {width, sum(rows) + gaps(rows.size(), box.gap)};
    }
    Size operator()(const Stack& stack) const {
        Size size;
        for (const FilledBox& child : stack.children) {
            const Size wanted = wanted_size(child, width, trial);
            size = {larger(size.width, wanted.width), larger(size.height, wanted.height)};
        }
        return size;
    }
    Size operator()(const FilledTable& table) const {
        const std::vector<Length> widths = table_widths(table, width, box.gap, trial);
        Length height = gaps(table.rows.size(), table.row_gap);
        for (const auto& row : table.rows) {
            Length tallest;
            for (std::size_t i = 0; i < row.size(); ++i) {
                tallest = larger(tallest, wanted_size(row[i], widths[i], trial).height);
            }
            height += tallest;
        }
        return {sum(widths) + gaps(widths.size(), box.gap), height};
    }
    // A text on a circle takes what room there is.
    Size operator()(const Words& words) const {
        return words.around ? Size{} : set_words(words, width, trial).extent();
    }
    Size operator()(const PatchBox& patch) const { return (*this)(Stack{patch.children}); }
    // As large as the layout makes it.
    Size operator()(const SpeckleMark& /*mark*/) const { return {}; }
    // By its height, else by its width, else as wide on the label as there is room; one that shares a height asks for
    // none.
    Size operator()(const PictureMark& mark) const {
        const double shape = mark.picture.shape;
        if (const auto size = fixed_size(shape)) return *size;
        if (box.height && box.height->is_share()) return {};
        return on_side(box) ? Size{across * shape, across} : Size{width, width / shape};
    }
    // By its height, else by its width, else as small as it may be.
    Size operator()(const SymbolMark& mark) const {
        const double shape = mark.drawing->size.width / mark.drawing->size.height;
        if (const auto size = fixed_size(shape)) return *size;
        const Length least = symbol_rules(mark.symbol.key).least_height;
        return {least * shape, least};
    }
    // What keeps its shape and whose height or width is fixed.
    [[nodiscard]] std::optional<Size> fixed_size(double shape) const {
        const auto [wide, high] = fixed_room(box);
        if (high) return Size{*high * shape, *high};
        if (wide) return Size{*wide, *wide / shape};
        return std::nullopt;
    }
    Size operator()(const CodeMark& mark) const { return wanted_code(mark, box, width, trial); }
    Size operator()(const Rule& rule) const { return {rule.thickness, rule.thickness}; }
    Size operator()(const HoleMark& hole) const { return {hole.diameter, hole.diameter}; }
    Size operator()(const FilledBlank& blank) const {
        return blank.extent.is_fixed() ? Size{blank.extent.length(), blank.extent.length()} : Size{};
    }
};

} // namespace

Insets frame_of(const Box& box) {
    return box.padding + Insets::all(box.border);
}

FixedRoom fixed_room(const Box& box) {
    FixedRoom room{fixed_inside(box.width, frame_of(box).across()), fixed_inside(box.height, frame_of(box).down())};
    if (on_side(box)) std::swap(room.width, room.height);
    return room;
}

Extent extent_across(const FilledBox& box) {
    if (const auto* blank = std::get_if<FilledBlank>(&box.kind)) return blank->extent;
    return box_of(box).width.value_or(Extent::fit());
}

Extent extent_down(const FilledBox& box) {
    if (const auto* blank = std::get_if<FilledBlank>(&box.kind)) return blank->extent;
    return box_of(box).height.value_or(Extent::fit());
}

Size wanted_size(const FilledBox& filled, Length available, const Trial& trial) {
    const Box& box = box_of(filled);
    const Insets frame = frame_of(box);
    const bool fixed_width = box.width && box.width->is_fixed();
    const bool fixed_height = box.height && box.height->is_fixed();
    Length outer = fixed_width ? box.width->length() : larger(available - box.margin.across(), Length{});
    outer = clamped(outer, box.min_width, box.max_width);
    const Length across = larger(outer - frame.across(), Length{});
    Length inner = across;
    if (on_side(box)) inner = (fixed_height ? box.height->length() : boundless) - frame.down();
    const Size upright = std::visit(ContentMeasure{box, larger(inner, Length{}), across, trial}, filled.kind);
    Size content = on_side(box) ? Size{upright.height, upright.width} : upright;
    content = {content.width + frame.across(), content.height + frame.down()};
    if (fixed_width) content.width = box.width->length();
    if (fixed_height) content.height = box.height->length();
    return {clamped(content.width, box.min_width, box.max_width) + box.margin.across(),
            clamped(content.height, box.min_height, box.max_height) + box.margin.down()};
}

std::optional<Length> baseline_of(const FilledBox& filled, Length width, const Trial& trial) {
    const Box& box = box_of(filled);
    if (box.turn != Turn::none) return std::nullopt;
    const Insets frame = frame_of(box);
    const Length inner = larger(width - box.margin.across() - frame.across(), Length{});
    const Length top = box.margin.top + frame.top;
    if (const auto* words = std::get_if<Words>(&filled.kind); words != nullptr && !words->around) {
        return top + set_words(*words, inner, trial).first_baseline;
    }
    const auto* flow = std::get_if<Flow>(&filled.kind);
    if (flow == nullptr || flow->children.empty()) return std::nullopt;
    if (flow->direction == Direction::down) {
        const auto first = baseline_of(flow->children.front(), inner, trial);
        return first ? std::optional{top + *first} : std::nullopt;
    }
    const std::vector<Length> widths = row_widths(flow->children, inner, box.gap, trial);
    std::optional<Length> deepest;
    for (std::size_t i = 0; i < widths.size(); ++i) {
        const auto one = baseline_of(flow->children[i], widths[i], trial);
        if (one && (!deepest || *deepest < *one)) deepest = one;
    }
    return deepest ? std::optional{top + *deepest} : std::nullopt;
}

std::vector<Length> row_widths(const std::vector<FilledBox>& children, Length available, Length gap,
                               const Trial& trial) {
    std::vector<Length> widths(children.size());
    std::vector<Extent> extents;
    Length rest = available - gaps(children.size(), gap);
    for (std::size_t i = 0; i < children.size(); ++i) {
        extents.push_back(extent_across(children[i]));
        if (!extents[i].is_fixed()) continue;
        widths[i] = extents[i].length() + box_of(children[i]).margin.across();
        rest -= widths[i];
    }
    for (std::size_t i = 0; i < children.size(); ++i) {
        if (!extents[i].is_fit()) continue;
        widths[i] = wanted_size(children[i], larger(rest, Length{}), trial).width;
        rest -= widths[i];
    }
    std::vector<Length> least;
    for (const FilledBox& child : children)
        least.push_back(box_of(child).min_width + box_of(child).margin.across());
    hand_out(extents, least, rest, widths);
    for (std::size_t i = 0; i < children.size(); ++i) {
        const std::optional<Length>& most = box_of(children[i]).max_width;
        if (extents[i].is_share() && most) widths[i] = smaller(widths[i], *most);
    }
    return widths;
}

std::vector<Length> table_widths(const FilledTable& table, Length available, Length gap, const Trial& trial) {
    std::vector<Length> widths(table.widths.size());
    Length rest = available - gaps(widths.size(), gap);
    for (std::size_t i = 0; i < widths.size(); ++i) {
        const Extent& extent = table.widths[i];
        if (extent.is_fixed()) widths[i] = extent.length();
        if (extent.is_fit()) {
            for (const auto& row : table.rows) {
                widths[i] = larger(widths[i], wanted_size(row[i], larger(rest, Length{}), trial).width);
            }
        }
        rest -= widths[i];
    }
    hand_out(table.widths, std::vector<Length>(widths.size()), rest, widths);
    return widths;
}

std::vector<Length> column_heights(const std::vector<FilledBox>& children, Size available, Length gap,
                                   const Trial& trial) {
    std::vector<Length> heights(children.size());
    std::vector<Extent> extents;
    Length rest = available.height - gaps(children.size(), gap);
    std::vector<Length> least;
    for (std::size_t i = 0; i < children.size(); ++i) {
        extents.push_back(extent_down(children[i]));
        least.push_back(wanted_size(children[i], available.width, trial).height);
        if (extents[i].is_share()) continue;
        heights[i] = least[i];
        rest -= heights[i];
    }
    hand_out(extents, least, rest, heights);
    return heights;
}

} // namespace dyeleaf
