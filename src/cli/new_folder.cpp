#include "cli/new_folder.h"

#include "base/words.h"

#include <algorithm>

namespace dyeleaf {

namespace fs = std::filesystem;

namespace {

bool may_be_made(const fs::path& folder, Diagnostics& diagnostics) {
    const std::string name = in_quotes(folder.string());
    if (!fs::exists(folder)) return true;
    if (!fs::is_directory(folder)) {
        diagnostics.error({}, name + " is there already and is not a folder", "choose another name");
        return false;
    }
    if (fs::is_empty(folder)) return true;
    diagnostics.error({}, name + " is there already and holds files; nothing was changed", "choose another name");
    return false;
}

} // namespace

std::vector<fs::path> make_folder(const fs::path& folder, const fs::path& example, Diagnostics& diagnostics) {
    std::vector<fs::path> made;
    try {
        if (!may_be_made(folder, diagnostics)) return {};
        fs::create_directories(folder);
        for (const auto& entry : fs::recursive_directory_iterator{example}) {
            const fs::path target = folder / fs::relative(entry.path(), example);
            if (entry.is_directory()) {
                fs::create_directories(target);
            } else {
                fs::copy_file(entry.path(), target);
                // The example may be installed read-only; the copy is hers to change.
                fs::permissions(target, fs::perms::owner_write, fs::perm_options::add);
                made.push_back(target);
            }
        }
    } catch (const fs::filesystem_error& error) {
        diagnostics.error({}, in_quotes(folder.string()) + " could not be made: " + error.code().message(),
                          "check that you may write there");
    }
    std::ranges::sort(made);
    return made;
}

} // namespace dyeleaf
