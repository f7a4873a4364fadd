#include "cli/data_folder.h"

#include "base/words.h"

#include <vector>

namespace dyeleaf {

namespace {

bool holds_data(const std::filesystem::path& folder) {
    std::error_code error;
    return std::filesystem::is_directory(folder / "fonts", error) &&
           std::filesystem::is_directory(folder / "layouts", error);
}

} // namespace

std::optional<std::filesystem::path> find_data_folder(const std::optional<std::string>& home,
                                                      const std::filesystem::path& program,
                                                      const std::filesystem::path& source_folder,
                                                      Diagnostics& diagnostics) {
    if (home) {
        if (holds_data(*home)) return *home;
        diagnostics.error({}, "DYELEAF_HOME is " + in_quotes(*home) + ", which has no folders “fonts” and “layouts”",
                          "set it to the folder that has them, or unset it");
        return std::nullopt;
    }
    const std::filesystem::path beside = program.parent_path();
    const std::vector<std::filesystem::path> places = {(beside / ".." / "share" / "dyeleaf").lexically_normal(),
                                                       (beside / "..").lexically_normal(), source_folder};
    std::vector<std::string> looked;
    for (const std::filesystem::path& place : places) {
        if (holds_data(place)) return place;
        looked.push_back(place.string());
    }
    diagnostics.error({}, "the fonts and layouts that come with dyeleaf are missing; looked in " + joined(looked, ", "),
                      "install dyeleaf again, or set DYELEAF_HOME to the folder that has them");
    return std::nullopt;
}

std::filesystem::path program_file(const std::filesystem::path& called_as) {
    std::error_code error;
    const std::filesystem::path file = std::filesystem::read_symlink("/proc/self/exe", error);
    return error ? called_as : file;
}

} // namespace dyeleaf
