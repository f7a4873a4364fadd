#include "base/diagnostic.h"

#include "base/controls.h"
#include "base/words.h"

#include <algorithm>
#include <tuple>
#include <utility>

namespace dyeleaf {

namespace {

std::string file_name(const Spot& spot) {
    return spot.file ? spot.file->name : std::string{};
}

std::string source_line(const Spot& spot) {
    if (!spot.file || spot.line < 1) return {};
    std::string_view text = spot.file->text;
    for (int line = 1; line < spot.line; ++line) {
        const auto end = text.find('\n');
        if (end == std::string_view::npos) return {};
        text.remove_prefix(end + 1);
    }
    std::string_view line = text.substr(0, text.find('\n'));
    if (!line.empty() && line.back() == '\r') line.remove_suffix(1);
    // A file that is not UTF-8 would garble the terminal; its complaint needs no picture.
    return invalid_utf8(line) == std::string_view::npos ? std::string{line} : std::string{};
}

std::string picture(const Spot& spot) {
    constexpr int widest = 100;
    const std::string line = with_controls_shown(source_line(spot));
    if (trimmed(line).empty() || spot.column < 1 || spot.column > widest) return {};
    const std::string shown = shortened(line, widest);
    const std::string number = std::to_string(spot.line);
    const int width = std::clamp(spot.length, 1, std::max(1, code_points(shown) - spot.column + 1));
    const std::string indent(number.size() + 2, ' ');
    return "  " + number + " | " + shown + "\n" + indent + " | " +
           std::string(static_cast<std::size_t>(spot.column - 1), ' ') +
           std::string(static_cast<std::size_t>(width), '^') + "\n";
}

} // namespace

void Diagnostics::error(Spot spot, std::string message, std::string help) {
    add({Severity::error, std::move(spot), std::move(message), std::move(help)});
}

void Diagnostics::warning(Spot spot, std::string message, std::string help) {
    add({Severity::warning, std::move(spot), std::move(message), std::move(help)});
}

void Diagnostics::add(Diagnostic diagnostic) {
    int& count = diagnostic.severity == Severity::error ? errors_ : warnings_;
    if (count >= most) {
        ++count;
        return;
    }
    const Spot& spot = diagnostic.spot;
    const std::string place =
        file_name(spot) + ":" + std::to_string(spot.line) + ":" + std::to_string(spot.column) + ":";
    if (!known_.insert(place + diagnostic.message).second) return;
    ++count;
    kept_.push_back(std::move(diagnostic));
}

std::vector<Diagnostic> Diagnostics::sorted() const {
    std::vector<Diagnostic> result = kept_;
    const auto place = [](const Diagnostic& d) { return std::tuple{file_name(d.spot), d.spot.line, d.spot.column}; };
    std::ranges::stable_sort(result, {}, place);
    if (errors_ > most) {
        result.push_back({Severity::error,
                          {},
                          "… and " + counted(errors_ - most, "more error", "more errors"),
                          "put these right first; often one slip has caused many"});
    }
    if (warnings_ > most)
        result.push_back(
            {Severity::warning, {}, "… and " + counted(warnings_ - most, "more warning", "more warnings"), {}});
    return result;
}

std::string describe(const Diagnostic& diagnostic) {
    const Spot& spot = diagnostic.spot;
    std::string text = with_controls_shown(file_name(spot));
    if (spot.line > 0) text += ":" + std::to_string(spot.line) + ":" + std::to_string(spot.column);
    if (!text.empty()) text += ": ";
    text += diagnostic.severity == Severity::error ? "error: " : "warning: ";
    text += with_controls_shown(diagnostic.message) + "\n" + picture(spot);
    if (!diagnostic.help.empty()) text += "  help: " + with_controls_shown(diagnostic.help) + "\n";
    return text;
}

} // namespace dyeleaf
