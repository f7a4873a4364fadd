#include "cli/check_folder.h"

#include "base/words.h"
#include "cli/report.h"

#include <algorithm>
#include <array>
#include <memory>
#include <string_view>
#include <system_error>

namespace dyeleaf {

namespace {

namespace fs = std::filesystem;

bool is_read(const fs::path& file) {
    constexpr std::array<std::string_view, 4> endings = {".yaml", ".yml", ".otf", ".ttf"};
    return file.filename() == "printed.txt" ||
           std::ranges::find(endings, lower_case(file.extension().string())) != endings.end();
}

// Whether this is a link that leads out. One that leads nowhere is complained of by those who read it.
bool leads_out(const fs::path& file, const Reach& studio) {
    std::error_code problem;
    return fs::is_symlink(file, problem) && fs::exists(file, problem) && !studio.holds(file);
}

Spot at(const fs::path& file) {
    return {std::make_shared<const SourceFile>(SourceFile{file.string(), {}}), 0, 0, 1};
}

void complain(const fs::path& link, std::string_view kind, Diagnostics& diagnostics) {
    std::error_code ignored;
    const fs::path real = fs::canonical(link, ignored);
    const fs::path allowed = kind == "file" ? real.parent_path() : real;
    diagnostics.error(at(link), "this is a link to a " + std::string{kind} + " outside the folder of your records",
                      "copy the " + std::string{kind} + " itself here, or allow it with --also-read " +
                          as_typed(allowed.string()));
}

void check_files(const fs::path& folder, const Reach& studio, Diagnostics& diagnostics) {
    std::error_code problem;
    auto entry = fs::directory_iterator{folder, problem};
    for (; !problem && entry != fs::directory_iterator{}; entry.increment(problem)) {
        if (is_read(entry->path()) && leads_out(entry->path(), studio)) complain(*entry, "file", diagnostics);
    }
    if (problem)
        diagnostics.error(at(folder), "this folder cannot be read: " + problem.message(), "check who may read it");
}

} // namespace

void check_folder(const Reach& studio, Diagnostics& diagnostics) {
    std::error_code ignored;
    for (const fs::path& folder : studio.also) {
        if (!fs::is_directory(folder, ignored)) {
            diagnostics.error({}, "there is no folder " + in_quotes(folder.string()),
                              "check its name: --also-read takes a folder");
        }
    }
    if (!fs::is_directory(studio.home, ignored)) return; // which those say who read it
    check_files(studio.home, studio, diagnostics);
    for (const char* name : {"layouts", "layouts/stocks", "layouts/styles", "layouts/languages", "fonts"}) {
        const fs::path folder = studio.home / name;
        if (!fs::exists(fs::symlink_status(folder, ignored))) continue;
        if (!fs::is_directory(folder, ignored)) {
            diagnostics.error(at(folder), "this is not a folder",
                              "a folder of this name is for what is your own: give this another name");
        } else if (leads_out(folder, studio)) {
            complain(folder, "folder", diagnostics);
        } else {
            check_files(folder, studio, diagnostics);
        }
    }
}

} // namespace dyeleaf
