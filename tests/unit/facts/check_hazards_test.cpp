#include "facts/check_hazards.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

std::vector<std::string> complaints(const Dye& dye) {
    Diagnostics diagnostics;
    check_hazards(dye, diagnostics);
    std::vector<std::string> texts;
    for (const Diagnostic& one : diagnostics.sorted()) {
        CHECK(one.severity == Severity::warning);
        texts.push_back(one.message + " / " + one.help);
    }
    return texts;
}

Dye sloe(std::vector<Hazard> hazards, std::vector<Precaution> precautions = {}) {
    Dye dye;
    dye.name = "Sloe";
    dye.hazards = std::move(hazards);
    dye.precautions = std::move(precautions);
    return dye;
}

} // namespace

TEST_CASE("a category that is not recorded is asked for where the label depends on it", "[facts]") {
    CHECK(
        complaints(sloe({{"H228"}, {"H317"}})) ==
        std::vector<std::string>{
            "what stands on a label for H228 depends on its category, which is not recorded: the gravest is printed / "
            "look into section 2 of the supplier's sheet and write H228 cat 1 or H228 cat 2"});
    CHECK(complaints(sloe({{"H228", "2"}, {"H334"}})).empty());
    CHECK(complaints(Dye{}).empty());
}

TEST_CASE("blanks that the sheet fills in are pointed out once a list", "[facts]") {
    CHECK(complaints(sloe({{"H317"}}, {{"P261"}, {"P264"}, {"P302+P352"}, {"P280", "Wear protective gloves."}})) ==
          std::vector<std::string>{
              "of Sloe, P264, P302+P352 have blanks that the supplier's sheet fills in, and “…” would be printed / "
              "write the sheet's own words: {code: P264, says: \"…\"}"});
    CHECK(complaints(sloe({{"EUH208"}})) ==
          std::vector<std::string>{
              "of Sloe, EUH208 has a blank that the supplier's sheet fills in, and “…” would be printed / "
              "write the sheet's own words: {code: EUH208, says: \"…\"}"});
}
