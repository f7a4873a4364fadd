#include "cli/new_folder.h"

#include "base/words.h"
#include "finish/sync_folder.h"
#include "finish/temporary.h"
#include "finish/write_file.h"
#include "source/files.h"

#include <algorithm>
#include <system_error>
#include <utility>

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

// The files of `example`, each put down in `folder`; by their names within it, sorted.
std::vector<fs::path> copy_files(const fs::path& example, const fs::path& folder, Diagnostics& diagnostics) {
    constexpr std::size_t most_bytes = 1U << 20U;
    std::vector<fs::path> copied;
    fs::create_directory(folder);
    for (const auto& entry : fs::recursive_directory_iterator{example}) {
        const fs::path name = fs::relative(entry.path(), example);
        if (entry.is_directory()) {
            fs::create_directory(folder / name);
        } else if (const auto file = read_file(entry.path(), entry.path().string(), most_bytes, diagnostics)) {
            if (!write_file(folder / name, file->text, diagnostics)) break; // the next would fail as well
            copied.push_back(name);
        }
    }
    std::ranges::sort(copied);
    return copied;
}

// `temporary` becomes `folder`, which is not there or empty.
void put_in_place(const fs::path& temporary, const fs::path& folder, Diagnostics& diagnostics) {
    if (!fs::exists(folder)) {
        fs::rename(temporary, folder);
        sync_folder(folder_of(folder), folder, diagnostics);
        return;
    }
    for (const auto& entry : fs::directory_iterator{temporary})
        fs::rename(entry.path(), folder / entry.path().filename());
    fs::remove(temporary);
    sync_folder(folder, folder, diagnostics);
}

// What `told` says of the temporary folder is said of the one that it was to become.
void tell_of(const fs::path& folder, const fs::path& temporary, const Diagnostics& told, Diagnostics& diagnostics) {
    for (Diagnostic one : told.sorted()) {
        const auto at = one.message.find(temporary.string());
        if (at != std::string::npos) one.message.replace(at, temporary.string().size(), folder.string());
        diagnostics.add(std::move(one));
    }
}

} // namespace

std::vector<fs::path> make_folder(const fs::path& wanted, const fs::path& example, Diagnostics& diagnostics) {
    const fs::path folder = wanted.has_filename() ? wanted : wanted.parent_path(); // my-studio/ is my-studio
    fs::path temporary;
    Diagnostics copying;
    std::vector<fs::path> made;
    try {
        const bool is_there = fs::is_directory(folder); // and then may be the one she works in, or a disk of its own
        temporary = temporary_beside(is_there ? folder / "studio" : folder);
        if (!may_be_made(folder, diagnostics)) return {};
        fs::create_directories(folder_of(folder));
        made = copy_files(example, temporary, copying);
        if (copying.errors() == 0) put_in_place(temporary, folder, copying);
    } catch (const fs::filesystem_error& error) {
        copying.error({}, in_quotes(folder.string()) + " could not be made: " + error.code().message(),
                      "check that you may write there");
    }
    tell_of(folder, temporary, copying, diagnostics);
    std::error_code ignored;
    if (copying.errors() > 0) fs::remove_all(temporary, ignored);
    for (fs::path& file : made)
        file = folder / file;
    return made;
}

} // namespace dyeleaf
