#include "language/language.h"

#include "base/number.h"

#include <algorithm>
#include <stdexcept>
#include <utility>

namespace dyeleaf {

Language::Language(std::string code, std::string name, Phrases phrases)
    : code_(std::move(code)), name_(std::move(name)), phrases_(std::move(phrases)) {}

std::string Language::say(std::string_view key, std::initializer_list<Filling> fillings) const {
    const auto found = phrases_.find(key);
    if (found == phrases_.end()) throw std::out_of_range("no phrase " + std::string{key});
    std::string text;
    std::string_view rest = found->second;
    while (!rest.empty()) {
        const std::size_t open = std::min(rest.find('{'), rest.size());
        text += rest.substr(0, open);
        rest.remove_prefix(open);
        if (rest.empty()) break;
        const std::size_t close = rest.find('}'); // reading has seen to it that there is one
        const auto* const hole = std::ranges::find(fillings, rest.substr(1, close - 1), &Filling::name);
        if (hole == fillings.end()) throw std::out_of_range("nothing for a hole of " + std::string{key});
        text += hole->value;
        rest.remove_prefix(close + 1);
    }
    return text;
}

std::string Language::number(double value, int places) const {
    return number(decimal(value, places));
}

std::string Language::number(std::string_view plain) const {
    std::string text{plain};
    const std::size_t point = text.find('.');
    if (point != std::string::npos) text.replace(point, 1, say("numbers.decimal mark"));
    return text;
}

} // namespace dyeleaf
