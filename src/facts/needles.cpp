#include "facts/needles.h"

#include "base/number.h"
#include "base/words.h"

#include <algorithm>
#include <array>

namespace dyeleaf {

namespace {

struct Size {
    Length diameter;
    std::string_view us;
    bool sure = true; // whether charts agree on the diameter
};

// As conversion charts print them. They differ on 00 (1.5 or 1.75 mm) and 000 (1.25 or 1.5 mm), on 17 (12 or 12.75 mm),
// 19 (15 or 16 mm), 35, 36 and 50; where the Craft Yarn Council's yarn weights use one of these (000 and 17), its
// figure stands here. 7 and 7.5 mm have no US size.
constexpr std::array sizes = {
    Size{mm(1.5), "000", false},
    Size{mm(1.75), "00", false},
    Size{mm(2), "0"},
    Size{mm(2.25), "1"},
    Size{mm(2.5), "1.5"},
    Size{mm(2.75), "2"},
    Size{mm(3), "2.5"},
    Size{mm(3.25), "3"},
    Size{mm(3.5), "4"},
    Size{mm(3.75), "5"},
    Size{mm(4), "6"},
    Size{mm(4.5), "7"},
    Size{mm(5), "8"},
    Size{mm(5.5), "9"},
    Size{mm(6), "10"},
    Size{mm(6.5), "10.5"},
    Size{mm(8), "11"},
    Size{mm(9), "13"},
    Size{mm(10), "15"},
    Size{mm(12.75), "17", false},
    Size{mm(15), "19", false},
    Size{mm(19), "35", false},
    Size{mm(20), "36", false},
    Size{mm(25), "50", false},
};

constexpr std::string_view dash = "–";

// Takes `word` off the front or, with `at_end`, off the end; whether it was there.
bool take_off(std::string_view& text, std::string_view word, bool at_end = false) {
    if (!(at_end ? text.ends_with(word) : text.starts_with(word))) return false;
    if (at_end) {
        text.remove_suffix(word.size());
    } else {
        text.remove_prefix(word.size());
    }
    text = trimmed(text);
    return true;
}

struct Ends {
    std::string_view least, most;
};

// The two ends of "2.25–2.75", "2.25 to 2.75"; twice the same where there is one.
Ends ends_of(std::string_view text) {
    for (const std::string_view mark : {dash, std::string_view{"-"}, std::string_view{" to "}}) {
        const std::size_t at = text.find(mark);
        if (at == std::string_view::npos) continue;
        return {trimmed(text.substr(0, at)), trimmed(text.substr(at + mark.size()))};
    }
    return {text, text};
}

std::optional<Span<Length>> in_order(Length least, Length most) {
    if (most < least) return std::nullopt;
    return Span<Length>{least, most};
}

std::optional<Span<Length>> parse_metric(Ends ends) {
    take_off(ends.least, "mm", true); // "2.25 mm–2.75 mm"
    const auto least = parse_decimal(ends.least);
    const auto most = parse_decimal(ends.most);
    if (!least || !most) return std::nullopt;
    return in_order(mm(*least), mm(*most));
}

std::optional<Span<Length>> parse_us(Ends ends) {
    take_off(ends.most, "us"); // "US 1–US 2"
    const auto least = needle_diameter(ends.least);
    const auto most = needle_diameter(ends.most);
    if (!least || !most) return std::nullopt;
    return in_order(*least, *most);
}

} // namespace

std::optional<std::string_view> us_needle_size(Length diameter) {
    const auto size = std::ranges::find_if(sizes, [&](const Size& one) { return near(one.diameter, diameter); });
    if (size == sizes.end()) return std::nullopt;
    return size->us;
}

std::optional<Length> needle_diameter(std::string_view us_size) {
    const auto size = std::ranges::find(sizes, us_size, &Size::us);
    if (size == sizes.end() || !size->sure) return std::nullopt;
    return size->diameter;
}

std::optional<Span<Length>> parse_needles(std::string_view text) {
    const std::string lower = lower_case(trimmed(text));
    std::string_view rest = lower;
    if (take_off(rest, "mm", true)) return parse_metric(ends_of(rest));
    if (!take_off(rest, "us")) return std::nullopt;
    take_off(rest, "size");
    return parse_us(ends_of(rest));
}

} // namespace dyeleaf
