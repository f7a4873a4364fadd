#include "symbols/symbols.h"

#include "symbols/care_symbols.h"
#include "symbols/ghs_pictograms.h"

#include <map>
#include <string>

namespace dyeleaf {

namespace {

using Drawings = std::map<std::string, std::shared_ptr<const DisplayList>, std::less<>>;

Drawings all_drawings(bool mono) {
    Drawings drawings;
    for (auto& [name, list] : care_symbols())
        drawings.emplace("care/" + name, std::make_shared<const DisplayList>(std::move(list)));
    for (auto& [name, list] : ghs_pictograms(mono))
        drawings.emplace("ghs/" + name, std::make_shared<const DisplayList>(std::move(list)));
    return drawings;
}

} // namespace

std::shared_ptr<const DisplayList> symbol_drawing(std::string_view key, bool mono) {
    static const Drawings coloured = all_drawings(false);
    static const Drawings black = all_drawings(true);
    const Drawings& drawings = mono ? black : coloured;
    const auto found = drawings.find(key);
    return found == drawings.end() ? nullptr : found->second;
}

// Regulation (EC) No 1272/2008 (CLP), Annex I, table 1.3: no pictogram below 10 mm by 10 mm. That is the side of the
// red frame, which stands on a point. Care symbols: from 5 mm they can be told apart (common practice).
SymbolRules symbol_rules(std::string_view key) {
    if (key.starts_with("ghs/")) return {ghs_height(least_pictogram_side), true};
    return {mm(5), false};
}

} // namespace dyeleaf
