// One box of a layout file, with all that it holds.
#pragma once

#include "design/read_style.h"

#include <vector>

namespace dyeleaf {

struct BoxContext {
    StyleContext styles;
    ItemKind items;                       // what the layout is for
    std::vector<const Vocabulary*> facts; // what can be placed here, innermost first
    std::string folder;                   // of the layout file: where its pictures lie
};

Box read_box(const Node& node, const BoxContext& context);

// A fact's name where one is wanted, checked against the vocabularies; an error when it is unknown or of another kind.
const FactRow* find_fact(const std::string& name, const Spot& spot, const std::vector<FactKind>& kinds,
                         const BoxContext& context);

// A length with a unit, or a length fact's name.
std::optional<LengthOrFact> read_length_or_fact(const Node& node, const std::string& what, const BoxContext& context);

} // namespace dyeleaf
