#include "source/check_text.h"

#include "base/words.h"

#include <algorithm>
#include <utility>

namespace dyeleaf {

namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

bool is_control(char c) {
    const auto byte = static_cast<unsigned char>(c);
    return (byte < 0x20 && c != '\t' && c != '\n' && c != '\r') || byte == 0x7F;
}

bool check_encoding(const std::shared_ptr<const SourceFile>& file, Diagnostics& diagnostics) {
    const std::string& text = file->text;
    const bool two_bytes = text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF");
    const std::size_t bad = invalid_utf8(text);
    if (two_bytes) {
        diagnostics.error(spot_at(file, 0), "the file is saved as UTF-16", "save it again as plain text in UTF-8");
    } else if (bad != std::string::npos) {
        diagnostics.error(spot_at(file, bad), "a character here is not UTF-8",
                          "save the file again as plain text in UTF-8; often a letter with an accent is to blame");
    }
    return !two_bytes && bad == std::string::npos;
}

bool check_controls(const std::shared_ptr<const SourceFile>& file, Diagnostics& diagnostics) {
    const auto control = std::ranges::find_if(file->text, is_control);
    if (control == file->text.end()) return true;
    diagnostics.error(spot_at(file, static_cast<std::size_t>(control - file->text.begin())),
                      "an invisible control character stands here", "take it out, or type the line anew");
    return false;
}

bool check_indentation(const std::shared_ptr<const SourceFile>& file, Diagnostics& diagnostics) {
    constexpr int most_shown = 20;
    int found = 0;
    const std::string& text = file->text;
    for (std::size_t start = 0; start < text.size() && found < most_shown;) {
        const std::size_t end = std::min(text.find('\n', start), text.size());
        const std::string_view line = std::string_view{text}.substr(start, end - start);
        const std::size_t indent = std::min(line.find_first_not_of(" \t"), line.size());
        const std::size_t tab = line.substr(0, indent).find('\t');
        if (tab != std::string_view::npos && !trimmed(line).empty()) {
            diagnostics.error(spot_at(file, start + tab), "a tab stands before the text", "use spaces instead");
            ++found;
        }
        start = end + 1;
    }
    return found == 0;
}

} // namespace

std::string_view without_mark(std::string_view text) {
    if (text.starts_with(byte_order_mark)) text.remove_prefix(byte_order_mark.size());
    return text;
}

Spot spot_at(const std::shared_ptr<const SourceFile>& file, std::size_t offset) {
    const std::string_view before = std::string_view{file->text}.substr(0, offset);
    const std::size_t line_end = before.rfind('\n');
    const std::string_view line = line_end == std::string_view::npos ? before : before.substr(line_end + 1);
    return {file, static_cast<int>(std::ranges::count(before, '\n')) + 1, code_points(without_mark(line)) + 1, 1};
}

Places::Places(std::shared_ptr<const SourceFile> file) : file_(std::move(file)) {
    std::string_view text = without_mark(file_->text);
    while (true) {
        const std::size_t end = text.find('\n');
        lines_.push_back(text.substr(0, end));
        if (end == std::string_view::npos) break;
        text.remove_prefix(end + 1);
    }
}

Spot Places::at(int line, int byte_column) {
    const auto index = std::min(static_cast<std::size_t>(std::max(line, 0)), lines_.size() - 1);
    const std::string_view text = lines_[index];
    const auto bytes = std::min(static_cast<std::size_t>(std::max(byte_column, 0)), text.size());
    if (line != line_ || bytes < bytes_) {
        line_ = line;
        bytes_ = 0;
        characters_ = 0;
    }
    characters_ += code_points(text.substr(bytes_, bytes - bytes_));
    bytes_ = bytes;
    return {file_, static_cast<int>(index) + 1, characters_ + 1, 1};
}

bool is_sound_text(const std::shared_ptr<const SourceFile>& file, Diagnostics& diagnostics) {
    return check_encoding(file, diagnostics) && check_controls(file, diagnostics) &&
           check_indentation(file, diagnostics);
}

} // namespace dyeleaf
