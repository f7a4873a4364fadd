#include "cli/report.h"

#include "base/words.h"

#include <algorithm>
#include <ostream>

namespace dyeleaf {

std::string describe_all(const Diagnostics& diagnostics) {
    std::string text;
    for (const Diagnostic& diagnostic : diagnostics.sorted())
        text += describe(diagnostic);
    return text;
}

std::string count_problems(const Diagnostics& diagnostics) {
    std::vector<std::string> parts;
    if (diagnostics.errors() > 0) parts.push_back(counted(diagnostics.errors(), "error", "errors"));
    if (diagnostics.warnings() > 0) parts.push_back(counted(diagnostics.warnings(), "warning", "warnings"));
    return parts.empty() ? "no problems" : joined(parts, ", ");
}

std::string table(const std::vector<std::vector<std::string>>& rows) {
    std::vector<int> widths;
    for (const auto& row : rows) {
        widths.resize(std::max(widths.size(), row.size()));
        for (std::size_t i = 0; i < row.size(); ++i)
            widths[i] = std::max(widths[i], code_points(row[i]));
    }
    std::string text;
    for (const auto& row : rows) {
        std::string line;
        for (std::size_t i = 0; i < row.size(); ++i)
            line += "  " + row[i] + std::string(static_cast<std::size_t>(widths[i] - code_points(row[i])), ' ');
        line.erase(line.find_last_not_of(' ') + 1);
        text += line + "\n";
    }
    return text;
}

std::string as_typed(const std::string& name) {
    return name.find(' ') == std::string::npos ? name : "\"" + name + "\"";
}

ProgressLine::~ProgressLine() {
    if (shown_) *stream_ << "\r\x1b[K" << std::flush;
}

void ProgressLine::show(const std::string& text) {
    if (!is_terminal_ || Clock::now() < next_) return;
    next_ = Clock::now() + std::chrono::milliseconds{100};
    shown_ = true;
    *stream_ << "\r\x1b[K" << text << std::flush;
}

} // namespace dyeleaf
