#include "codes/size_code.h"

#include <algorithm>
#include <cmath>

namespace dyeleaf {

namespace {

int whole_dots_in(Length length, Length dot) {
    return static_cast<int>(std::floor((length + length_tolerance) / dot));
}

int whole_dots_over(Length length, Length dot) {
    return static_cast<int>(std::ceil((length - length_tolerance) / dot));
}

Length on_dots(Length length, Length dot) {
    return dot * std::ceil((length - length_tolerance) / dot);
}

bool has_digits(CodeKind kind) {
    return kind == CodeKind::ean_13 || kind == CodeKind::upc_a;
}

// For a scanner that is passed over them by hand (common practice): a quarter of an inch, or 15 % of the width.
Length least_bars(const Code& code, Length module) {
    return larger(mm(6.35), module * code.columns * 0.15);
}

// GS1 General Specifications, 5.2.3: 22.85 mm beside modules of 0.33 mm.
Length usual_bars(const Code& code, Length module) {
    if (has_digits(code.kind)) return module * (22.85 / 0.33);
    return larger(mm(10), least_bars(code, module));
}

// Below an EAN or UPC one module of white and digits of nine.
Length foot_of(const Code& code, Length module, const CodeRoom& room) {
    if (has_digits(code.kind)) return module * 10;
    return is_linear(code.kind) ? room.foot : Length{};
}

CodeSize sized(const Code& code, int dots, Length bars, const CodeRoom& room) {
    const QuietZone quiet = code_rules(code.kind).quiet;
    CodeSize size;
    size.module = room.dot * dots;
    size.foot = foot_of(code, size.module, room);
    size.bars = is_linear(code.kind) ? on_dots(bars, room.dot) : size.module * code.rows;
    size.whole = {size.module * (quiet.left + code.columns + quiet.right) + room.dot,
                  size.module * (quiet.above + quiet.below) + size.bars + size.foot + room.dot};
    return size;
}

bool fits_room(const CodeSize& size, const CodeRoom& room) {
    return (!room.width || fits(size.whole.width, *room.width)) &&
           (!room.height || fits(size.whole.height, *room.height));
}

// As tall as usual or as the room has it.
Length bars_in(const Code& code, int dots, const CodeRoom& room) {
    const Length module = room.dot * dots;
    const Length usual = usual_bars(code, module);
    if (!room.height) return usual;
    Length bars = room.dot * whole_dots_in(*room.height - foot_of(code, module, room) - room.dot, room.dot);
    if (room.usual) bars = smaller(bars, usual);
    return larger(bars, least_bars(code, module));
}

int least_dots(const Code& code, const CodeRoom& room) {
    return std::max(1, whole_dots_over(larger(code_rules(code.kind).least_module, room.least_module), room.dot));
}

} // namespace

std::optional<CodeSize> largest_size(const Code& code, const CodeRoom& room) {
    const CodeRules rules = code_rules(code.kind);
    const int least = least_dots(code, room);
    const auto nearest = static_cast<int>(std::lround(rules.usual_module / room.dot));
    for (int dots = std::max(least, room.usual ? nearest : whole_dots_in(rules.most_module, room.dot)); dots >= least;
         --dots) {
        const CodeSize size = sized(code, dots, bars_in(code, dots, room), room);
        if (fits_room(size, room)) return size;
    }
    return std::nullopt;
}

CodeSize least_size(const Code& code, const CodeRoom& room) {
    const int dots = least_dots(code, room);
    return sized(code, dots, least_bars(code, room.dot * dots), room);
}

} // namespace dyeleaf
