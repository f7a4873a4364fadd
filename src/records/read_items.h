// One reader for each kind of record. Each reports what is wrong and returns what was sound; nothing when there is no
// usable id, since no other record could refer to it. What needs several records is left to check_records.
#pragma once

#include "records/records.h"
#include "source/document.h"

#include <optional>

namespace dyeleaf {

Studio read_studio(const Node& node, Diagnostics& diagnostics);
// Stands for one that could not be read: with the most decimals there are, so that no price is blamed for it.
Currency unread_currency();
// Whether its paper is one, and its lines are as long as they may be, is known where papers are.
std::optional<Printer> read_printer(const Node& node, Diagnostics& diagnostics);
std::optional<Ingredient> read_ingredient(const Node& node, Diagnostics& diagnostics);
std::optional<Dye> read_dye(const Node& node, Diagnostics& diagnostics);
// The parts' ids are not looked up yet: `is_dye` is set by check_records.
std::optional<Jar> read_jar(const Node& node, Diagnostics& diagnostics);
std::optional<Base> read_base(const Node& node, Diagnostics& diagnostics);
// `currency` is the studio's; without a code, a price is an error.
std::optional<Lot> read_lot(const Node& node, const Currency& currency, Diagnostics& diagnostics);

} // namespace dyeleaf
