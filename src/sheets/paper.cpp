#include "sheets/stock.h"

#include "base/words.h"

#include <algorithm>
#include <array>
#include <span>

namespace dyeleaf {

namespace {

struct Paper {
    std::string_view name;
    Size size;
};

constexpr std::array papers = {
    // ISO 216:2007, main series A.
    Paper{"A3", {mm(297), mm(420)}},
    Paper{"A4", {mm(210), mm(297)}},
    Paper{"A5", {mm(148), mm(210)}},
    Paper{"A6", {mm(105), mm(148)}},
    Paper{"A7", {mm(74), mm(105)}},
    Paper{"A8", {mm(52), mm(74)}},
    // ISO 217:2013, supplementary raw sizes: print shops trim A3 and A4 from them.
    Paper{"SRA3", {mm(320), mm(450)}},
    Paper{"SRA4", {mm(225), mm(320)}},
    // ANSI/ASME Y14.1 size A, and the office sizes derived from it, in whole and half inches.
    Paper{"Letter", {inches(8.5), inches(11)}},
    Paper{"half-letter", {inches(5.5), inches(8.5)}},
    Paper{"Legal", {inches(8.5), inches(14)}},
    // ISO/IEC 7810 ID-1, the bank card, which lies on its side.
    Paper{"ID-1", {mm(85.60), mm(53.98)}},
};

// No standard is known to us; common sizes, from memory.
constexpr std::array pouches = {
    Paper{"A3", {mm(303), mm(426)}}, Paper{"A4", {mm(216), mm(303)}}, Paper{"A5", {mm(154), mm(216)}},
    Paper{"A6", {mm(111), mm(154)}}, Paper{"A7", {mm(80), mm(111)}},  Paper{"Letter", {inches(9), inches(11.5)}},
};

std::optional<Size> find_named(std::span<const Paper> all, std::string_view name) {
    const std::string wanted = lower_case(name);
    const auto found = std::ranges::find_if(all, [&](const Paper& one) { return lower_case(one.name) == wanted; });
    if (found == all.end()) return std::nullopt;
    return found->size;
}

std::vector<std::string> names_of(std::span<const Paper> all) {
    std::vector<std::string> names;
    names.reserve(all.size());
    for (const Paper& one : all)
        names.emplace_back(one.name);
    return names;
}

} // namespace

std::optional<Size> find_paper(std::string_view name) {
    return find_named(papers, name);
}

std::vector<std::string> paper_names() {
    return names_of(papers);
}

std::optional<Size> find_pouch(std::string_view name) {
    return find_named(pouches, name);
}

std::vector<std::string> pouch_names() {
    return names_of(pouches);
}

std::string measures(Size size) {
    const std::string width = to_string(size.width);
    return width.substr(0, width.find(' ')) + " × " + to_string(size.height); // the unit is said once
}

} // namespace dyeleaf
