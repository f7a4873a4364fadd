#include "facts/fibre_words.h"

#include "base/words.h"
#include "records/plain_letters.h"

#include <algorithm>
#include <array>

namespace dyeleaf {

namespace {

struct Breed {
    std::string_view words;   // split by |
    std::string_view fibre;   // the kind that it is of
    std::string_view printed; // empty: as in the words
    bool stands_alone = true; // whether its name without the fibre's is understood
};

// From memory. Sheep first; then what names a sort of another fibre.
constexpr std::array breeds = {
    Breed{"merino", "wool", ""},
    Breed{"bluefaced leicester|blue faced leicester|bfl", "wool", "Bluefaced Leicester"},
    Breed{"shetland", "wool", "Shetland"},
    Breed{"corriedale", "wool", "Corriedale"},
    Breed{"polwarth", "wool", "Polwarth"},
    Breed{"rambouillet", "wool", "Rambouillet"},
    Breed{"targhee", "wool", "Targhee"},
    Breed{"cormo", "wool", "Cormo"},
    Breed{"columbia", "wool", "Columbia", false},
    Breed{"falkland|falklands", "wool", "Falkland"},
    Breed{"romney", "wool", "Romney"},
    Breed{"cheviot", "wool", "Cheviot"},
    Breed{"wensleydale", "wool", "Wensleydale"},
    Breed{"teeswater", "wool", "Teeswater"},
    Breed{"masham", "wool", "Masham"},
    Breed{"gotland", "wool", "Gotland"},
    Breed{"icelandic", "wool", "Icelandic", false},
    Breed{"jacob", "wool", "Jacob"},
    Breed{"herdwick", "wool", "Herdwick"},
    Breed{"swaledale", "wool", "Swaledale"},
    Breed{"finn|finnsheep", "wool", "Finn"},
    Breed{"texel", "wool", "Texel"},
    Breed{"perendale", "wool", "Perendale"},
    Breed{"exmoor blueface|exmoor", "wool", "Exmoor Blueface"},
    Breed{"leicester longwool", "wool", "Leicester Longwool"},
    Breed{"border leicester", "wool", "Border Leicester"},
    Breed{"black welsh mountain", "wool", "Black Welsh Mountain"},
    Breed{"kid", "mohair", "", false},
    Breed{"baby", "alpaca", "", false},
    Breed{"suri", "alpaca", ""},
    Breed{"huacaya", "alpaca", ""},
    Breed{"baby", "camel", "", false},
    Breed{"mulberry", "silk", "", false},
    Breed{"tussah|tussar", "silk", "tussah"},
    Breed{"bombyx", "silk", ""},
    Breed{"pima", "cotton", ""},
    Breed{"egyptian", "cotton", "Egyptian", false},
};

const FibreKind* kind_of(std::string_view name) {
    const auto kinds = fibre_kinds();
    if (name.empty()) return nullptr;
    if (!found_among(name, other_fibres().eu).empty() || !found_among(name, other_fibres().us).empty())
        return &other_fibres();
    // A name may be the usual one of one fibre and allowed for others: rayon.
    for (const FibreKind& kind : kinds) {
        if (lower_case(first_of(kind.eu)) == name || lower_case(first_of(kind.us)) == name ||
            !found_among(name, kind.trade).empty())
            return &kind;
    }
    for (const FibreKind& kind : kinds) {
        if (!found_among(name, kind.eu).empty() || !found_among(name, kind.us).empty()) return &kind;
    }
    return nullptr;
}

bool drop_first(std::string& text, std::string_view word) {
    if (!text.starts_with(word) || text.size() < word.size() + 2 || text[word.size()] != ' ') return false;
    text.erase(0, word.size() + 1);
    return true;
}

bool drop_last(std::string& text, std::string_view word) {
    if (!text.ends_with(word) || text.size() < word.size() + 2 || text[text.size() - word.size() - 1] != ' ')
        return false;
    text.erase(text.size() - word.size() - 1);
    return true;
}

// "100% Merino-Wool" as "100 % merino wool".
std::string in_plain_words(std::string_view written) {
    std::string text;
    for (const char c : plain_letters(trimmed(written))) {
        if (c == '%' && !text.empty() && text.back() != ' ') text += ' ';
        const char plain = c == '-' || c == '\t' ? ' ' : c;
        if (plain != ' ' || (!text.empty() && text.back() != ' ')) text += plain;
    }
    return text;
}

void take_claims(std::string& text, FibreWord& word) {
    constexpr std::array claims = {"superwash", "sw",     "machine washable", "non superwash", "untreated",
                                   "organic",   "undyed", "natural",          "recycled"};
    const auto take = [&](std::string_view claim) {
        if (!drop_first(text, claim)) return false;
        word.recycled = word.recycled || claim == "recycled";
        word.superwash = word.superwash || claim == "superwash" || claim == "sw" || claim == "machine washable";
        word.besides += (word.besides.empty() ? "" : " ") + std::string{claim};
        return true;
    };
    for (bool found = true; found;) {
        found = std::ranges::any_of(claims, take);
        for (const std::string_view all : {"100 %", "pure", "all"}) {
            if (drop_first(text, all)) found = word.sole = true;
        }
        for (const std::string_view fresh : {"virgin", "fleece", "new"}) { // Annex III, and the US rules' word
            if (drop_first(text, fresh)) found = word.virgin = true;
        }
    }
}

// "wool (merino)" without its brackets, and what stood in them.
std::string take_brackets(std::string& text) {
    const std::size_t open = text.find('(');
    if (open == std::string::npos || open == 0 || !text.ends_with(')')) return {};
    std::string inside{trimmed(std::string_view{text}.substr(open + 1, text.size() - open - 2))};
    text = std::string{trimmed(std::string_view{text}.substr(0, open))};
    return inside;
}

// The printed form where the breed is known, else as written.
std::string breed_as_printed(const std::string& text) {
    for (const Breed& breed : breeds) {
        const auto found = found_among(text, breed.words);
        if (!found.empty() && !breed.printed.empty()) return std::string{breed.printed};
    }
    return text;
}

// "merino", "merino wool", "kid mohair".
void find_breed(const std::string& text, FibreWord& word) {
    for (const Breed& breed : breeds) {
        std::string name = text;
        const bool with_fibre = drop_last(name, breed.fibre);
        if (!with_fibre && !breed.stands_alone) continue;
        const auto found = found_among(name, breed.words);
        if (found.empty()) continue;
        word.kind = kind_of(breed.fibre);
        word.name = breed.fibre;
        word.breed = breed.printed.empty() ? found : breed.printed;
        return;
    }
}

// Annex I, row 2: each followed or not by wool or hair; the rest are fibres by nature.
void find_with_ending(const std::string& text, FibreWord& word) {
    for (const std::string_view ending : {"wool", "hair", "fibre", "fiber"}) {
        std::string name = text;
        if (!drop_last(name, ending)) continue;
        const FibreKind* kind = kind_of(name);
        const bool of_animal = ending == "wool" || ending == "hair";
        if (kind == nullptr || (of_animal && kind->nature != FibreKind::Nature::hair)) continue;
        word.kind = kind;
        word.name = name;
        return;
    }
}

} // namespace

FibreWord read_fibre_word(std::string_view written) {
    FibreWord word;
    word.name = lower_case(trimmed(written));
    word.kind = kind_of(word.name);
    if (word.kind != nullptr) return word;
    std::string text = in_plain_words(written);
    const std::string brackets = take_brackets(text);
    take_claims(text, word);
    word.name = text;
    word.kind = kind_of(text);
    if (word.kind == nullptr) find_breed(text, word);
    if (word.kind == nullptr) find_with_ending(text, word);
    if (word.kind != nullptr && word.breed.empty()) word.breed = breed_as_printed(brackets);
    return word;
}

std::string legal_name(const FibreWord& word, Market market) {
    const std::string_view names = market == Market::us ? word.kind->us : word.kind->eu;
    const std::string_view written = found_among(word.name, names);
    const std::string name{written.empty() ? first_of(names) : written};
    using enum FibreKind::Nature;
    // Wool Products Labeling Act, 15 U.S.C. 68b (from memory): recycled wool is called so.
    const bool says_recycled =
        market == Market::us && word.recycled && (word.kind->nature == wool || word.kind->nature == hair);
    return says_recycled ? "recycled " + name : name;
}

std::vector<std::string> legal_names(Market market) {
    std::vector<std::string> names;
    for (const FibreKind& kind : fibre_kinds()) {
        const std::string name{first_of(market == Market::us ? kind.us : kind.eu)};
        if (!name.empty()) names.push_back(name);
    }
    return names;
}

} // namespace dyeleaf
