// The story, told once: records and a layout become files. None is put in place here.
#pragma once

#include "base/date.h"
#include "base/diagnostic.h"
#include "cli/library.h"
#include "cli/options.h"
#include "finish/write_file.h"
#include "records/records.h"

#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

// What would embarrass the dyer on paper, and the languages that her studio asks for. Requires: records without errors.
void check_studio(const Records& records, const Library& library, const Date& today, Diagnostics& diagnostics);

// Reads every layout and stock of the dyer's own; the complaints are the result.
void check_own_files(const Library& library, Diagnostics& diagnostics);

// Every fact of one record; nothing where the diagnostics have errors.
std::optional<std::string> show_facts(const ShowFacts& request, const Library& library, const Date& today,
                                      Diagnostics& diagnostics);

// What is remembered as printed.
struct PrintedNoteFile {
    std::filesystem::path path;
    std::string text;
};
struct Rendering {
    std::vector<PendingFile> files;      // one, or for PNG and SVG one a page: NAME-1.png, NAME-2.png …
    std::optional<PrintedNoteFile> note; // to be written after them
    std::string summary;                 // "12 tags on 2 sheets (a4-card)"
    std::vector<std::string> remarks;    // lines to say after it
};

// Called before each sheet with its number, from 1, and how many there are.
using Progress = std::function<void(std::size_t sheet, std::size_t sheets)>;

// The whole way from the folder to the printed sheets; nothing where the diagnostics have errors. No files where
// nothing has changed.
std::optional<Rendering> render(const Render& request, const Library& library, const Date& today,
                                const Progress& progress, Diagnostics& diagnostics);

} // namespace dyeleaf
