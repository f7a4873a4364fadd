#include "layout/set_words.h"

#include <algorithm>
#include <cmath>

namespace dyeleaf {

namespace {

// A size between two steps would make a new font for each text; a quarter point is finer than the eye.
constexpr Length size_step = pt(0.25);

Length stepped_down(Length size) {
    return size_step * std::floor((size / size_step) + 1e-6);
}

SetWords set_at(const std::string& text, const TextStyle& style, Length size, Length width, const Trial& trial) {
    // The breadth of a hair more, so that a text measured alone fits the width it asked for.
    const double ems = (width + length_tolerance) / size;
    const FontMetrics metrics = trial.typesetter->metrics(style.font);
    SetWords set;
    set.paragraph = trial.typesetter->set(text, style.font, std::max(ems, 0.1), style.balanced);
    set.size = size;
    set.leading = size * style.leading;
    set.first_baseline = (set.leading + size * metrics.cap_height) / 2;
    return set;
}

bool fits_lines(const SetWords& set, int lines) {
    return !set.paragraph->words_broken &&
           (lines == 0 || set.paragraph->lines.size() <= static_cast<std::size_t>(lines));
}

std::size_t character_start(const std::string& text, std::size_t at) {
    while (at > 0 && (static_cast<unsigned char>(text[at]) & 0xC0U) == 0x80U)
        --at;
    return at;
}

// The longest beginning that fits with … behind it.
SetWords cut_to_fit(const Words& words, Length size, Length width, const Trial& trial) {
    const auto attempt = [&](std::size_t bytes) {
        std::string text = words.text.substr(0, character_start(words.text, bytes));
        while (!text.empty() && text.back() == ' ')
            text.pop_back();
        return set_at(text + "…", words.style, size, width, trial);
    };
    const auto few_lines = [&](const SetWords& set) {
        return set.paragraph->lines.size() <= static_cast<std::size_t>(words.style.lines);
    };
    std::size_t low = 0;
    std::size_t high = words.text.size();
    while (low + 1 < high) {
        const std::size_t middle = (low + high) / 2;
        (few_lines(attempt(middle)) ? low : high) = middle;
    }
    SetWords set = attempt(low);
    set.cut = true;
    return set;
}

// How wide a text is on one line grows with its size: what is too wide needs no trying out.
Length size_on_one_line(const Words& words, Length size, Length width, const Trial& trial) {
    const double ems = trial.typesetter->set(words.text, words.style.font, std::nullopt, false)->width;
    const bool is_wider = size * ems > width + length_tolerance * 2;
    return is_wider ? stepped_down((width + length_tolerance) / ems) : size;
}

} // namespace

Size SetWords::extent() const {
    return {size * paragraph->width, leading * static_cast<double>(paragraph->lines.size())};
}

SetWords set_words(const Words& words, Length width, const Trial& trial) {
    const TextStyle& style = words.style;
    const Length smallest = smaller(style.smallest, style.size);
    Length size = larger(smallest, stepped_down(style.size - (style.size - smallest) * trial.shrink));
    if (near(smallest, style.size) || trial.shrink == 0) size = style.size;
    if (style.lines == 1) size = larger(smallest, size_on_one_line(words, size, width, trial));
    SetWords set = set_at(words.text, style, size, width, trial);
    while (!fits_lines(set, style.lines) && size > smallest) {
        size = larger(smallest, stepped_down(size - size_step));
        set = set_at(words.text, style, size, width, trial);
    }
    const bool too_many = style.lines > 0 && set.paragraph->lines.size() > static_cast<std::size_t>(style.lines);
    return too_many ? cut_to_fit(words, size, width, trial) : set;
}

} // namespace dyeleaf
