#include "cli/library.h"

#include "base/nearest.h"
#include "base/words.h"
#include "design/read_design.h"
#include "language/read_language.h"
#include "source/document.h"
#include "source/files.h"

#include <algorithm>
#include <map>
#include <memory>

namespace dyeleaf {

namespace {

bool is_yaml(const std::filesystem::path& file) {
    return file.extension() == ".yaml" || file.extension() == ".yml";
}

std::filesystem::path languages_folder() {
    return std::filesystem::path{"layouts"} / "languages";
}

// The YAML files of `below` in both folders, hers in place of ours.
std::vector<LibraryFile> find_files(const Library& library, const std::filesystem::path& below) {
    std::map<std::string, LibraryFile> found;
    const auto add = [&](const std::filesystem::path& folder, bool own) {
        std::error_code error; // a folder that is not there holds nothing
        for (auto entry = std::filesystem::directory_iterator{folder / below, error};
             !error && entry != std::filesystem::directory_iterator{}; entry.increment(error)) {
            const std::string name = entry->path().stem().string();
            if (is_yaml(entry->path()) && !name.starts_with('.')) found[name] = {name, entry->path(), own};
        }
    };
    add(library.data, false);
    if (library.studio) add(library.studio->home, true);
    std::vector<LibraryFile> files;
    files.reserve(found.size());
    for (auto& [name, file] : found)
        files.push_back(std::move(file));
    return files;
}

const LibraryFile* find_named(const std::vector<LibraryFile>& files, std::string_view name) {
    const auto found = std::ranges::find(files, name, &LibraryFile::name);
    return found == files.end() ? nullptr : &*found;
}

std::vector<std::string> names_of(const std::vector<LibraryFile>& files) {
    std::vector<std::string> names;
    names.reserve(files.size());
    for (const LibraryFile& file : files)
        names.push_back(file.name);
    return names;
}

// Folders besides their own in which layouts may have pictures.
std::vector<std::filesystem::path> also_of(const Library& library) {
    return library.studio ? library.studio->also : std::vector<std::filesystem::path>{};
}

// A file, or the part of it before a heading.
std::optional<Node> read_yaml(const std::filesystem::path& path, Diagnostics& diagnostics,
                              std::string_view before = {}) {
    const int errors_before = diagnostics.errors();
    auto file = read_file(path, path.string(), DocumentLimits{}.bytes, diagnostics);
    if (!file) return std::nullopt;
    if (!before.empty())
        file =
            std::make_shared<const SourceFile>(SourceFile{file->name, file->text.substr(0, file->text.find(before))});
    auto node = parse_document(file, diagnostics);
    if (!node && diagnostics.errors() == errors_before) diagnostics.error({file, 0, 0, 1}, "this file is empty");
    return node;
}

void warn_of_name(const LibraryFile& file, std::string_view key, const std::string& name, const Spot& spot,
                  Diagnostics& diagnostics) {
    if (name == file.name) return;
    diagnostics.warning(spot, "this file is called " + in_quotes(file.name) + ", but says it is " + in_quotes(name),
                        "dyeleaf goes by the file's name; write " + std::string{key} + ": " + file.name);
}

Styles read_shared_styles(const Node& layout, const Library& library, const std::vector<std::string>& families,
                          Diagnostics& diagnostics) {
    const auto wanted = shared_styles_name(layout);
    if (!wanted) return {};
    const auto files = find_files(library, std::filesystem::path{"layouts"} / "styles");
    const LibraryFile* file = find_named(files, wanted->value);
    if (file == nullptr) {
        diagnostics.error(wanted->spot, "there is no file of styles called " + in_quotes(wanted->value),
                          suggest(wanted->value, names_of(files)));
        return {};
    }
    const auto node = read_yaml(file->file, diagnostics);
    return node ? read_style_file(*node, families, diagnostics) : Styles{};
}

} // namespace

std::vector<LibraryFile> find_layouts(const Library& library) {
    return find_files(library, "layouts");
}

std::vector<LibraryFile> find_stocks(const Library& library) {
    return find_files(library, std::filesystem::path{"layouts"} / "stocks");
}

std::vector<LibraryFile> find_languages(const Library& library) {
    return find_files(library, languages_folder());
}

std::vector<std::filesystem::path> font_folders(const Library& library) {
    std::vector<std::filesystem::path> folders = {library.data / "fonts"};
    std::error_code error;
    if (library.studio && std::filesystem::is_directory(library.studio->home / "fonts", error))
        folders.push_back(library.studio->home / "fonts");
    return folders;
}

std::optional<Design> read_layout_file(const LibraryFile& file, const Library& library,
                                       const std::vector<std::string>& families, Diagnostics& diagnostics) {
    const auto node = read_yaml(file.file, diagnostics);
    if (!node) return std::nullopt;
    const Styles shared = read_shared_styles(*node, library, families, diagnostics);
    auto design = read_design(*node, shared, families, diagnostics, also_of(library));
    if (design) warn_of_name(file, "layout", design->name, design->spot, diagnostics);
    return design;
}

std::optional<Stock> read_stock_file(const LibraryFile& file, Diagnostics& diagnostics) {
    const auto node = read_yaml(file.file, diagnostics);
    if (!node) return std::nullopt;
    auto stock = read_stock(*node, diagnostics);
    if (stock) warn_of_name(file, "stock", stock->name, stock->spot, diagnostics);
    return stock;
}

std::optional<Design> find_layout(const std::string& name, const Library& library,
                                  const std::vector<std::string>& families, Diagnostics& diagnostics) {
    if (const std::filesystem::path path = name; is_yaml(path))
        return read_layout_file({path.stem().string(), path, true}, library, families, diagnostics);
    const auto layouts = find_layouts(library);
    if (const LibraryFile* file = find_named(layouts, name))
        return read_layout_file(*file, library, families, diagnostics);
    diagnostics.error({}, "there is no layout called " + in_quotes(name),
                      suggest(name, names_of(layouts)) + " (`dyeleaf layouts` lists them)");
    return std::nullopt;
}

std::optional<Stock> find_stock(const std::string& name, const Spot& at, const Library& library,
                                Diagnostics& diagnostics) {
    const auto stocks = find_stocks(library);
    if (const LibraryFile* file = find_named(stocks, name)) return read_stock_file(*file, diagnostics);
    diagnostics.error(at, "there is no stock called " + in_quotes(name),
                      suggest(name, names_of(stocks)) + " (`dyeleaf stocks` lists them)");
    return std::nullopt;
}

namespace {

bool has_own_languages(const Library& library) {
    std::error_code ignored;
    return library.studio && std::filesystem::exists(library.studio->home / languages_folder(), ignored);
}

// The bundled file of a language, and over it the dyer's own, which may leave out what it does not change. Who changes
// phrases may change any of them: then all are read.
std::optional<Language> read_layers(const std::string& code, const Language* beneath, const Library& library,
                                    Statements statements, Diagnostics& diagnostics) {
    constexpr std::string_view last_heading = "\nstatements:\n"; // of each bundled file
    const bool whole = statements == Statements::wanted || has_own_languages(library);
    std::optional<Language> language;
    std::vector<std::filesystem::path> folders = {library.data};
    if (library.studio) folders.push_back(library.studio->home);
    for (const auto& folder : folders) {
        std::filesystem::path file = folder / languages_folder() / (code + ".yaml");
        const auto is_there = [&] {
            std::error_code ignored;
            return std::filesystem::exists(std::filesystem::symlink_status(file, ignored)); // be it a link to nowhere
        };
        if (!is_there()) file.replace_extension(".yml");
        if (!is_there()) continue;
        const auto node = read_yaml(file, diagnostics, whole ? std::string_view{} : last_heading);
        auto layer = node ? read_language(*node, code, beneath, diagnostics) : std::nullopt;
        if (!layer) return std::nullopt;
        language = std::move(layer);
        beneath = &*language;
    }
    if (!language) {
        diagnostics.error({}, "there is no file " + in_quotes((languages_folder() / (code + ".yaml")).string()),
                          "it came with the program: install dyeleaf again");
    }
    return language;
}

} // namespace

std::optional<Language> find_english(const Library& library, Statements statements, Diagnostics& diagnostics) {
    return read_layers("en", nullptr, library, statements, diagnostics);
}

std::optional<Language> find_language(const Sourced<std::string>& code, const Library& library, Statements statements,
                                      Diagnostics& diagnostics) {
    auto english = find_english(library, statements, diagnostics);
    const std::string wanted = lower_case(code.value);
    if (!english || wanted == "en") return english;
    const auto files = find_languages(library);
    const auto file = std::ranges::find_if(files, [&](const auto& one) { return lower_case(one.name) == wanted; });
    if (file == files.end()) {
        diagnostics.error(code.spot, "there is no language called " + in_quotes(code.value),
                          "write one of these: " + joined(names_of(files), ", "));
        return std::nullopt;
    }
    return read_layers(file->name, &*english, library, statements, diagnostics);
}

} // namespace dyeleaf
