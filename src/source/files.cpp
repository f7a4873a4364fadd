#include "source/files.h"

#include "base/words.h"

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstdio>
#include <system_error>

namespace dyeleaf {

namespace {

Spot whole_file(const std::string& name) {
    return {std::make_shared<const SourceFile>(SourceFile{name, {}}), 0, 0, 1};
}

struct CloseFile {
    void operator()(std::FILE* file) const { (void)std::fclose(file); }
};

bool is_yaml(const std::filesystem::path& path) {
    const std::string ending = lower_case(path.extension().string());
    return ending == ".yaml" || ending == ".yml";
}

// "yarn.yaml.txt", as some programs name what they save, gives "yarn.yaml".
std::optional<std::string> name_before_second_ending(const std::filesystem::path& path) {
    constexpr std::array endings = {".txt", ".rtf", ".doc", ".docx", ".odt"};
    const bool is_text = std::ranges::find(endings, lower_case(path.extension().string())) != endings.end();
    return is_text && is_yaml(path.stem()) ? std::optional{path.stem().string()} : std::nullopt;
}

void warn_of_second_ending(const std::filesystem::path& path, const std::string& name, const std::string& folder,
                           Diagnostics& diagnostics) {
    const std::string written = path.filename().string();
    const bool plain = lower_case(path.extension().string()) == ".txt";
    diagnostics.warning(whole_file(folder + written), in_quotes(written) + " is not read",
                        plain ? "rename it " + name : "save it as plain text, with the name " + name);
}

// "studio" for "studio", "./studio/" and "/home/her/studio".
std::string own_name(const std::filesystem::path& folder) {
    const std::filesystem::path plain = folder.lexically_normal();
    const std::filesystem::path name = plain.has_filename() ? plain.filename() : plain.parent_path().filename();
    return name.empty() || name == "." ? std::string{} : name.string() + "/";
}

} // namespace

std::shared_ptr<const SourceFile> read_file(const std::filesystem::path& path, const std::string& name,
                                            std::size_t limit, Diagnostics& diagnostics) {
    std::error_code error;
    const std::filesystem::file_status status = std::filesystem::status(path, error);
    if (!std::filesystem::exists(status)) {
        const bool is_link = std::filesystem::is_symlink(path, error);
        diagnostics.error(whole_file(name), is_link ? "this is a link that leads nowhere" : "there is no such file",
                          is_link ? "put the file itself here, or take the link away" : "check its name and folder");
        return nullptr;
    }
    if (!std::filesystem::is_regular_file(status)) { // a pipe would be waited for without end
        const bool folder = std::filesystem::is_directory(status);
        diagnostics.error(whole_file(name), folder ? "this is a folder" : "this is not a plain file",
                          "name a text file");
        return nullptr;
    }
    const std::unique_ptr<std::FILE, CloseFile> file{std::fopen(path.c_str(), "rb")};
    if (!file) {
        diagnostics.error(whole_file(name), "the file cannot be opened: " + std::generic_category().message(errno),
                          "check who may read it");
        return nullptr;
    }
    auto source = std::make_shared<SourceFile>(SourceFile{name, {}});
    constexpr std::size_t piece = 64U << 10U;
    std::size_t got = piece;
    while (got == piece && source->text.size() <= limit) {
        const std::size_t before = source->text.size();
        source->text.resize(before + piece);
        got = std::fread(source->text.data() + before, 1, piece, file.get());
        source->text.resize(before + got);
    }
    if (std::ferror(file.get()) != 0) {
        diagnostics.error(whole_file(name), "the file cannot be read: " + std::generic_category().message(errno), "");
        return nullptr;
    }
    source->text.shrink_to_fit(); // there may be thousands of small ones
    if (source->text.size() > limit) {
        diagnostics.error(whole_file(name), "the file is larger than " + std::to_string(limit >> 20U) + " MiB",
                          "records are small texts: split it, or take out what does not belong");
        return nullptr;
    }
    return source;
}

std::vector<std::shared_ptr<const SourceFile>> read_folder(const std::filesystem::path& folder,
                                                           Diagnostics& diagnostics) {
    const std::string shown = folder.string();
    std::error_code error;
    if (!std::filesystem::is_directory(folder, error)) {
        const bool exists = std::filesystem::exists(folder, error);
        diagnostics.error(whole_file(shown), exists ? "this is not a folder" : "there is no such folder",
                          "name the folder your records lie in, or make one with: dyeleaf new FOLDER");
        return {};
    }
    std::vector<std::filesystem::path> paths;
    for (auto entry = std::filesystem::directory_iterator{folder, error};
         !error && entry != std::filesystem::directory_iterator{}; entry.increment(error)) {
        const std::filesystem::path& path = entry->path();
        if (path.filename().string().starts_with('.')) continue;
        if (is_yaml(path)) paths.push_back(path);
        if (const auto name = name_before_second_ending(path))
            warn_of_second_ending(path, *name, own_name(folder), diagnostics);
    }
    if (error) {
        diagnostics.error(whole_file(shown), "the folder cannot be read: " + error.message(), "check who may read it");
        return {};
    }
    std::ranges::sort(paths);
    if (paths.empty()) {
        diagnostics.error(whole_file(shown), "there are no records in this folder",
                          "records are files whose names end in .yaml; dyeleaf new FOLDER makes some to start from");
    }
    std::vector<std::shared_ptr<const SourceFile>> files;
    for (const std::filesystem::path& path : paths) {
        const std::string name = own_name(folder) + path.filename().string();
        if (auto file = read_file(path, name, DocumentLimits{}.bytes, diagnostics)) files.push_back(std::move(file));
    }
    return files;
}

} // namespace dyeleaf
