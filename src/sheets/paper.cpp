#include "sheets/stock.h"

#include "base/words.h"

#include <algorithm>
#include <array>

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

} // namespace

std::optional<Size> find_paper(std::string_view name) {
    const std::string wanted = lower_case(name);
    const auto found =
        std::ranges::find_if(papers, [&](const Paper& paper) { return lower_case(paper.name) == wanted; });
    if (found == papers.end()) return std::nullopt;
    return found->size;
}

std::vector<std::string> paper_names() {
    std::vector<std::string> names;
    names.reserve(papers.size());
    for (const Paper& paper : papers)
        names.emplace_back(paper.name);
    return names;
}

std::string measures(Size size) {
    const std::string width = to_string(size.width);
    return width.substr(0, width.find(' ')) + " × " + to_string(size.height); // the unit is said once
}

} // namespace dyeleaf
