// The layouts, stocks, styles and fonts there are: the dyer's own, in the folder of her records, before those that
// come with the program.
#pragma once

#include "base/diagnostic.h"
#include "base/reach.h"
#include "design/design.h"
#include "language/language.h"
#include "sheets/stock.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

struct Library {
    std::filesystem::path data;  // that comes with the program
    std::optional<Reach> studio; // the folder of her records
};

struct LibraryFile {
    std::string name; // of the file without its ending: what --stock and LAYOUT take
    std::filesystem::path file;
    bool own = false; // the dyer's
};

// By name; one of her own hides a bundled one of the same name.
std::vector<LibraryFile> find_layouts(const Library& library);
std::vector<LibraryFile> find_stocks(const Library& library);
std::vector<LibraryFile> find_languages(const Library& library);
// For a Typesetter; the bundled ones first.
std::vector<std::filesystem::path> font_folders(const Library& library);

// The layout or stock in one file, or nothing and errors. A file whose name differs from what it says it holds is
// warned of.
std::optional<Design> read_layout_file(const LibraryFile& file, const Library& library,
                                       const std::vector<std::string>& families, Diagnostics& diagnostics);
std::optional<Stock> read_stock_file(const LibraryFile& file, Diagnostics& diagnostics);

// The layout called `name`, or the one in a file when `name` ends in .yaml or .yml; an unknown name is an error with
// the nearest. `at` is where the name was written: nowhere for the command line.
std::optional<Design> find_layout(const std::string& name, const Library& library,
                                  const std::vector<std::string>& families, Diagnostics& diagnostics);
std::optional<Stock> find_stock(const std::string& name, const Spot& at, const Library& library,
                                Diagnostics& diagnostics);

// Whether the phrases for hazard and precautionary statements are wanted. They are half of a language, and who records
// none of either never prints one.
enum class Statements { wanted, unwanted };

// English, with what the dyer has changed in it.
std::optional<Language> find_english(const Library& library, Statements statements, Diagnostics& diagnostics);
// The language with this code; phrases that it lacks are English. A code without a file is an error with those there
// are.
std::optional<Language> find_language(const Sourced<std::string>& code, const Library& library, Statements statements,
                                      Diagnostics& diagnostics);

} // namespace dyeleaf
