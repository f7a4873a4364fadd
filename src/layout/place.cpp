#include "layout/place.h"

#include "base/overloaded.h"
#include "colour/contrast.h"
#include "display/bend.h"
#include "layout/code_mark.h"
#include "layout/link_target.h"
#include "layout/measure.h"
#include "layout/patch.h"
#include "speckles/draw_speckles.h"
#include "symbols/symbols.h"

#include <algorithm>
#include <array>
#include <memory>
#include <numbers>
#include <utility>

namespace dyeleaf {

namespace {

constexpr Rgb bare_paper{1, 1, 1};
constexpr Length outline_width = pt(0.75); // of a background that sparing ink leaves bare

// What a box inherits from those around it.
struct Context {
    Transform to_label;
    std::optional<Rgb> ground; // the colour behind, where it is not paper
    int depth = 0;
};

std::string kind_name(const FilledBox& box) {
    if (const auto* flow = std::get_if<Flow>(&box.kind)) return flow->direction == Direction::down ? "column" : "row";
    constexpr std::array names = {"",     "grid", "layers", "table",  "text", "swatch",  "picture",
                                  "rule", "hole", "blank",  "symbol", "code", "speckles"};
    static_assert(names.size() == std::variant_size_v<FilledKind>);
    return names.at(box.kind.index());
}

class Placer {
  public:
    Placer(Size label, Length bleed, const Trial& trial, Ink ink, Placement& result)
        : label_{{}, label}, bleed_(bleed), trial_(trial), ink_(ink), result_(result), list_(&result.list) {}

    // `region` is the box's place, margin included, in the coordinates of the list being written.
    void place(const FilledBox& filled, Rect region, const Context& context) {
        static const Box plain;
        const Box& box = filled.box == nullptr ? plain : *filled.box;
        const Rect outer = shrunk(region, box.margin);
        result_.boxes.push_back({context.depth, kind_name(filled), context.to_label.bounds(outer)});
        Context inside = context;
        ++inside.depth;
        dress(box, outer, inside);
        const Rect content = shrunk(outer, frame_of(box));
        if (box.turn == Turn::none) {
            place_content(filled, box, content, inside);
        } else {
            place_turned(filled, box, content, inside);
        }
    }

  private:
    void dress(const Box& box, Rect outer, Context& context) {
        if (box.background) {
            context.ground = ink_.sparing ? bare_paper : *box.background;
            list_->items.emplace_back(FillPath{rounded_path(bled(outer), box.corner), *context.ground});
            if (context.ground != box.background && box.border == Length{}) {
                const Rect middle = grown(outer, outline_width * -0.5);
                list_->items.emplace_back(StrokePath{rounded_path(middle, box.corner), Rgb{}, outline_width, {}});
            }
            result_.zones.push_back({Zone::Kind::background, context.to_label.bounds(outer), &box, {}});
        }
        if (box.border > Length{}) {
            const Rect middle = grown(outer, box.border * -0.5);
            list_->items.emplace_back(
                StrokePath{rounded_path(middle, box.corner), box.border_colour.value_or(Rgb{}), box.border, {}});
        }
    }

    // A box whose place does not grow with it shrinks its own texts to fit, and nobody else's.
    void place_in_bounds(const FilledBox& filled, Rect region, const Context& context) {
        const double around = trial_.shrink;
        const Mark before = mark();
        for (const double level : shrink_levels) {
            if (level < around) continue;
            trial_.shrink = level;
            place(filled, region, context);
            const auto fresh = result_.misfits.begin() + static_cast<std::ptrdiff_t>(before.misfits);
            const bool all_fits = std::none_of(fresh, result_.misfits.end(), wants_more_room);
            if (all_fits || level == shrink_levels.back()) break;
            go_back_to(before);
        }
        trial_.shrink = around;
    }

    // How far the result had come, to take back a try.
    struct Mark {
        std::size_t items, zones, misfits, missing, pictures, silent_patches, boxes;
    };
    [[nodiscard]] Mark mark() const {
        return {list_->items.size(),     result_.zones.size(),          result_.misfits.size(), result_.missing.size(),
                result_.pictures.size(), result_.silent_patches.size(), result_.boxes.size()};
    }
    void go_back_to(const Mark& mark) {
        const auto cut = [](auto& list, std::size_t size) {
            list.erase(list.begin() + static_cast<std::ptrdiff_t>(size), list.end());
        };
        cut(list_->items, mark.items);
        cut(result_.zones, mark.zones);
        cut(result_.misfits, mark.misfits);
        cut(result_.missing, mark.missing);
        cut(result_.pictures, mark.pictures);
        cut(result_.silent_patches, mark.silent_patches);
        cut(result_.boxes, mark.boxes);
    }

    // Only upright boxes bleed: a turned one has its own coordinates.
    [[nodiscard]] Rect bled(Rect rect) const {
        if (list_ != &result_.list) return rect;
        const auto beyond = [&](bool touches) { return touches ? -bleed_ : Length{}; };
        return shrunk(rect, {beyond(near(rect.top(), label_.top())), beyond(near(rect.right(), label_.right())),
                             beyond(near(rect.bottom(), label_.bottom())), beyond(near(rect.left(), label_.left()))});
    }

    void place_turned(const FilledBox& filled, const Box& box, Rect content, const Context& context) {
        const Size upright = turned_size(box.turn, content.size);
        const Transform transform = Transform::move(content.origin).after(turned(box.turn, upright));
        auto inner = std::make_shared<DisplayList>();
        inner->size = upright;
        DisplayList* const outer_list = std::exchange(list_, inner.get());
        Context inside = context;
        inside.to_label = context.to_label.after(transform);
        place_content(filled, box, {{}, upright}, inside);
        list_ = outer_list;
        list_->items.emplace_back(Group{std::move(inner), transform, std::nullopt});
    }

    void place_content(const FilledBox& filled, const Box& box, Rect rect, const Context& context) {
        std::visit(Overloaded{
                       [&](const Flow& flow) {
                           flow.direction == Direction::down ? place_column(flow.children, box, rect, context)
                                                             : place_row(flow.children, box, rect, context);
                       },
                       [&](const FilledGrid& grid) { place_grid(grid, box, rect, context); },
                       [&](const Stack& stack) { place_stack(stack.children, box, rect, context); },
                       [&](const FilledTable& table) { place_table(table, box, rect, context); },
                       [&](const Words& words) { place_words(words, box, rect, context); },
                       [&](const PatchBox& patch) { place_patch(patch, box, rect, context); },
                       [&](const PictureMark& mark) { place_picture(mark, box, rect, context); },
                       [&](const Rule& rule) { place_rule(rule, rect); },
                       [&](const HoleMark&) { place_hole(box, rect, context); },
                       [](const FilledBlank&) {},
                       [&](const SymbolMark& mark) { place_symbol(mark, box, rect, context); },
                       [&](const CodeMark& mark) { place_code(mark, box, rect, context); },
                       [&](const SpeckleMark& mark) { place_speckles(mark.speckled, box, rect, context); },
                   },
                   filled.kind);
    }

    void note_overflow(Misfit::Kind kind, const Box& box, Length needed, Length available) {
        if (fits(needed, available)) return;
        result_.misfits.push_back({kind, &box, needed - available, {}, false});
    }

    static Length total(const std::vector<Length>& lengths, Length gap) {
        Length sum = lengths.empty() ? Length{} : gap * static_cast<double>(lengths.size() - 1);
        for (Length length : lengths)
            sum += length;
        return sum;
    }

    // Where the first box starts and how much stands between two, so that they fill `available` as `justify` says.
    static std::pair<Length, Length> spread(Justify justify, Length used, Length available, Length gap,
                                            std::size_t boxes) {
        const Length spare = larger(available - used, Length{});
        switch (justify) {
        case Justify::start: return {Length{}, gap};
        case Justify::centre: return {spare / 2, gap};
        case Justify::end: return {spare, gap};
        case Justify::between: return {Length{}, boxes < 2 ? gap : gap + spare / static_cast<double>(boxes - 1)};
        }
        return {Length{}, gap};
    }

    static Length aligned(Align align, Length spare) {
        if (align == Align::centre) return spare / 2;
        return align == Align::end ? spare : Length{};
    }

    // The size a child takes across the run: all there is when it stretches or shares, else what it wants.
    static Length across_run(const std::optional<Extent>& extent, Align align, Length wanted, Length available) {
        if (extent && extent->is_share()) return available;
        if (!extent && align == Align::stretch) return available;
        return smaller(wanted, available);
    }

    void place_column(const std::vector<FilledBox>& children, const Box& box, Rect rect, const Context& context) {
        const std::vector<Length> heights = column_heights(children, rect.size, box.gap, trial_);
        const Length used = total(heights, box.gap);
        note_overflow(Misfit::Kind::too_tall, box, used, rect.size.height);
        auto [y, gap] = spread(box.justify, used, rect.size.height, box.gap, children.size());
        for (std::size_t i = 0; i < children.size(); ++i) {
            const std::optional<Extent> extent = children[i].box == nullptr ? std::nullopt : children[i].box->width;
            const Length wanted = wanted_size(children[i], rect.size.width, trial_).width;
            if (extent && extent->is_fixed()) note_overflow(Misfit::Kind::too_wide, box, wanted, rect.size.width);
            const Length width = across_run(extent, box.align, wanted, rect.size.width);
            const Length x = aligned(box.align, rect.size.width - width);
            const Rect region{{rect.left() + x, rect.top() + y}, {width, heights[i]}};
            extent_down(children[i]).is_fixed() ? place_in_bounds(children[i], region, context)
                                                : place(children[i], region, context);
            y += heights[i] + gap;
        }
    }

    void place_row(const std::vector<FilledBox>& children, const Box& box, Rect rect, const Context& context) {
        const std::vector<Length> widths = row_widths(children, rect.size.width, box.gap, trial_);
        const Length used = total(widths, box.gap);
        note_overflow(Misfit::Kind::too_wide, box, used, rect.size.width);
        Length deepest;
        if (box.align == Align::baseline) {
            for (std::size_t i = 0; i < children.size(); ++i) {
                deepest = larger(deepest, baseline_of(children[i], widths[i], trial_).value_or(Length{}));
            }
        }
        auto [x, gap] = spread(box.justify, used, rect.size.width, box.gap, children.size());
        for (std::size_t i = 0; i < children.size(); ++i) {
            const std::optional<Extent> extent = children[i].box == nullptr ? std::nullopt : children[i].box->height;
            const Length wanted = wanted_size(children[i], widths[i], trial_).height;
            const Length height = across_run(extent, box.align, wanted, rect.size.height);
            Length y = aligned(box.align, rect.size.height - height);
            if (box.align == Align::baseline) {
                y = deepest - baseline_of(children[i], widths[i], trial_).value_or(deepest);
            }
            place_in_bounds(children[i], {{rect.left() + x, rect.top() + y}, {widths[i], height}}, context);
            x += widths[i] + gap;
        }
    }

    void place_grid(const FilledGrid& grid, const Box& box, Rect rect, const Context& context) {
        const auto columns = static_cast<std::size_t>(grid.columns);
        const std::size_t rows = (grid.children.size() + columns - 1) / columns;
        const auto share = [&](Length whole, std::size_t count) {
            return (whole - box.gap * static_cast<double>(count - 1)) / static_cast<double>(count);
        };
        const Length width = share(rect.size.width, columns);
        std::vector<Length> heights(rows);
        for (std::size_t i = 0; i < grid.children.size(); ++i) {
            Length& height = heights[i / columns];
            height = larger(height, wanted_size(grid.children[i], width, trial_).height);
        }
        if (grid.rows > 0) {
            const Length equal = share(rect.size.height, static_cast<std::size_t>(grid.rows));
            for (Length& height : heights)
                height = equal;
        }
        note_overflow(Misfit::Kind::too_tall, box, total(heights, box.gap), rect.size.height);
        Length y = rect.top();
        for (std::size_t i = 0; i < grid.children.size(); ++i) {
            const std::size_t column = i % columns;
            if (column == 0 && i > 0) y += heights[(i / columns) - 1] + box.gap;
            const Length x = rect.left() + (width + box.gap) * static_cast<double>(column);
            place_in_bounds(grid.children[i], {{x, y}, {width, heights[i / columns]}}, context);
        }
    }

    void place_stack(const std::vector<FilledBox>& children, const Box& box, Rect rect, const Context& context) {
        for (const FilledBox& child : children) {
            const Size wanted = wanted_size(child, rect.size.width, trial_);
            note_overflow(Misfit::Kind::too_tall, box, wanted.height, rect.size.height);
            const bool stretched = box.align == Align::stretch;
            const auto extent = [&](const std::optional<Extent> Box::*dimension) {
                return child.box == nullptr ? std::nullopt : child.box->*dimension;
            };
            const Length width = across_run(extent(&Box::width), box.align, wanted.width, rect.size.width);
            const bool fills =
                extent(&Box::height) ? extent(&Box::height)->is_share() : stretched && box.justify == Justify::start;
            const Length height = fills ? rect.size.height : smaller(wanted.height, rect.size.height);
            const Length x = aligned(box.align, rect.size.width - width);
            const Length y = spread(box.justify, height, rect.size.height, {}, 1).first;
            place(child, {{rect.left() + x, rect.top() + y}, {width, height}}, context);
        }
    }

    void place_table(const FilledTable& table, const Box& box, Rect rect, const Context& context) {
        const std::vector<Length> widths = table_widths(table, rect.size.width, box.gap, trial_);
        note_overflow(Misfit::Kind::too_wide, box, total(widths, box.gap), rect.size.width);
        Length y = rect.top();
        for (std::size_t row = 0; row < table.rows.size(); ++row) {
            const std::vector<FilledBox>& cells = table.rows[row];
            Length height;
            for (std::size_t i = 0; i < cells.size(); ++i) {
                height = larger(height, wanted_size(cells[i], widths[i], trial_).height);
            }
            if (row > 0 && table.rule > Length{}) {
                const Length line = y - table.row_gap / 2;
                list_->items.emplace_back(StrokePath{line_path({rect.left(), line}, {rect.right(), line}),
                                                     box.border_colour.value_or(Rgb{}),
                                                     table.rule,
                                                     {}});
            }
            Length x = rect.left();
            for (std::size_t i = 0; i < cells.size(); ++i) {
                const Length wanted = wanted_size(cells[i], widths[i], trial_).height;
                const Length drop = aligned(box.align, height - wanted);
                place(cells[i], {{x, y + drop}, {widths[i], wanted}}, context);
                x += widths[i] + box.gap;
            }
            y += height + table.row_gap;
        }
        note_overflow(Misfit::Kind::too_tall, box, y - table.row_gap - rect.top(), rect.size.height);
    }

    static Tag figure(std::string words) { return {Tag::Role::figure, std::move(words), {}, {}}; }
    void begin(Tag tag) { list_->items.emplace_back(BeginTag{std::move(tag)}); }
    void end() { list_->items.emplace_back(EndTag{}); }

    void place_words(const Words& words, const Box& box, Rect rect, const Context& context) {
        if (words.around) {
            place_around(words, box, rect, context);
            return;
        }
        const SetWords set = set_words(words, rect.size.width, trial_);
        const Size extent = set.extent();
        note_words(words, box, set);
        if (!fits(extent.height, rect.size.height)) {
            result_.misfits.push_back(
                {Misfit::Kind::too_tall, &box, extent.height - rect.size.height, words.text, words.is_caution});
        }
        if (set.paragraph->words_broken && words.is_caution) {
            result_.misfits.push_back(
                {Misfit::Kind::too_wide, &box, larger(extent.width - rect.size.width, mm(0.1)), words.text, true});
        }
        const Rgb ink = context.ground ? black_or_white_on(*context.ground) : words.style.colour;
        const Length top = rect.top() + spread(box.justify, extent.height, rect.size.height, {}, 1).first;
        const Rect inked = ink_words(words, set, {{rect.left(), top}, {rect.size.width, extent.height}}, ink, *list_);
        result_.zones.push_back({words.is_caution ? Zone::Kind::caution : Zone::Kind::words,
                                 context.to_label.bounds(inked), &box, words.text});
    }

    // On the circle that fits into `rect`, within its edge.
    void place_around(Words words, const Box& box, Rect rect, const Context& context) {
        constexpr double most = 5; // radians; what goes farther round stands on its head
        words.style.lines = words.is_caution ? 0 : 1;
        words.style.align = TextAlign::centre;
        const Length radius = smaller(rect.size.width, rect.size.height) / 2;
        const bool above = words.around == Around::top;
        const auto ring = [&](Length line) {
            return Sector{larger(radius - line, mm(0.1)), larger(radius, mm(0.2)), 2 * std::numbers::pi, above};
        };
        const auto room = [&](const SetWords& set) {
            return room_on_arc(ring(set.leading), set.first_baseline, set.size, most);
        };
        const SetWords tried = set_words(words, metres(10), trial_);
        const SetWords set = words.is_caution ? tried : set_words(words, larger(room(tried), mm(0.1)), trial_);
        note_words(words, box, set);
        if (!fits(set.extent().width, room(set))) {
            result_.misfits.push_back(
                {Misfit::Kind::too_wide, &box, set.extent().width - room(set), words.text, words.is_caution});
        }
        const Sector sector = ring(set.leading);
        DisplayList flat{sector.flat(), {}};
        const Rgb ink = context.ground ? black_or_white_on(*context.ground) : words.style.colour;
        ink_words(words, set, {{}, {sector.flat().width, set.leading}}, ink, flat);
        auto bent = std::make_shared<const DisplayList>(bend(flat, sector));
        const Transform move = Transform::move(rect.centre() - sector.centre());
        result_.zones.push_back({words.is_caution ? Zone::Kind::caution : Zone::Kind::words,
                                 context.to_label.bounds(move.bounds({{}, bent->size})), &box, words.text,
                                 letters_in(*bent, context.to_label.after(move))});
        list_->items.emplace_back(Group{std::move(bent), move, std::nullopt});
    }

    static std::vector<Quad> letters_in(const DisplayList& list, const Transform& to_label) {
        std::vector<Quad> letters;
        for (const DisplayItem& item : list.items) {
            const auto* draw = std::get_if<DrawRun>(&item);
            if (draw == nullptr) continue;
            Quad letter = letter_box(*draw);
            for (Point& corner : letter.corners)
                corner = to_label.apply(corner);
            letters.push_back(letter);
        }
        return letters;
    }

    void note_words(const Words& words, const Box& box, const SetWords& set) {
        if (set.cut) result_.misfits.push_back({Misfit::Kind::cut, &box, {}, words.text, words.is_caution});
        if (set.paragraph->words_broken && !words.is_caution) {
            result_.misfits.push_back({Misfit::Kind::broken, &box, {}, words.text, false});
        }
        for (const std::string& character : set.paragraph->missing) {
            result_.missing.push_back({&box, character, words.text, words.is_caution});
        }
    }

    // Lines under one another from the top of `rect`, aligned in its width. Returns where they stand.
    static Rect ink_words(const Words& words, const SetWords& set, Rect rect, Rgb ink, DisplayList& list) {
        const TextAlign align = words.style.align;
        const Length anchor = align == TextAlign::start    ? rect.left()
                              : align == TextAlign::centre ? rect.centre().x
                                                           : rect.right();
        Length baseline = rect.top() + set.first_baseline;
        Length inked_left = rect.right();
        const std::size_t first = list.items.size();
        // Between two lines nothing says that a word has ended.
        const std::string spoken = set.paragraph->lines.size() > 1 ? words.text : std::string{};
        list.items.emplace_back(BeginTag{{Tag::Role::paragraph, spoken, link_target(words.text), {}}});
        for (const TextLine& line : set.paragraph->lines) {
            const Length width = set.size * line.width;
            Length x = rect.left();
            if (align == TextAlign::centre) x += (rect.size.width - width) / 2;
            if (align == TextAlign::end) x += rect.size.width - width;
            for (const PlacedRun& run : line.runs) {
                list.items.emplace_back(DrawRun{run.run, {x + set.size * run.x, baseline}, set.size, ink, anchor});
            }
            inked_left = smaller(inked_left, x);
            baseline += set.leading;
        }
        list.items.emplace_back(EndTag{});
        const Rect inked{{inked_left, rect.top()}, set.extent()};
        std::get<BeginTag>(list.items[first]).tag.place = inked;
        return inked;
    }

    void place_patch(const PatchBox& patch, const Box& box, Rect rect, Context context) {
        begin(figure(patch.patch.description));
        for (DisplayItem& item : draw_patch(patch.patch, {ink_, patch.children.empty()}, rect, bled(rect), box.corner))
            list_->items.push_back(std::move(item));
        end();
        result_.zones.push_back({Zone::Kind::colour, context.to_label.bounds(rect), &box, patch.patch.description});
        context.ground = ground_of(patch.patch, ink_);
        place_stack(patch.children, box, rect, context);
        if (patch.carries_code && patch.children.empty()) place_patch_code(patch, box, rect, context);
        if (!patch.patch.says.empty()) place_patch_source(patch, box, rect, context);
    }

    // In its upper left corner, clear of the patch's marks and of what else stands on it, as large and in as many words
    // as there is room for.
    void place_patch_source(const PatchBox& patch, const Box& box, Rect rect, const Context& context) {
        constexpr Length from_trim = mm(3); // common practice
        const bool bleeds = bled(rect) != rect;
        const Length inset = bleeds ? from_trim : mm(0.6) + box.corner * 0.3;
        const Rect room = shrunk(rect, {bleeds ? mm(0.8) : inset, inset, inset, inset});
        const auto is_clear = [&](Rect letters) {
            const Rect on_label = context.to_label.bounds(letters);
            return std::ranges::none_of(marks_on(patch.patch, rect),
                                        [&](Rect mark) { return overlap(mark, letters); }) &&
                   std::ranges::none_of(result_.zones, [&](const Zone& zone) {
                       return zone.kind == Zone::Kind::words && overlap(zone, on_label);
                   });
        };
        for (const std::string& text : patch.patch.says) {
            for (const Length size : {pt(6), pt(5.5), pt(5)}) {
                Words words{text, patch.style};
                words.style.size = words.style.smallest = size;
                words.style.leading = 1.1;
                words.style.lines = 0;
                const SetWords set = set_words(words, room.size.width, trial_);
                const Rect letters{room.origin, set.extent()};
                if (set.paragraph->words_broken || !contains(room, letters) || !is_clear(letters)) continue;
                if (ink_.mono || ink_.sparing)
                    list_->items.emplace_back(FillPath{rect_path(grown(letters, mm(0.3))), *context.ground});
                const Rect inked = ink_words(words, set, letters, black_or_white_on(*context.ground), *list_);
                note_words(words, box, set);
                result_.zones.push_back({Zone::Kind::words, context.to_label.bounds(inked), &box, text});
                return;
            }
        }
        result_.silent_patches.push_back(
            {SilentPatch::Lacks::source, &box, context.to_label.bounds(rect), patch.patch.says});
    }

    // In the middle of its patch, on one line and clear of the patch's marks, or not at all.
    void place_patch_code(const PatchBox& patch, const Box& box, Rect rect, const Context& context) {
        Words words{patch.patch.code, patch.style};
        words.style.lines = 1;
        words.style.align = TextAlign::centre;
        const Rect room = shrunk(rect, {Length{}, mm(0.6), Length{}, mm(0.6)});
        const SetWords set = set_words(words, room.size.width, trial_);
        const Rect line{{room.left(), rect.centre().y - set.extent().height / 2},
                        {room.size.width, set.extent().height}};
        const Rect letters{{rect.centre().x - set.extent().width / 2, line.top()}, set.extent()};
        const auto marks = marks_on(patch.patch, rect);
        const bool is_clear = std::ranges::none_of(marks, [&](Rect mark) { return overlap(mark, letters); });
        if (set.cut || set.paragraph->words_broken || !contains(rect, letters) || !is_clear) {
            result_.silent_patches.push_back(
                {SilentPatch::Lacks::code, &box, context.to_label.bounds(rect), {words.text}});
            return;
        }
        note_words(words, box, set);
        // Clear of the pattern, where there is one.
        if (ink_.mono || ink_.sparing)
            list_->items.emplace_back(FillPath{rect_path(grown(letters, mm(0.4))), *context.ground});
        const Rect inked = ink_words(words, set, line, black_or_white_on(*context.ground), *list_);
        result_.zones.push_back({Zone::Kind::words, context.to_label.bounds(inked), &box, words.text});
    }

    void place_speckles(const Speckled& speckled, const Box& box, Rect rect, const Context& context) {
        begin(figure(speckled.description));
        for (DisplayItem& item : draw_speckles(speckled, ink_, rect, bled(rect), box.corner))
            list_->items.push_back(std::move(item));
        end();
        result_.zones.push_back({Zone::Kind::colour, context.to_label.bounds(rect), &box, speckled.description});
    }

    void place_rule(const Rule& rule, Rect rect) {
        const bool level = rect.size.width >= rect.size.height;
        const Point middle = rect.centre();
        const Path path = level ? line_path({rect.left(), middle.y}, {rect.right(), middle.y})
                                : line_path({middle.x, rect.top()}, {middle.x, rect.bottom()});
        std::vector<Length> dash;
        if (rule.dashed) dash = {rule.thickness * 3, rule.thickness * 3};
        list_->items.emplace_back(StrokePath{path, rule.colour, rule.thickness, std::move(dash)});
    }

    // As large as fits, in the middle.
    static Rect fitted(double shape, Rect rect) {
        const Length width = smaller(rect.size.width, rect.size.height * shape);
        const Size size{width, width / shape};
        return {rect.centre() - Point{size.width / 2, size.height / 2}, size};
    }

    void place_picture(const PictureMark& mark, const Box& box, Rect rect, const Context& context) {
        const Rect place = fitted(mark.picture.shape, rect);
        begin(figure(mark.alt));
        list_->items.emplace_back(DrawPicture{mark.picture, place});
        end();
        result_.zones.push_back({Zone::Kind::picture, context.to_label.bounds(place), &box, mark.alt});
        result_.pictures.push_back({&box, mark, place.size});
    }

    // A hazard's pictogram is a caution like its words.
    void place_symbol(const SymbolMark& mark, const Box& box, Rect rect, const Context& context) {
        const Size drawn = mark.drawing->size;
        const Rect place = fitted(drawn.width / drawn.height, rect);
        const double scale = place.size.width / drawn.width;
        begin(figure(mark.symbol.description));
        list_->items.emplace_back(Group{
            mark.drawing, Transform::move(place.origin).after(Transform{scale, 0, 0, scale, {}, {}}), std::nullopt});
        end();
        const SymbolRules rules = symbol_rules(mark.symbol.key);
        result_.zones.push_back({rules.is_hazard ? Zone::Kind::caution : Zone::Kind::symbol,
                                 context.to_label.bounds(place), &box, mark.symbol.description});
        if (!fits(rules.least_height, place.size.height)) {
            result_.misfits.push_back({Misfit::Kind::small_symbol, &box, rules.least_height - place.size.height,
                                       mark.symbol.description, rules.is_hazard});
        }
    }

    void place_code(const CodeMark& mark, const Box& box, Rect rect, const Context& context) {
        PlacedCode placed = draw_code_mark(mark, box, rect, trial_);
        if (placed.misfit) {
            result_.misfits.push_back(std::move(*placed.misfit));
            return;
        }
        begin({Tag::Role::figure, mark.description, link_target(placed.text), placed.rect});
        for (DisplayItem& item : placed.items)
            list_->items.push_back(std::move(item));
        end();
        result_.zones.push_back({Zone::Kind::code, context.to_label.bounds(placed.rect), &box, placed.text});
    }

    void place_hole(const Box& box, Rect rect, const Context& context) {
        const Length radius = smaller(rect.size.width, rect.size.height) / 2;
        list_->items.emplace_back(
            StrokePath{circle_path(rect.centre(), radius), Rgb{0.5, 0.5, 0.5}, pt(0.35), {mm(0.6), mm(0.5)}});
        result_.zones.push_back({Zone::Kind::hole, context.to_label.bounds(rect), &box, {}});
    }

    Rect label_;
    Length bleed_;
    Trial trial_;
    Ink ink_;
    Placement& result_;
    DisplayList* list_;
};

} // namespace

bool overlap(const Zone& zone, Rect rect) {
    if (zone.letters.empty()) return overlap(zone.rect, rect);
    return std::ranges::any_of(zone.letters, [&](const Quad& letter) { return overlap(letter, quad_of({}, rect)); });
}

bool overlap(const Zone& zone, const Zone& other) {
    if (other.letters.empty()) return overlap(zone, other.rect);
    if (zone.letters.empty()) return overlap(other, zone.rect);
    return std::ranges::any_of(zone.letters, [&](const Quad& letter) {
        return std::ranges::any_of(other.letters, [&](const Quad& another) { return overlap(letter, another); });
    });
}

bool wants_more_room(const Misfit& misfit) {
    return misfit.kind == Misfit::Kind::too_tall || misfit.kind == Misfit::Kind::too_wide ||
           misfit.kind == Misfit::Kind::small_code;
}

Placement place(const FilledBox& box, Size size, Length bleed, const Trial& trial, Ink ink) {
    Placement result;
    Placer{size, bleed, trial, ink, result}.place(box, {{}, size}, {});
    return result;
}

} // namespace dyeleaf
