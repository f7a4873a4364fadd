#include "facts/skein_numbers.h"

#include "facts/pots.h"

#include <algorithm>

namespace dyeleaf {

bool is_spoilt(const Lot& lot, int number) {
    return std::ranges::find(lot.spoilt, number) != lot.spoilt.end();
}

std::vector<int> skeins_for_sale(const Lot& lot) {
    std::vector<int> numbers;
    for (int number = 1; number <= lot.skeins; ++number) {
        if (!is_spoilt(lot, number)) numbers.push_back(number);
    }
    return numbers;
}

std::optional<int> pot_of(const Lot& lot, int number) {
    const std::vector<int> pots = pots_of(lot);
    int last = 0;
    for (std::size_t pot = 0; pot < pots.size(); ++pot) {
        last += pots[pot];
        if (number <= last) return static_cast<int>(pot);
    }
    return std::nullopt;
}

std::string number_runs(const std::vector<int>& numbers) {
    std::string text;
    for (std::size_t start = 0; start < numbers.size();) {
        std::size_t end = start + 1;
        while (end < numbers.size() && numbers[end] == numbers[end - 1] + 1)
            ++end;
        if (!text.empty()) text += ", ";
        text += std::to_string(numbers[start]);
        if (end - start > 1) text += (end - start > 2 ? "–" : ", ") + std::to_string(numbers[end - 1]);
        start = end;
    }
    return text;
}

} // namespace dyeleaf
