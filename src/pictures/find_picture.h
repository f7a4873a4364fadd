// A picture by the name that somebody wrote for it.
#pragma once

#include "base/diagnostic.h"
#include "base/reach.h"
#include "pictures/picture_file.h"

#include <optional>
#include <string>
#include <string_view>

namespace dyeleaf {

// Whether the name ends as those of picture files do, printable ones or not: ".jpg", ".svg", ".heic" …
bool names_a_picture(std::string_view name);

// The picture called `name`, as seen from the home of `reach`; or nothing and an error at `spot`: out of reach, not
// there (with the nearest name, or those there are), or with a fault.
std::optional<PictureFile> find_picture(const std::string& name, const Reach& reach, const Spot& spot,
                                        Diagnostics& diagnostics);

} // namespace dyeleaf
