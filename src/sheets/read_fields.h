// What the readers of stock files share.
#pragma once

#include "source/fields.h"
#include "source/values.h"

#include <optional>
#include <string>
#include <string_view>

namespace dyeleaf {

// Absent is an error.
std::optional<Length> need_length(Fields& fields, std::string_view key, LengthRange range);
// As written, or `otherwise`.
Length take_length(Fields& fields, std::string_view key, LengthRange range, Length otherwise);
bool take_yes_no(Fields& fields, std::string_view key, bool otherwise);
// What has no meaning for this kind of stock would otherwise seem to work: written, it is an error.
void refuse(Fields& fields, std::string_view key, const std::string& why);

} // namespace dyeleaf
