// The shades between swatches, as layouts ask for them and as `check` speaks of them.
#include "facts/ramp.h"

#include "english.h"
#include "facts/check_shades.h"
#include "facts/items.h"
#include "studio_records.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <string>

using namespace dyeleaf;

namespace {

const Printing printing{{english()}, nullptr, {2026, 11, 30}};

Swatch measured(double depth, const std::string& base, const std::string& colour) {
    Swatch made = swatch(depth, base, hex(colour));
    made.colour_source = ColourSource::instrument;
    return made;
}

// One dye, pink on Plain Sock at four depths and on Fell DK at one.
Records pink_records() {
    Records records = studio_records();
    Dye dye = plain_dye("thrift", "Thrift", "Fenlight acid", "F-314");
    dye.swatches = {measured(0.25, "plain-sock", "#e188be"), measured(0.5, "plain-sock", "#d667aa"),
                    measured(1, "plain-sock", "#cb4a92"), measured(2, "plain-sock", "#bc2e74"),
                    measured(1, "fell-dk", "#cb4a92")};
    records.dyes = {std::move(dye)};
    records.jars.clear();
    records.lots.clear();
    return records;
}

Facts facts_of(const Records& records) {
    Diagnostics diagnostics;
    const auto items = make_items(records, ItemKind::dyes, std::nullopt, {}, printing, diagnostics);
    REQUIRE(items.size() == 1);
    return items.front().facts;
}

std::vector<Facts> list(const Facts& facts, const std::string& name) {
    const auto value = facts.find(name);
    return value ? std::get<std::vector<Facts>>(*value) : std::vector<Facts>{};
}

std::string text(const Facts& facts, const std::string& name) {
    const auto value = facts.find(name);
    return value ? std::get<std::string>(*value) : "(none)";
}

std::string complaints(const Records& records) {
    Diagnostics diagnostics;
    check_shades(records, records.dyes.front(), diagnostics);
    std::string all;
    for (const Diagnostic& one : diagnostics.sorted())
        all += one.message + "\n";
    return all;
}

} // namespace

TEST_CASE("a ramp tells recorded shades from estimated ones", "[facts]") {
    const Records records = pink_records();
    const Facts facts = facts_of(records);
    CHECK(text(facts, "dye.ramp.title") == "Even steps on Plain Sock");
    CHECK(text(facts, "dye.ramp.note") == "cut corner: estimated between swatches");
    const auto ramp = list(facts, "dye.ramp");
    REQUIRE(ramp.size() == 7);
    const auto patch = [&](std::size_t i) { return std::get<Patch>(ramp[i].find("shade.patch").value()); };

    CHECK(patch(2).kind == Patch::Kind::recorded);
    CHECK(patch(2).description == "Thrift at 0.5\u00a0% on Plain Sock");
    CHECK(patch(2).colour == hex("#d667aa"));
    CHECK(text(ramp[2], "shade.recorded") == "0.5\u00a0%");
    CHECK(text(ramp[2], "shade.estimated") == "(none)");

    CHECK(patch(3).kind == Patch::Kind::estimated);
    CHECK(patch(3).description == "Thrift at 0.71\u00a0% on Plain Sock, estimated between swatches");
    CHECK(text(ramp[3], "shade.recorded") == "(none)");
    CHECK(text(ramp[3], "shade.estimated") == "estimated");
    CHECK(text(ramp[3], "shade.depth") == "0.71\u00a0%");
    CHECK(text(ramp[3], "shade.stock") == "71\u00a0mL");
}

TEST_CASE("a base with one depth has no ramp", "[facts]") {
    const Records records = pink_records();
    const auto bases = list(facts_of(records), "dye.bases");
    REQUIRE(bases.size() == 2);
    CHECK(list(bases[0], "base.ramp").size() == 7);
    CHECK(list(bases[1], "base.ramp").empty());
    CHECK(text(bases[1], "base.ramp.note") == "(none)");
}

TEST_CASE("a ramp says where its swatches were not measured", "[facts]") {
    Records records = pink_records();
    records.dyes.front().swatches[1].colour_source = ColourSource::photo;
    CHECK(text(facts_of(records), "dye.ramp.note") == "cut corner: estimated, some swatches by eye or photo");
}

TEST_CASE("a depth without a colour is no shade", "[facts]") {
    Records records = pink_records();
    auto& swatches = records.dyes.front().swatches;
    swatches[0].colour.reset();
    const auto ramp = ramp_on(records.dyes.front(), "plain-sock");
    REQUIRE_FALSE(ramp.empty());
    CHECK(ramp.front().depth == percent(0.5));
    swatches.resize(2); // one colour is left
    CHECK(ramp_on(records.dyes.front(), "plain-sock").empty());
    CHECK(best_ramp_base(records.dyes.front()) == std::nullopt);
}

TEST_CASE("of two swatches of one depth the last recorded counts", "[facts]") {
    Records records = pink_records();
    records.dyes.front().swatches.push_back(measured(2, "plain-sock", "#a01050"));
    CHECK(recorded_shades(records.dyes.front(), "plain-sock").size() == 4);
    const auto ramp = ramp_on(records.dyes.front(), "plain-sock");
    REQUIRE_FALSE(ramp.empty());
    CHECK(ramp.back().colour.lightness == Approx(34.9).margin(1));
}

TEST_CASE("a fluorescent dye has no ramp", "[facts]") {
    Records records = pink_records();
    records.dyes.front().fluorescent = true;
    CHECK(ramp_on(records.dyes.front(), "plain-sock").empty());
    CHECK(text(facts_of(records), "dye.ramp.title") == "(none)");
}

TEST_CASE("a swatch that is lighter than a paler one is asked about", "[facts]") {
    Records records = pink_records();
    CHECK(complaints(records).empty());
    auto& swatches = records.dyes.front().swatches;
    std::swap(swatches[1].depth, swatches[2].depth);
    CHECK(complaints(records) == "Thrift on Plain Sock is lighter at 1 % than at 0.5 %\n");
    records.dyes.front().fluorescent = true;
    CHECK(complaints(records).empty());
}

TEST_CASE("two swatches that differ as two readings do are not asked about", "[facts]") {
    Records records = pink_records();
    records.dyes.front().swatches = {measured(1, "plain-sock", "#bc2e74"), measured(2, "plain-sock", "#bf3177")};
    CHECK(complaints(records).empty());
    CHECK(ramp_on(records.dyes.front(), "plain-sock").empty());
}
