// The codes of precautionary statements.
#pragma once

#include <span>
#include <string_view>

namespace dyeleaf {

// Those that have a text of their own, single and combined: "P261", "P305+P351+P338". EU CLP, annex IV, part 1, in the
// version of 2021, and those that the UN has added since (GHS, ninth and tenth edition, annex 3).
std::span<const std::string_view> precaution_codes();
bool is_precaution_code(std::string_view code);
// Whether its text, or that of one of its parts, has a blank that the supplier's sheet fills in: "Wash … thoroughly".
bool is_precaution_with_blank(std::string_view code);

} // namespace dyeleaf
