#include "pictures/find_picture.h"

#include "base/nearest.h"
#include "base/words.h"
#include "pictures/read_picture.h"

#include <algorithm>
#include <array>
#include <utility>
#include <vector>

namespace dyeleaf {

namespace {

constexpr std::array printable = {".jpg", ".jpeg", ".png", ".svg"};
constexpr std::array others = {".heic", ".heif", ".avif", ".gif", ".webp", ".tif", ".tiff", ".bmp", ".pdf", ".svgz"};

template <class Endings> bool ends_as(std::string_view name, const Endings& endings) {
    const std::string small = lower_case(name);
    return std::ranges::any_of(endings, [&](std::string_view ending) { return small.ends_with(ending); });
}

bool stays_inside(const std::filesystem::path& name) {
    return name.is_relative() && std::ranges::none_of(name, [](const auto& part) { return part == ".."; }) &&
           name.string().find('\\') == std::string::npos;
}

std::vector<std::string> pictures_in(const std::filesystem::path& folder) {
    std::vector<std::string> names;
    std::error_code error; // a folder that cannot be read has none to offer
    for (auto entry = std::filesystem::directory_iterator{folder, error};
         !error && entry != std::filesystem::directory_iterator{}; entry.increment(error)) {
        const std::string name = entry->path().filename().string();
        if (!name.starts_with('.') && ends_as(name, printable)) names.push_back(name);
    }
    std::ranges::sort(names);
    return names;
}

std::string offer(const std::string& name, const std::filesystem::path& folder) {
    const auto names = pictures_in(folder);
    return names.empty() ? "put the picture there: a JPEG, PNG or SVG file" : suggest(name, names);
}

} // namespace

bool names_a_picture(std::string_view name) {
    return ends_as(name, printable) || ends_as(name, others);
}

std::optional<PictureFile> find_picture(const std::string& name, const Reach& reach, const Spot& spot,
                                        Diagnostics& diagnostics) {
    const std::filesystem::path file = reach.home / name; // a path from the root stands for itself
    const bool inside = stays_inside(name);
    const bool reached = (inside || !reach.also.empty()) && reach.holds(file);
    if (!inside && !reached) {
        diagnostics.error(spot, "the picture must lie in the folder of this file",
                          "copy it there and write its name alone, or allow its folder with --also-read FOLDER");
        return std::nullopt;
    }
    std::error_code ignored;
    if (!std::filesystem::exists(file, ignored)) {
        diagnostics.error(spot, "there is no picture called " + in_quotes(name) + (inside ? " beside this file" : ""),
                          offer(name, file.parent_path()));
        return std::nullopt;
    }
    if (!reached) {
        diagnostics.error(spot,
                          "the picture " + in_quotes(name) + " is a link to a file outside the folder of this file",
                          "copy the file itself there, or allow its folder with --also-read FOLDER");
        return std::nullopt;
    }
    PictureOrFault picture = read_picture(file.string());
    if (auto* sound = std::get_if<PictureFile>(&picture)) return std::move(*sound);
    const auto& fault = std::get<PictureFault>(picture);
    diagnostics.error(spot, "the picture " + in_quotes(name) + " " + fault.message, fault.help);
    return std::nullopt;
}

} // namespace dyeleaf
