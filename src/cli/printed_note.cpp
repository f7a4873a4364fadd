#include "cli/printed_note.h"

#include "base/words.h"
#include "source/files.h"

#include <charconv>
#include <optional>
#include <string_view>
#include <system_error>
#include <vector>

namespace dyeleaf {

namespace {

constexpr std::string_view heading =
    "# What “dyeleaf render --remember” has noted as printed: layout, label, day and a digest of its ink.\n"
    "# --changed leaves out what still looks like this. Delete a line, and its label counts as new.\n";

std::vector<std::string> split(std::string_view text, char at) {
    std::vector<std::string> parts;
    for (std::size_t end = 0; end != std::string_view::npos;) {
        end = text.find(at);
        parts.emplace_back(text.substr(0, end));
        if (end != std::string_view::npos) text.remove_prefix(end + 1);
    }
    return parts;
}

std::optional<std::uint64_t> parse_digest(std::string_view text) {
    std::uint64_t value = 0;
    const char* const end = text.data() + text.size();
    const auto result = std::from_chars(text.data(), end, value, 16);
    return text.size() == 16 && result.ec == std::errc{} && result.ptr == end ? std::optional{value} : std::nullopt;
}

std::string digest_text(std::uint64_t digest) {
    std::string digits(16, '0');
    for (auto digit = digits.rbegin(); digit != digits.rend(); ++digit, digest >>= 4)
        *digit = "0123456789abcdef"[digest & 0xf];
    return digits;
}

} // namespace

std::filesystem::path note_file(const std::filesystem::path& folder) {
    return folder / "printed.txt";
}

PrintedNote read_note(const std::filesystem::path& folder, Diagnostics& diagnostics) {
    const auto path = note_file(folder);
    std::error_code ignored;
    if (!std::filesystem::exists(path, ignored)) return {};
    constexpr std::size_t limit = 10'000'000;
    const auto file = read_file(path, path.string(), limit, diagnostics);
    if (!file) return {};
    PrintedNote note;
    Diagnostics strange;
    int number = 0;
    for (std::string& line : split(file->text, '\n')) {
        ++number;
        if (line.ends_with('\r')) line.pop_back();
        if (trimmed(line).empty() || line.starts_with('#')) continue;
        const auto parts = split(line, '\t');
        const auto digest = parts.size() == 4 ? parse_digest(parts[3]) : std::nullopt;
        if (digest) {
            note[{parts[0], parts[1]}] = {*digest, parts[2]};
            continue;
        }
        strange.warning({file, number, 1}, "this line is not one that dyeleaf wrote; its label counts as new",
                        "delete the line");
    }
    const bool has_heading = file->text.starts_with(heading.substr(0, heading.find('\n')));
    // Somebody keeps other things in a file of this name, and would lose them.
    if (note.empty() && strange.warnings() > 0 && !has_heading) {
        diagnostics.error({file, 0, 0, 1}, "this is not the note of what is printed that dyeleaf keeps under this name",
                          "give the file another name");
        return note;
    }
    for (const Diagnostic& warning : strange.sorted())
        diagnostics.add(warning);
    return note;
}

std::string write_note(const PrintedNote& note) {
    std::string text{heading};
    for (const auto& [label, printed] : note) {
        text += joined({label.first, label.second, printed.date, digest_text(printed.digest)}, "\t");
        text += "\n";
    }
    return text;
}

} // namespace dyeleaf
