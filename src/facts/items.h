// What a layout is made for: one label a dye, a jar, a skein …, or several dyes together on one.
#pragma once

#include "base/date.h"
#include "base/diagnostic.h"
#include "facts/facts.h"
#include "records/records.h"

#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

enum class ItemKind { dyes, jars, skeins, lots, bases };

// How dyes share a label: at most `most` on one, in hue order or by line; a new line starts a new label.
enum class Together { by_line, by_hue };
struct Grouping {
    int most = 1;
    Together together = Together::by_line;
};

// Which of the records are wanted. Each selector is the id of one, or else what several may have in common: for dyes a
// code or a line; for jars a code, or the id, code or line of a dye in them; for lots and skeins a colourway or the id
// of a base. `LOT:FIRST-LAST` names skeins. Ids are exact; codes and names ignore case.
struct Selection {
    std::vector<std::string> only; // empty: all
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
// recorded, skeins by number with spoilt ones left out. `today` is what "date printed" says. A selector that names
// nothing is an error with the nearest name. The records must outlive the items.
std::vector<Item> make_items(const Records& records, ItemKind kind, const std::optional<Grouping>& grouping,
                             const Selection& selection, const Date& today, Diagnostics& diagnostics);

} // namespace dyeleaf
