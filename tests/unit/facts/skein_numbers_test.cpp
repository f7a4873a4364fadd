// The skeins of a lot.
#include "facts/skein_numbers.h"

#include "english.h"
#include "facts/wording.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

Lot lot_of(int skeins, std::vector<int> spoilt = {}, std::vector<int> pots = {}) {
    Lot lot;
    lot.skeins = skeins;
    lot.spoilt = std::move(spoilt);
    lot.pots = std::move(pots);
    return lot;
}

} // namespace

TEST_CASE("spoilt skeins leave gaps", "[facts]") {
    struct Case {
        Lot lot;
        std::size_t for_sale;
        const char* numbers;
    };
    const Case cases[] = {
        {lot_of(1), 1, "1"},
        {lot_of(1, {1}), 0, ""},
        {lot_of(2), 2, "1, 2"},
        {lot_of(14, {7}), 13, "1–6, 8–14"},
        {lot_of(14, {14, 1}), 12, "2–13"},
        {lot_of(8, {2, 5, 6}), 5, "1, 3, 4, 7, 8"},
        {lot_of(250), 250, "1–250"},
        {lot_of(250, {7, 100}), 248, "1–6, 8–99, 101–250"},
    };
    for (const auto& [lot, for_sale, numbers] : cases) {
        INFO(numbers);
        CHECK(skeins_for_sale(lot).size() == for_sale);
        CHECK(number_runs(skeins_for_sale(lot)) == numbers);
    }
}

TEST_CASE("each skein has its pot", "[facts]") {
    const Lot lot = lot_of(9, {}, {4, 3, 2});
    for (const auto& [number, pot] : {std::pair{1, 0}, {4, 0}, {5, 1}, {7, 1}, {8, 2}, {9, 2}}) {
        INFO(number);
        CHECK(pot_of(lot, number) == pot);
    }
    CHECK_FALSE(pot_of(lot_of(9), 5));
    // After pot Z comes pot AA, as columns of sheets are counted.
    const Lot many = lot_of(30, {}, std::vector<int>(30, 1));
    CHECK(pot_words(english(), *pot_of(many, 26)) == "Pot Z");
    CHECK(pot_words(english(), *pot_of(many, 27)) == "Pot AA");
    CHECK(pot_words(english(), *pot_of(many, 30)) == "Pot AD");
}
