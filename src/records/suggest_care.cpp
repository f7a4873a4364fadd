#include "records/suggest_care.h"

#include "base/nearest.h"
#include "base/words.h"
#include "records/care.h"

#include <algorithm>
#include <array>
#include <iterator>
#include <optional>
#include <utility>
#include <vector>

namespace dyeleaf {

namespace {

struct Telling {
    std::string_view letters; // that tell the process wherever they stand
    CareProcess process;
};

// The first that is found counts: "dry clean" is no drying, "hand wash" no hanging.
constexpr std::array telling = {
    Telling{"clean", CareProcess::professional},
    Telling{"bleach", CareProcess::bleach},
    Telling{"iron", CareProcess::iron},
    Telling{"steam", CareProcess::iron},
    Telling{"wash", CareProcess::wash},
    Telling{"tumble", CareProcess::dry},
    Telling{"dry", CareProcess::dry},
    Telling{"hang", CareProcess::dry},
    Telling{"flat", CareProcess::dry},
};

std::optional<CareProcess> process_of(std::string_view text) {
    const auto found = std::ranges::find_if(
        telling, [&](const Telling& one) { return text.find(one.letters) != std::string_view::npos; });
    return found == telling.end() ? std::nullopt : std::optional{found->process};
}

bool forbids(std::string_view text) {
    constexpr std::array words = {" no ", " not ", " never ", " don't ", " don’t ", " dont ", " non ", " without "};
    const std::string padded = " " + std::string{text} + " ";
    return std::ranges::any_of(words, [&](std::string_view word) { return padded.find(word) != std::string::npos; });
}

std::vector<std::string_view> spaced_words(std::string_view text) {
    std::vector<std::string_view> words;
    while (true) {
        text = trimmed(text);
        if (text.empty()) return words;
        words.push_back(text.substr(0, text.find(' ')));
        text.remove_prefix(words.back().size());
    }
}

// Word by word no more than a letter or a third of them is wrong, and neither a temperature nor a solvent's letter; how
// many letters in all.
std::optional<int> slips_between(std::string_view text, std::string_view key) {
    const auto written = spaced_words(text);
    const auto known = spaced_words(key);
    if (written.size() != known.size() || forbids(text) != forbids(key)) return std::nullopt;
    int slips = 0;
    for (std::size_t i = 0; i < known.size(); ++i) {
        const bool exact = known[i].size() == 1 || known[i].find_first_of("0123456789") != std::string_view::npos;
        const int most = exact ? 0 : std::max(1, static_cast<int>(known[i].size()) / 3);
        const int distance = edit_distance(written[i], known[i]);
        if (distance > most) return std::nullopt;
        slips += distance;
    }
    return slips;
}

// Without what is written in one way or another: "wash30gentle" for "wash 30 °C, gentle" and "machine wash at 30C
// gentle".
std::string squeezed(std::string_view text) {
    constexpr std::array idle = {"at", "in", "the", "machine", "°c", "c", "degrees"};
    std::string letters;
    for (std::string_view word : spaced_words(text)) {
        if (std::ranges::find(idle, word) != idle.end()) continue;
        for (const std::string_view unit : {"°c", "c", "°"}) {
            const bool behind_figure = word.size() > unit.size() && word.ends_with(unit) &&
                                       word[word.size() - unit.size() - 1] >= '0' &&
                                       word[word.size() - unit.size() - 1] <= '9';
            if (behind_figure) word.remove_suffix(unit.size());
        }
        std::ranges::copy_if(word, std::back_inserter(letters), [](char c) { return c != '-' && c != ','; });
    }
    return letters;
}

// "wash 30 gentle, no bleach" for the two with no comma between them.
std::optional<std::string> two_in_one(std::string_view text) {
    for (const Care& first : care_treatments()) {
        const std::string begin = lower_case(first.key) + " ";
        if (!text.starts_with(begin)) continue;
        for (const Care& second : care_treatments()) {
            if (lower_case(second.key) == text.substr(begin.size()))
                return std::string{first.key} + ", " + std::string{second.key};
        }
    }
    return std::nullopt;
}

} // namespace

std::string suggest_care(std::string_view text) {
    const std::string lower = lower_case(text);
    if (const auto two = two_in_one(lower)) return "write a comma between the two: " + *two;
    const auto process = process_of(lower);
    std::vector<std::string> of_process;
    std::optional<std::pair<int, std::string>> nearest_key;
    for (const Care& care : care_treatments()) {
        if (lower_case(care.words) == lower || squeezed(lower_case(care.key)) == squeezed(lower))
            return "did you mean " + in_quotes(care.key) + "?";
        if (!process || care.process == *process) of_process.emplace_back(care.key);
        const auto slips = slips_between(lower, lower_case(care.key));
        if (slips && (!nearest_key || *slips < nearest_key->first)) nearest_key = {*slips, std::string{care.key}};
    }
    if (nearest_key) return "did you mean " + in_quotes(nearest_key->second) + "?";
    const std::string words = joined(of_process, ", ");
    return process ? "the words for " + std::string{noun_of(*process)} + " are: " + words : "known here: " + words;
}

} // namespace dyeleaf
