#include "facts/lot_groups.h"

#include <catch2/catch.hpp>

#include <string>

using namespace dyeleaf;

namespace {

Records with(const std::vector<std::vector<std::string>>& lots) {
    Records records;
    for (const auto& words : lots) {
        Lot lot;
        lot.id.value = words.at(0);
        lot.colourway = words.at(1);
        lot.base.value = words.at(2);
        records.lots.push_back(lot);
    }
    return records;
}

// "a c, b": the groups of each lot.
std::string groups(const Records& records, const LotGroups& by) {
    std::string text;
    for (const Lot& lot : records.lots) {
        for (const Lot* one : by.of(lot))
            text += one->id.value + " ";
        text.back() = ',';
    }
    return text;
}

} // namespace

TEST_CASE("lots of one colourway on one base make a group, in the order of the records", "[facts]") {
    const Records records = with({{"z", "Dusk", "sock"},
                                  {"y", "Dawn", "sock"},
                                  {"x", "Dusk", "dk"},
                                  {"w", "Dusk", "sock"},
                                  {"v", "dusk", "sock"},
                                  {"u", "Dusk", "sock"}});
    CHECK(groups(records, lots_by_yarn(records)) == "z w u,y,x,z w u,v,z w u,");
}

TEST_CASE("lots whose codes are read alike make a group", "[facts]") {
    const Records records =
        with({{"26-117", "", ""}, {"26.1I7", "", ""}, {"26-118", "", ""}, {"26_ll7", "", ""}, {"26-11", "", ""}});
    CHECK(groups(records, lots_by_reading(records)) ==
          "26-117 26.1I7 26_ll7,26-117 26.1I7 26_ll7,26-118,26-117 26.1I7 26_ll7,26-11,");
}
