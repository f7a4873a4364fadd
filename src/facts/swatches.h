// A dye's swatches in order, and the patches of colour that stand for them.
#pragma once

#include "facts/facts.h"
#include "language/language.h"
#include "records/records.h"

#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

// Of a photograph, what was read; requires that read_pictures has looked into it.
Lab lab_of(const RecordedColour& colour);
Rgb rgb_of(const RecordedColour& colour);
// Whether it is stronger than sRGB can show.
bool is_beyond_print(const RecordedColour& colour);
// Whether that is so of one of its swatches; never of a fluorescent dye, which does not print at all.
bool is_beyond_print(const Dye& dye);

using Swatches = std::vector<const Swatch*>;

// By base as first recorded, then by depth, lightest first.
Swatches swatches_in_order(const Dye& dye);
// The ids of the bases that the dye was swatched on, as first recorded.
std::vector<std::string> swatched_bases(const Dye& dye);
// Each depth once, lightest first.
std::vector<Percent> swatched_depths(const Dye& dye);
Swatches swatches_on(const Dye& dye, const std::string& base_id);
// When they were dyed: "14 Mar 2026", "14 Mar 2026 to 2 Jun 2026", "2024, one undated"; "date unknown" where all that
// is recorded is that; nothing where no date is recorded of any.
std::optional<std::string> swatching_dates(const Language& language, const Swatches& swatches);
// The last recorded one, one with a colour before one without; null where there is none.
const Swatch* swatch_at(const Dye& dye, Percent depth, const std::string& base_id);
// The deepest with a colour, else the deepest; the first recorded of equal ones; null where there is none.
const Swatch* deepest_swatch(const Dye& dye);
std::optional<Lab> deepest_colour(const Dye& dye);

Patch patch_of(const Language& language, const Records& records, const Dye& dye, const Swatch& swatch);
// An empty frame where the dye was not swatched so.
Patch patch_at(const Language& language, const Records& records, const Dye& dye, Percent depth,
               const std::string& base_id);
// "Sloe at 0.71 % on Plain Sock, estimated between swatches".
std::string estimated_words(const Language& language, const Records& records, const Dye& dye, Percent depth,
                            const std::string& base_id);
Patch deepest_patch(const Language& language, const Records& records, const Dye& dye);
Patch patch_of(const Language& language, const Records& records, const Dye& dye, const Component& component);
Patch patch_of(const Language& language, const Records& records, const Lot& lot);

} // namespace dyeleaf
