// The facts of what a skein holds, for a base, a lot and a skein alike: weight, length, and both on one line, each in
// the studio's first system of units and in its second.
#pragma once

#include "facts/put_up.h"
#include "facts/rows.h"

#include <string>
#include <vector>

namespace dyeleaf {

// In the studio's first system of units.
template <class View, class Statement> auto in_first_units(Statement statement) {
    return [statement](const View& view, const Manner& m) {
        return statement(m.language, size_of(view), first_system(view.records->studio.units));
    };
}

// In the second, where tags state both.
template <class View, class Statement> auto in_second_units(Statement statement) {
    return [statement](const View& view, const Manner& m) -> std::optional<std::string> {
        const auto system = second_system(view.records->studio.units);
        if (!system) return std::nullopt;
        return statement(m.language, size_of(view), *system);
    };
}

// `subject` begins the names: "base" gives "base.weight". Requires: size_of(View), and the records in the view.
template <class View> std::vector<FactRow> put_up_rows(const std::string& subject) {
    using Row = Rows<View>;
    const std::string agreement = "yard and pound agreement of 1959; rounding: common practice";
    const Derivation weight{"g or oz", "as written, or rounded down to 1 g or 0.1 oz", agreement};
    const Derivation length{"m or yd", "as written, or rounded down to 5, below 50 to 1", agreement};
    const Derivation put_up{"", "weight and length as above", agreement};
    const std::string other = "the same in the other units, where both are used";
    return {
        Row::text(subject + ".weight", "of one skein", in_first_units<View>(weight_statement), weight),
        Row::text(subject + ".weight.other", other, in_second_units<View>(weight_statement), weight),
        Row::text(subject + ".length", "of one skein", in_first_units<View>(length_statement), length),
        Row::text(subject + ".length.other", other, in_second_units<View>(length_statement), length),
        Row::text(subject + ".put_up", "weight and length of one skein", in_first_units<View>(put_up_statement),
                  put_up),
        Row::text(subject + ".put_up.other", other, in_second_units<View>(put_up_statement), put_up),
    };
}

} // namespace dyeleaf
