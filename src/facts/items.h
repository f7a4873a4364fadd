// What a layout is made for: one label a dye, a jar, a skein …, or several dyes together on one.
#pragma once

#include "base/date.h"
#include "base/diagnostic.h"
#include "facts/card_facts.h"
#include "facts/facts.h"
#include "records/records.h"

#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

enum class ItemKind { dyes, jars, skeins, lots, bases };

// Which of the records are wanted. Each selector is the id of one, or else what several may have in common: for dyes a
// code or a line; for jars a code, or the id, code or line of a dye in them; for lots and skeins a colourway or the id
// of a base. `LOT:FIRST-LAST` names skeins. Ids are exact; codes and names ignore case.
struct Selection {
    std::vector<std::string> only; // empty: all
};

// How the labels print. The languages must outlive the items.
struct Printing {
    Manner manner;
    const Language* second = nullptr; // beside the first, where a layout asks for it
    Date today;                       // what "date printed" says
    bool counted = true;              // cards know their place in the set; no: to compare one with an older one
};

struct Item {
    std::string id; // names it in complaints and lists: "sloe", "26-117:3"
    Facts facts;
    Spot spot; // where its record stands
};

// The vocabularies that a layout for `kind` may draw on, innermost first. `grouped` adds the facts of a card that holds
// several dyes (`card.dyes` is then the list, and `dye.…` stands only inside it).
std::vector<const Vocabulary*> vocabularies(ItemKind kind, bool grouped);

// The items in the order in which they print: dyes by line as first recorded and by hue within it, jars and lots as
// recorded, skeins by number with spoilt ones left out. A selector that names nothing is an error with the nearest
// name. The records must outlive the items.
std::vector<Item> make_items(const Records& records, ItemKind kind, const std::optional<Grouping>& grouping,
                             const Selection& selection, const Printing& printing, Diagnostics& diagnostics);

} // namespace dyeleaf
