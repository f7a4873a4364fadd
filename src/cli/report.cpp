#include "cli/report.h"

#include "base/controls.h"
#include "base/words.h"

#include <algorithm>
#include <ostream>
#include <string_view>
#include <utility>

namespace dyeleaf {

namespace {

// A complaint about a label begins with its name in quotation marks and a colon.
struct Complaint {
    Diagnostic first;
    std::string what;                  // without the names
    std::vector<std::string> subjects; // the names, in their quotation marks
};

Complaint taken_apart(Diagnostic diagnostic) {
    constexpr std::string_view opening = "“";
    constexpr std::string_view closing = "”: ";
    const auto end = diagnostic.message.find(closing);
    if (!diagnostic.message.starts_with(opening) || end == std::string::npos)
        return {diagnostic, diagnostic.message, {}};
    const auto colon = end + closing.size() - 2;
    return {diagnostic, diagnostic.message.substr(colon), {diagnostic.message.substr(0, colon)}};
}

bool same_but_for_subject(const Complaint& a, const Complaint& b) {
    return !a.subjects.empty() && !b.subjects.empty() && a.what == b.what && a.first.help == b.first.help &&
           a.first.severity == b.first.severity && a.first.spot.file == b.first.spot.file &&
           a.first.spot.line == b.first.spot.line && a.first.spot.column == b.first.spot.column;
}

std::string listed(const std::vector<std::string>& subjects) {
    constexpr std::size_t most = 3;
    if (subjects.size() == 2) return joined(subjects, " and ");
    if (subjects.size() <= most) return joined(subjects, ", ");
    const std::vector<std::string> shown{subjects.begin(), subjects.begin() + most};
    return joined(shown, ", ") + " and " + std::to_string(subjects.size() - most) + " more";
}

std::vector<Diagnostic> folded(const Diagnostics& diagnostics) {
    std::vector<Complaint> complaints;
    std::size_t same_spot = 0; // where the complaints about the present place begin
    for (const Diagnostic& diagnostic : diagnostics.sorted()) {
        Complaint complaint = taken_apart(diagnostic);
        const auto is_here = [&](const Complaint& other) { return same_but_for_subject(other, complaint); };
        const auto begin = complaints.begin() + static_cast<std::ptrdiff_t>(same_spot);
        const auto known = std::find_if(begin, complaints.end(), is_here);
        if (known != complaints.end()) {
            known->subjects.push_back(complaint.subjects.front());
            continue;
        }
        const Spot& spot = diagnostic.spot;
        if (!complaints.empty() &&
            (complaints.back().first.spot.line != spot.line || complaints.back().first.spot.column != spot.column))
            same_spot = complaints.size();
        complaints.push_back(std::move(complaint));
    }
    std::vector<Diagnostic> result;
    result.reserve(complaints.size());
    for (Complaint& complaint : complaints) {
        complaint.first.message = listed(complaint.subjects) + complaint.what;
        result.push_back(std::move(complaint.first));
    }
    return result;
}

} // namespace

std::string describe_all(const Diagnostics& diagnostics) {
    std::string text;
    for (const Diagnostic& diagnostic : folded(diagnostics))
        text += describe(diagnostic);
    return text;
}

std::string count_problems(const Diagnostics& diagnostics) {
    const std::vector<Diagnostic> told = folded(diagnostics);
    const auto count = [&](Severity severity) {
        return static_cast<int>(std::ranges::count(told, severity, &Diagnostic::severity));
    };
    const int errors = count(Severity::error);
    const int warnings = count(Severity::warning);
    std::vector<std::string> parts;
    if (errors > 0) parts.push_back(counted(errors, "error", "errors"));
    if (warnings > 0) parts.push_back(counted(warnings, "warning", "warnings"));
    return parts.empty() ? "no problems" : joined(parts, ", ");
}

std::string table(std::vector<std::vector<std::string>> rows) {
    std::vector<int> widths;
    for (auto& row : rows)
        std::ranges::transform(row, row.begin(), with_controls_shown);
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
    return with_controls_shown(name.find(' ') == std::string::npos ? name : "\"" + name + "\"");
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
