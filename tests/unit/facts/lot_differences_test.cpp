// Lots of one colourway, told apart by the studio's limits.
#include "facts/lot_differences.h"
#include "studio_records.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

Lot lot_of(const char* id, double lightness, ColourSource source = ColourSource::instrument) {
    Lot lot;
    lot.id.value = id;
    lot.colourway = "Fog";
    lot.base.value = "plain-sock";
    lot.skeins = 6;
    lot.colour = Sourced<RecordedColour>{Lab{lightness, 0, 0}, {}};
    lot.colour_source = source;
    return lot;
}

Records with(std::deque<Lot> lots) {
    Records records = studio_records();
    records.lots = std::move(lots);
    return records;
}

} // namespace

TEST_CASE("what lies on a limit is still on its near side", "[facts]") {
    const LotLimits limits;
    CHECK(judge(2.0, true, limits) == LotMatch::alike);
    CHECK(judge(2.01, true, limits) == LotMatch::a_little);
    CHECK(judge(5.0, true, limits) == LotMatch::a_little);
    CHECK(judge(5.01, true, limits) == LotMatch::visible);
    CHECK(judge(10.0, true, limits) == LotMatch::visible);
    CHECK(judge(10.01, true, limits) == LotMatch::too_much);
}

TEST_CASE("photographs and eyes do not tell small differences", "[facts]") {
    const LotLimits limits;
    CHECK(judge(0.1, false, limits) == LotMatch::uncertain);
    CHECK(judge(5.0, false, limits) == LotMatch::uncertain);
    CHECK(judge(5.01, false, limits) == LotMatch::visible);
    CHECK(judge(11, false, limits) == LotMatch::too_much);
}

TEST_CASE("only lots of one colourway and base are compared, each two once", "[facts]") {
    Lot other_name = lot_of("d", 50);
    other_name.colourway = "Mist";
    Lot other_base = lot_of("e", 50);
    other_base.base.value = "fell-dk";
    Lot no_colour = lot_of("f", 50);
    no_colour.colour = std::nullopt;
    const Records records =
        with({lot_of("a", 50), lot_of("b", 50), lot_of("c", 58), other_name, other_base, no_colour});
    std::string pairs;
    for (const LotDifference& one : lot_differences(records))
        pairs += one.earlier->id.value + one.later->id.value + " ";
    CHECK(pairs == "ab ac bc ");
}

TEST_CASE("a tag asks to alternate where lots visibly differ by measure, unless the record says otherwise", "[facts]") {
    // ΔE00 of two greys is their lightness step over 1 + 0.015 d² / √(20 + d²), d the mean's distance from 50.
    Records records = with({lot_of("a", 50), lot_of("b", 51), lot_of("c", 58)});
    const auto asks = [](const Records& all, std::size_t lot) {
        return asks_to_alternate(lots_by_yarn(all), all.lots[lot], all.studio.lot_limits);
    };
    CHECK(asks(records, 0));
    CHECK(asks(records, 2));
    records.lots[0].alternate = false;
    CHECK_FALSE(asks(records, 0));
    records.lots.pop_back();
    CHECK_FALSE(asks(records, 1));
    records.lots[1].alternate = true;
    CHECK(asks(records, 1));

    const Records seen = with({lot_of("a", 50, ColourSource::photo), lot_of("c", 58)});
    CHECK_FALSE(asks(seen, 0));
}
