#include "base/nearest.h"

#include "base/words.h"

#include <algorithm>
#include <cstdlib>

namespace dyeleaf {

int edit_distance(std::string_view a, std::string_view b) {
    // Long texts are never a slip of a known word; the bound keeps the table small.
    constexpr std::size_t longest = 80;
    if (a.size() > longest || b.size() > longest) return static_cast<int>(longest);
    std::vector<int> before(b.size() + 1);
    std::vector<int> last(b.size() + 1);
    std::vector<int> row(b.size() + 1);
    for (std::size_t j = 0; j <= b.size(); ++j)
        last[j] = static_cast<int>(j);
    for (std::size_t i = 1; i <= a.size(); ++i) {
        row[0] = static_cast<int>(i);
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const int change = a[i - 1] == b[j - 1] ? 0 : 1;
            row[j] = std::min({last[j] + 1, row[j - 1] + 1, last[j - 1] + change});
            const bool swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
            if (swapped) row[j] = std::min(row[j], before[j - 2] + 1);
        }
        std::swap(before, last);
        std::swap(last, row);
    }
    return last[b.size()];
}

namespace {

// The only one that goes on where `word` ends, or ends so: "virgin wool" for "virgin", "from stock" for "stock".
std::optional<std::string> longer_form(const std::string& word, const std::vector<std::string>& known) {
    constexpr std::size_t shortest = 3;
    std::optional<std::string> found;
    if (word.size() < shortest) return std::nullopt;
    for (const std::string& candidate : known) {
        if (candidate.size() <= word.size()) continue;
        const std::string_view text = candidate;
        const std::size_t rest = text.size() - word.size();
        const bool starts = same_but_for_case(text.substr(0, word.size()), word);
        const bool ends = text[rest - 1] == ' ' && same_but_for_case(text.substr(rest), word);
        if (!starts && !ends) continue;
        if (found) return std::nullopt;
        found = candidate;
    }
    return found;
}

} // namespace

std::optional<std::string> nearest(std::string_view word, const std::vector<std::string>& known) {
    const std::string wanted = lower_case(word);
    const int limit = std::max(1, static_cast<int>(wanted.size()) / 3);
    std::optional<std::string> best;
    int best_distance = limit + 1;
    for (const std::string& candidate : known) {
        const auto added = static_cast<std::ptrdiff_t>(candidate.size()) - static_cast<std::ptrdiff_t>(wanted.size());
        if (std::abs(added) >= best_distance) continue; // each letter more or less is an edit
        const int distance = edit_distance(wanted, lower_case(candidate));
        if (distance < best_distance) {
            best = candidate;
            best_distance = distance;
        }
    }
    if (best_distance > 1) {
        if (auto longer = longer_form(wanted, known)) return longer;
    }
    return best;
}

std::string suggest(std::string_view word, const std::vector<std::string>& known) {
    if (const auto near_word = nearest(word, known)) return "did you mean " + in_quotes(*near_word) + "?";
    if (known.empty()) return "there are none yet";
    constexpr std::size_t most = 12;
    std::vector<std::string> shown(known.begin(), known.begin() + static_cast<long>(std::min(known.size(), most)));
    std::string text = "known here: " + joined(shown, ", ");
    if (known.size() > most) text += " and " + std::to_string(known.size() - most) + " more";
    return text;
}

} // namespace dyeleaf
