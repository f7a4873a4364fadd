// Where this project's own files lie. Only project_folder.cpp knows the path, so that the other tests compile to the
// same objects in every checkout.
#pragma once

#include <filesystem>

namespace dyeleaf {

std::filesystem::path project_folder();
std::filesystem::path fonts_folder();

} // namespace dyeleaf
