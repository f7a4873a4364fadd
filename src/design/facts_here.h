// Which facts can be placed at one spot of a layout, and what is said when another is asked for.
#pragma once

#include "base/reach.h"
#include "design/design.h"
#include "design/read_style.h"

#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

struct BoxContext {
    StyleContext styles;
    ItemKind items;                       // what the layout is for
    std::vector<const Vocabulary*> facts; // what can be placed here, innermost first
    Reach folder;                         // of the layout file: where its pictures lie
};

// The fact of that name, or null and an error: unknown here, or of none of the `wanted` kinds (none named: any kind).
const FactRow* find_fact(const std::string& name, const Spot& spot, const std::vector<FactKind>& wanted,
                         const BoxContext& context);

// A length with a unit, or a length fact's name.
std::optional<LengthOrFact> read_length_or_fact(const Node& node, const std::string& what, const BoxContext& context);

} // namespace dyeleaf
