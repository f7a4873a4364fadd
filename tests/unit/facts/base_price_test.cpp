#include "facts/base_price.h"
#include "studio_records.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

Lot priced(std::int64_t minor) {
    Lot lot;
    lot.base = {"plain-sock", {}};
    if (minor > 0) lot.price = Price{minor};
    return lot;
}

} // namespace

TEST_CASE("a sign for a base has the prices of its lots", "[facts]") {
    Records records;
    Base base;
    base.id = {"plain-sock", {}};
    CHECK_FALSE(prices_on(records, base));

    records.lots = {priced(2600), priced(0), priced(2600)};
    REQUIRE(prices_on(records, base));
    CHECK(prices_on(records, base)->is_one());
    CHECK(prices_on(records, base)->least.minor == 2600);

    records.lots.push_back(priced(2450));
    Lot minis = priced(650);
    minis.skein_mass = SkeinFigure<Mass>{grams(20), {}, {}};
    records.lots.push_back(minis); // what is smaller costs less
    Lot other = priced(100);
    other.base.value = "moor-single";
    records.lots.push_back(other);
    const auto span = prices_on(records, base);
    REQUIRE(span);
    CHECK(span->least.minor == 2450);
    CHECK(span->most.minor == 2600);
    CHECK_FALSE(span->is_one());
}
