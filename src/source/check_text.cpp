#include "source/check_text.h"

#include "base/controls.h"
#include "base/words.h"

#include <algorithm>
#include <array>

namespace dyeleaf {

namespace {

// What RTF, and packed (docx, odt) and older (doc) documents begin with.
bool is_word_processors(std::string_view text) {
    constexpr std::array<std::string_view, 3> beginnings = {"{\\rtf", "PK\x03\x04", "\xD0\xCF\x11\xE0"};
    return std::ranges::any_of(beginnings, [&](std::string_view beginning) { return text.starts_with(beginning); });
}

bool check_encoding(Places& places, Diagnostics& diagnostics) {
    const std::string_view text = places.text();
    const std::size_t bad = invalid_utf8(text);
    const bool has_nul = text.substr(0, 64).find('\0') != std::string_view::npos;
    if (is_word_processors(text)) {
        diagnostics.error(places.nowhere(), "this was saved by a word processor", "save it as plain text");
    } else if (text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF")) {
        diagnostics.error(places.at(0), "the file is saved as UTF-16", "save it again as plain text in UTF-8");
    } else if (has_nul) {
        diagnostics.error(places.at(text.find('\0')), "this is not a text file",
                          "records are plain text; if this is one, save it again as plain text in UTF-8");
    } else if (bad != std::string_view::npos) {
        diagnostics.error(places.at(bad), "a character here is not UTF-8",
                          "save the file again as plain text in UTF-8; often a letter with an accent is to blame");
    } else {
        return true;
    }
    return false;
}

bool check_controls(Places& places, Diagnostics& diagnostics) {
    const std::string_view text = places.text();
    if (const auto control = find_control(text)) {
        diagnostics.error(places.at(control->at),
                          control->turns_text ? "an invisible mark stands here that makes text run backwards"
                                              : "an invisible control character stands here",
                          "take it out, or type the line anew");
        return false;
    }
    for (std::size_t at = text.find('\r'); at != std::string_view::npos; at = text.find('\r', at + 1)) {
        if (at + 1 < text.size() && text[at + 1] == '\n') continue;
        diagnostics.error(places.at(at), "the lines end in a way that no system uses now",
                          "save the file again with the line ends of Windows, macOS or Linux");
        return false;
    }
    return true;
}

// Spaces and the dashes of list items, before the first word.
std::size_t indentation(std::string_view line) {
    return std::min(line.find_first_not_of(" \t-"), line.size());
}

// Other blanks look the same and are not read as indentation: a no-break space, or one of the wide ones.
bool starts_with_odd_space(std::string_view text) {
    if (text.starts_with("\xC2\xA0") || text.starts_with("\xE3\x80\x80")) return true;
    return text.starts_with("\xE2\x80") && text.size() > 2 && static_cast<unsigned char>(text[2]) <= 0x8A;
}

bool check_line(std::string_view line, std::size_t start, Places& places, const DocumentLimits& limits,
                Diagnostics& diagnostics) {
    if (line.size() > limits.line_bytes) {
        diagnostics.error(places.at(start), "this line is " + std::to_string(line.size()) + " bytes long",
                          "no record needs such a line: is this the right file?");
        return false;
    }
    const std::size_t indent = indentation(line);
    const std::string_view rest = line.substr(indent);
    const std::size_t tab = line.substr(0, indent).find('\t');
    if (trimmed(rest).empty() || rest.front() == '#') return true;
    if (tab != std::string_view::npos) {
        diagnostics.error(places.at(start + tab), "a tab stands before the text", "use spaces instead");
        return false;
    }
    if (!starts_with_odd_space(rest)) return true;
    diagnostics.error(places.at(start + indent), "a blank stands before the text that is not an ordinary space",
                      "it came in with copied text: delete it and type spaces");
    return false;
}

bool check_lines(Places& places, const DocumentLimits& limits, Diagnostics& diagnostics) {
    constexpr int most_shown = 20; // where one line is indented by tabs, all may be
    int found = 0;
    const std::string_view text = places.text();
    for (std::size_t start = 0; start < text.size() && found < most_shown;) {
        const std::size_t end = std::min(text.find('\n', start), text.size());
        if (!check_line(text.substr(start, end - start), start, places, limits, diagnostics)) ++found;
        start = end + 1;
    }
    return found == 0;
}

} // namespace

bool is_sound_text(Places& places, const DocumentLimits& limits, Diagnostics& diagnostics) {
    return check_encoding(places, diagnostics) && check_controls(places, diagnostics) &&
           check_lines(places, limits, diagnostics);
}

} // namespace dyeleaf
