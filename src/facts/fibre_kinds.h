// The fibres that laws have names for.
#pragma once

#include "base/quantity.h"

#include <optional>
#include <span>
#include <string_view>

namespace dyeleaf {

struct FibreKind {
    enum class Nature { wool, hair, silk, plant, regenerated, synthetic, other };

    std::string_view eu;    // the names that the EU and the UK know, split by |, the usual one first; empty: none
    std::string_view us;    // those that the US knows
    std::string_view trade; // what yarn sellers call it besides, where that can mean nothing else
    Nature nature;
    std::optional<Percent> allowance; // of moisture, on the dry mass; of a carded yarn where it makes a difference
    std::optional<Percent> combed = std::nullopt; // where a combed yarn has another
};

// All of them.
std::span<const FibreKind> fibre_kinds();
// Sheep's wool.
const FibreKind& wool_kind();
// “other fibres”, by which small shares may go together.
const FibreKind& other_fibres();

// The name in a list split by | that is `name`, letters' case aside; empty where none is.
std::string_view found_among(std::string_view name, std::string_view names);
std::string_view first_of(std::string_view names);

} // namespace dyeleaf
