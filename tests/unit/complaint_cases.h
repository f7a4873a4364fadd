// Cases that state the complaints they must give. The first lines of a case are the complaints, sorted by place:
// `# error: LINE:COLUMN message` or `# warning: …`, and under each its `# help: …`; LINE counts from the line after
// them. A case without such lines reads clean. `--- file: NAME` begins another file; places then name their file.
#pragma once

#include "base/diagnostic.h"
#include "case_text.h"

#include <catch2/catch.hpp>

#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace dyeleaf {

struct ComplaintCase {
    std::string name;
    std::vector<std::string> complaints; // "error: 4:12 “60” has no unit", "help: write “60 mL”"
    std::vector<std::shared_ptr<const SourceFile>> files;
};

inline bool states_complaint(std::string_view line) {
    return line.starts_with("# error: ") || line.starts_with("# warning: ") || line.starts_with("# help: ");
}

inline ComplaintCase split_case(const CaseText& text) {
    constexpr std::string_view file_mark = "--- file: ";
    ComplaintCase result{text.name, {}, {}};
    std::vector<SourceFile> files = {{"case.yaml", {}}};
    std::string_view rest = text.body;
    while (rest.ends_with("\n\n"))
        rest.remove_suffix(1); // the blank line before the next case
    bool head = true;
    while (!rest.empty()) {
        const std::size_t end = std::min(rest.find('\n'), rest.size() - 1);
        const std::string_view line = rest.substr(0, end);
        head = head && states_complaint(line);
        if (head) {
            result.complaints.emplace_back(line.substr(2));
        } else if (line.starts_with(file_mark)) {
            if (files.back().text.empty()) files.pop_back();
            files.push_back({std::string{line.substr(file_mark.size())}, {}});
        } else {
            files.back().text += rest.substr(0, end + 1);
        }
        rest.remove_prefix(end + 1);
    }
    for (SourceFile& file : files)
        result.files.push_back(std::make_shared<const SourceFile>(std::move(file)));
    return result;
}

// The complaints as a case states them.
inline std::vector<std::string> as_stated(const Diagnostics& diagnostics, bool with_files) {
    std::vector<std::string> lines;
    for (const Diagnostic& one : diagnostics.sorted()) {
        std::string place = with_files && one.spot.file ? one.spot.file->name + ":" : std::string{};
        place += std::to_string(one.spot.line) + ":" + std::to_string(one.spot.column);
        lines.push_back((one.severity == Severity::error ? "error: " : "warning: ") + place + " " + one.message);
        if (!one.help.empty()) lines.push_back("help: " + one.help);
    }
    return lines;
}

// Runs every case of a file; `read` is given the case's files and the diagnostics. Returns how many there were.
template <class Read> std::size_t run_cases(const std::filesystem::path& path, Read read) {
    const auto cases = read_cases(path);
    for (const CaseText& text : cases) {
        const ComplaintCase one = split_case(text);
        INFO(path.filename().string() << ": " << one.name);
        Diagnostics diagnostics;
        read(one.files, diagnostics);
        CHECK(as_stated(diagnostics, one.files.size() > 1) == one.complaints);
    }
    return cases.size();
}

} // namespace dyeleaf
