// What was probably meant by a text that is no colour here.
#pragma once

#include "colour/matrix.h"
#include "records/complaint.h"

#include <optional>
#include <string>
#include <string_view>

namespace dyeleaf {

Complaint guess_colour(std::string_view text);

// What to write for red, green and blue from 0 to 255; nothing where they are not.
std::optional<std::string> about_bytes(const Triple& values);

} // namespace dyeleaf
