#include "facts/yarn_weight_class.h"

#include "base/words.h"

#include <algorithm>
#include <array>
#include <string>

namespace dyeleaf {

namespace {

constexpr Span<Length> needle(double least, double most) {
    return {mm(least), mm(most)};
}

constexpr Span<Length> reach(double least, double most) {
    return {metres(least), metres(most)};
}

constexpr Span<Length> from(Length least) {
    return {least, std::nullopt};
}

constexpr Span<Length> up_to(Length most) {
    return {std::nullopt, most};
}

// Numbers, names, stitches, needles and hooks: Craft Yarn Council, Standard Yarn Weight System. (Its table gives lace
// steel hooks too, of 1.4 to 1.6 mm.) Stitches and hooks of super bulky and jumbo from
// memory. Lengths in 100 g: common practice among yarn shops, whose tables overlap; those of super bulky and the open
// ends from memory.
constexpr std::array<YarnWeightClass, 8> classes = {{
    {0, "lace", "2-ply", {33, 40}, needle(1.5, 2.25), needle(2.25, 2.25), {"B-1", "B-1"}, from(metres(600))},
    {1, "super fine", "4-ply", {27, 32}, needle(2.25, 3.25), needle(2.25, 3.5), {"B-1", "E-4"}, reach(350, 450)},
    {2, "fine", "sport", {23, 26}, needle(3.25, 3.75), needle(3.5, 4.5), {"E-4", "7"}, reach(250, 350)},
    {3, "light", "DK", {21, 24}, needle(3.75, 4.5), needle(4.5, 5.5), {"7", "I-9"}, reach(200, 250)},
    {4, "medium", "aran", {16, 20}, needle(4.5, 5.5), needle(5.5, 6.5), {"I-9", "K-10½"}, reach(120, 200)},
    {5, "bulky", "chunky", {12, 15}, needle(5.5, 8), needle(6.5, 9), {"K-10½", "M-13"}, reach(100, 130)},
    {6, "super bulky", "super chunky", {7, 11}, needle(8, 12.75), needle(9, 15), {"M-13", "Q"}, up_to(metres(100))},
    {7, "jumbo", "jumbo", {{}, 6}, from(mm(12.75)), from(mm(15)), {"Q", {}}, up_to(metres(100))},
}};

struct Name {
    std::string_view words;
    int number;
};

// The council's names and types of yarn, without those that it has in two classes (baby, roving); the plies as Britain
// and Australia count them. Longer names first, so that "super fine" is not taken for "fine".
constexpr std::array class_names = {
    Name{"double knitting", 3},
    Name{"double knit", 3},
    Name{"light worsted", 3},
    Name{"super bulky", 6},
    Name{"super chunky", 6},
    Name{"super fine", 1},
    Name{"lace weight", 0},
    Name{"2 ply", 0},
    Name{"4 ply", 1},
    Name{"5 ply", 2},
    Name{"8 ply", 3},
    Name{"10 ply", 4},
    Name{"12 ply", 5},
    Name{"superfine", 1},
    Name{"laceweight", 0},
    Name{"lace", 0},
    Name{"fingering", 1},
    Name{"sock", 1},
    Name{"sport", 2},
    Name{"fine", 2},
    Name{"dk", 3},
    Name{"light", 3},
    Name{"medium", 4},
    Name{"worsted", 4},
    Name{"afghan", 4},
    Name{"aran", 4},
    Name{"chunky", 5},
    Name{"bulky", 5},
    Name{"craft", 5},
    Name{"rug", 5},
    Name{"jumbo", 7},
};

enum class Sort { letter, digit, other };

Sort kind_of(char c) {
    if (c >= '0' && c <= '9') return Sort::digit;
    const auto byte = static_cast<unsigned char>(c);
    return (c >= 'a' && c <= 'z') || byte >= 0x80 ? Sort::letter : Sort::other;
}

// " 4 ply fingering " for "4ply/Fingering": words with single spaces before, between and behind them.
std::string plain_words(std::string_view text) {
    std::string plain = " ";
    Sort last = Sort::other;
    for (const char c : lower_case(text)) {
        const Sort kind = kind_of(c);
        if (kind != last && plain.back() != ' ') plain += ' ';
        if (kind != Sort::other) plain += c;
        last = kind;
    }
    if (plain.back() != ' ') plain += ' ';
    return plain;
}

Length middle(const Span<Length>& span) {
    const Length least = span.least.value_or(Length{});
    return (least + span.most.value_or(least)) / 2;
}

// How far a length lies outside of a span; nothing where it lies within.
Length outside(Length length, const Span<Length>& span) {
    if (span.least && length < *span.least) return *span.least - length;
    if (span.most && length > *span.most) return length - *span.most;
    return Length{};
}

} // namespace

std::optional<YarnWeightClass> find_yarn_weight_class(std::string_view words) {
    std::string rest = plain_words(words);
    std::optional<int> found;
    for (const Name& name : class_names) {
        const std::string sought = " " + std::string{name.words} + " ";
        const std::size_t at = rest.find(sought);
        if (at == std::string::npos) continue;
        if (found && *found != name.number) return std::nullopt;
        found = name.number;
        rest.replace(at, sought.size(), " | "); // neither its own words nor those beside it make another name
    }
    if (!found) return std::nullopt;
    return classes.at(static_cast<std::size_t>(*found));
}

bool is_usual(Length in_hundred_grams, const YarnWeightClass& weight) {
    constexpr double tolerance = 0.1; // common practice
    const auto& [least, most] = weight.in_hundred_grams;
    return !(least && in_hundred_grams < *least * (1 - tolerance)) &&
           !(most && in_hundred_grams > *most * (1 + tolerance));
}

YarnWeightClass yarn_weight_class_of(Length in_hundred_grams) {
    const auto farther = [&](const YarnWeightClass& a, const YarnWeightClass& b) {
        const Length a_outside = outside(in_hundred_grams, a.in_hundred_grams);
        const Length b_outside = outside(in_hundred_grams, b.in_hundred_grams);
        if (a_outside != b_outside) return a_outside < b_outside;
        const auto from_middle = [&](const YarnWeightClass& one) {
            const Length away = in_hundred_grams - middle(one.in_hundred_grams);
            return larger(away, -away);
        };
        return from_middle(a) < from_middle(b);
    };
    return *std::ranges::min_element(classes, farther);
}

} // namespace dyeleaf
