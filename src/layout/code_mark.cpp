#include "layout/code_mark.h"

#include "base/number.h"
#include "base/words.h"
#include "codes/draw_code.h"
#include "layout/measure.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace dyeleaf {

namespace {

// Digits stand in places seven modules wide, in a line nine modules high, and do not touch.
constexpr double digit_place = 7;
constexpr double digit_width = 6;
constexpr double digit_height = 8.5;
constexpr Length white_above_text = mm(1);

Length foot_of(const CodeMark& mark, const Trial& trial) {
    return white_above_text + mark.style.size * trial.typesetter->metrics(mark.style.font).cap_height;
}

bool has_size(const Box& box) {
    return (box.width && !box.width->is_fit()) || (box.height && !box.height->is_fit());
}

CodeRoom room_in(const CodeMark& mark, const Box& box, std::optional<Length> width, std::optional<Length> height,
                 const Trial& trial) {
    return {width, height, !has_size(box), mark.dot, mark.least_module, foot_of(mark, trial)};
}

Font caption_font(const CodeMark& mark) {
    Font font = mark.style.font;
    font.tabular_figures = true;
    return font;
}

// Of an EAN's digits by the room that the bars leave; else as the style has it, and smaller where it is wider than the
// bars.
Length caption_size(const CodeMark& mark, const Code& code, const CodeSize& size, const Trial& trial) {
    const auto width_of = [&](const std::string& text) {
        return trial.typesetter->set(text, caption_font(mark), std::nullopt, false)->width;
    };
    if (code.captions.size() == 1)
        return smaller(mark.style.size, size.module * (code.columns / width_of(code.captions.front().text)));
    const double cap_height = trial.typesetter->metrics(mark.style.font).cap_height;
    return size.module * std::min(digit_width / width_of("0"), digit_height / cap_height);
}

void add_captions(const CodeMark& mark, const Code& code, const CodeSize& size, Point bars, const Trial& trial,
                  std::vector<DisplayItem>& items) {
    if (code.captions.empty()) return;
    const Length em = caption_size(mark, code, size, trial);
    const Length baseline = bars.y + size.bars + size.foot - (code.captions.size() == 1 ? Length{} : size.module * 0.5);
    const auto add = [&](const std::string& text, Length centre) {
        const auto set = trial.typesetter->set(text, caption_font(mark), std::nullopt, false);
        for (const TextLine& line : set->lines) {
            for (const PlacedRun& run : line.runs)
                items.emplace_back(
                    DrawRun{run.run, {centre - em * (line.width / 2) + em * run.x, baseline}, em, Rgb{}});
        }
    };
    for (const CodeCaption& caption : code.captions) {
        const Length centre = bars.x + size.module * caption.centre;
        if (code.captions.size() == 1) {
            add(caption.text, centre);
            continue;
        }
        const double first = -digit_place * (static_cast<double>(caption.text.size()) - 1) / 2;
        for (std::size_t i = 0; i < caption.text.size(); ++i)
            add(caption.text.substr(i, 1), centre + size.module * (first + digit_place * static_cast<double>(i)));
    }
}

std::string up_to_tenth(Length length) {
    return decimal(std::ceil(length.in_mm() * 10 - 1e-6) / 10, 1);
}

// "3.8 mm too narrow and 2 mm too low"
std::string lacking(Size needed, Size place) {
    std::vector<std::string> words;
    if (!fits(needed.width, place.width)) words.push_back(up_to_tenth(needed.width - place.width) + " mm too narrow");
    if (!fits(needed.height, place.height)) words.push_back(up_to_tenth(needed.height - place.height) + " mm too low");
    return joined(words, " and ");
}

Misfit too_small(const Code& code, const CodeRoom& room, const Box& box, Size place) {
    const Size needed = least_size(code, room).whole;
    return {Misfit::Kind::small_code,
            &box,
            larger(needed.width - place.width, needed.height - place.height),
            "the code " + in_quotes(shortened(code.text, 40)) + " needs " + up_to_tenth(needed.width) + " × " +
                up_to_tenth(needed.height) + " mm to be scanned, and its place is " + lacking(needed, place),
            false,
            std::string{"give the box more room in the layout"} +
                (code.kind == CodeKind::qr ? ", or the code a shorter text" : "")};
}

} // namespace

Size wanted_code(const CodeMark& mark, const Box& box, Length available, const Trial& trial) {
    const auto* code = std::get_if<Code>(&mark.code);
    if (code == nullptr) return {};
    const auto [width, height] = fixed_room(box);
    const CodeRoom room = room_in(mark, box, width.value_or(available), height, trial);
    // What shares in the rest grows with it.
    const bool shares = box.height && box.height->is_share();
    return shares ? least_size(*code, room).whole : largest_size(*code, room).value_or(least_size(*code, room)).whole;
}

PlacedCode draw_code_mark(const CodeMark& mark, const Box& box, Rect rect, const Trial& trial) {
    if (const auto* fault = std::get_if<CodeFault>(&mark.code))
        return {{}, {}, {}, Misfit{Misfit::Kind::no_code, &box, {}, fault->message, false, fault->help}};
    const Code& code = std::get<Code>(mark.code);
    const CodeRoom room = room_in(mark, box, rect.size.width, rect.size.height, trial);
    const auto size = largest_size(code, room);
    if (!size) return {{}, {}, code.text, too_small(code, room, box, rect.size)};
    const Length spare = rect.size.width - size->whole.width;
    Point origin = rect.centre() - Point{size->whole.width / 2, size->whole.height / 2};
    if (mark.style.align == TextAlign::start) origin.x = rect.left();
    if (mark.style.align == TextAlign::end) origin.x = rect.left() + spare;
    PlacedCode placed{draw_code(code, *size, mark.dot, origin), {origin, size->whole}, code.text, std::nullopt};
    add_captions(mark, code, *size, origin + first_module(code, *size, mark.dot), trial, placed.items);
    return placed;
}

} // namespace dyeleaf
