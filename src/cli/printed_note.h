// The note of what has been printed, beside the records: one line a label, with a digest of its ink. It is kept only
// where --remember asks for it, and nothing needs it: without a line a label counts as new.
#pragma once

#include "base/date.h"
#include "base/diagnostic.h"

#include <cstdint>
#include <filesystem>
#include <map>
#include <string>
#include <utility>

namespace dyeleaf {

struct PrintedLabel {
    std::uint64_t digest = 0;
    std::string date; // as it stands in the note: 2026-11-20
};
// By layout and label.
using PrintedNote = std::map<std::pair<std::string, std::string>, PrintedLabel>;

// `printed.txt` in the folder of the records.
std::filesystem::path note_file(const std::filesystem::path& folder);

// Empty where there is none. A line that is not one of ours is a warning; a file of nothing else, an error.
PrintedNote read_note(const std::filesystem::path& folder, Diagnostics& diagnostics);
std::string write_note(const PrintedNote& note);

} // namespace dyeleaf
