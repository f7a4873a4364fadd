// Amounts as people write them: a number and its unit.
#pragma once

#include "source/document.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace dyeleaf {

struct Unit {
    std::string_view name;
    double factor; // times this is the quantity's own unit
};

// What is measured, and in which units; the first is the one that examples use.
struct Dimension {
    std::string_view noun;
    std::span<const Unit> units;
};

// The dimensions that records and layouts know.
namespace dimensions {
extern const Dimension paper_length, type_size, yarn_length, mass, volume, density, share, resolution, areal_density;
}

struct Bounds {
    double least, most; // in the quantity's own unit, both allowed
};

// The number in the quantity's own unit, within `bounds`; else an error that shows the fix. `what` names the field.
std::optional<double> read_amount(const Node& node, const std::string& what, const Dimension& dimension, Bounds bounds,
                                  Diagnostics& diagnostics);

// What stands within “curly” quotation marks, which word processors make of straight ones; nothing without them.
std::optional<std::string> within_curly_quotes(std::string_view text);
// Complains about such marks around the whole of a value, and says whether there were any.
bool refuse_curly_quotes(const Node& node, std::string_view text, Diagnostics& diagnostics);

// `text` with a decimal point for a decimal comma. A comma in quotes is read so, with a warning; elsewhere it is an
// error and there is nothing: it might part two values of a list. So is one that might part thousands.
std::optional<std::string> with_decimal_point(const Node& node, const std::string& text, Diagnostics& diagnostics);

} // namespace dyeleaf
