// Where things are made before they are put in place.
#pragma once

#include <filesystem>

namespace dyeleaf {

std::filesystem::path folder_of(const std::filesystem::path& target);

// A hidden name beside the target, since a rename must not leave the disk. Nothing is there; what runs that were cut
// short have left behind for this target is cleared away as well.
std::filesystem::path temporary_beside(const std::filesystem::path& target);

} // namespace dyeleaf
