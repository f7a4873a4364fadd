#include "project_folder.h"

namespace dyeleaf {

std::filesystem::path project_folder() {
    return DYELEAF_PROJECT;
}

std::filesystem::path fonts_folder() {
    return project_folder() / "fonts";
}

} // namespace dyeleaf
