#include "facts/hazard_precedence.h"

#include "base/words.h"

#include <catch2/catch.hpp>
#include <set>

using namespace dyeleaf;

namespace {

std::vector<Hazard> hazards(const std::vector<std::string>& codes) {
    std::vector<Hazard> result;
    for (const std::string& code : codes) {
        const std::size_t end = std::min(code.find(' '), code.size());
        result.push_back({code.substr(0, end), end == code.size() ? "" : code.substr(end + 1)});
    }
    return result;
}

std::string signal(const HazardLabel& label) {
    if (!label.signal) return "";
    return *label.signal == SignalWord::danger ? "Danger" : "Warning";
}

std::string pictograms(const HazardLabel& label) {
    std::vector<std::string> names;
    for (const Pictogram pictogram : label.pictograms)
        names.push_back("GHS0" + std::to_string(static_cast<int>(pictogram)));
    return joined(names, " ");
}

template <class Statement> std::string codes(const std::vector<Statement>& statements) {
    std::vector<std::string> all;
    for (const Statement& one : statements)
        all.push_back(one.code);
    return joined(all, " ");
}

struct Case {
    std::vector<std::string> given; // code, and category after a blank
    std::string signal, pictograms, statements;
};

} // namespace

TEST_CASE("a label bears what the published tables give for its codes", "[facts]") {
    const std::vector<Case> cases = {
        {{}, "", "", ""},
        // CLP, annex I, table 3.4.7: respiratory and skin sensitisers.
        {{"H334"}, "Danger", "GHS08", "H334"},
        {{"H317"}, "Warning", "GHS07", "H317"},
        // CLP, annex I, table 3.3.5: eyes.
        {{"H318"}, "Danger", "GHS05", "H318"},
        {{"H319"}, "Warning", "GHS07", "H319"},
        // CLP, annex I, table 3.5.3: mutagens.
        {{"H340"}, "Danger", "GHS08", "H340"},
        {{"H341"}, "Warning", "GHS08", "H341"},
        // CLP, annex VI, table 3: citric acid, sodium dithionite, sodium metabisulfite, copper sulfate pentahydrate,
        // sodium sulfide, ammonium persulfate.
        {{"H319", "H335"}, "Warning", "GHS07", "H319 H335"},
        {{"H251", "H302", "EUH031"}, "Danger", "GHS02 GHS07", "H251 H302 EUH031"},
        {{"H302", "H318", "EUH031"}, "Danger", "GHS05 GHS07", "H302 H318 EUH031"},
        {{"H302", "H318", "H400", "H410"}, "Danger", "GHS05 GHS07 GHS09", "H302 H318 H410"},
        {{"H302", "H311", "H314", "H400"}, "Danger", "GHS05 GHS06 GHS09", "H302 H311 H314 H400"},
        {{"H272 3", "H302", "H315", "H317", "H319", "H334", "H335"},
         "Danger",
         "GHS08 GHS03 GHS07",
         "H272 H302 H315 H317 H319 H334 H335"},
    };
    for (const Case& one : cases) {
        const HazardLabel label = label_of(hazards(one.given));
        INFO(joined(one.given, " "));
        CHECK(signal(label) == one.signal);
        CHECK(pictograms(label) == one.pictograms);
        CHECK(codes(label.statements) == one.statements);
    }
}

TEST_CASE("graver signs stand for lesser ones", "[facts]") {
    const std::vector<Case> cases = {
        // CLP, article 20(3).
        {{"H317", "H334"}, "Danger", "GHS08", "H317 H334"},
        {{"H412"}, "", "", "H412"},
        {{"H412", "H319"}, "Warning", "GHS07", "H319 H412"},
        // CLP, article 26(1)(b): a skull, and no exclamation mark.
        {{"H301", "H315", "H335"}, "Danger", "GHS06", "H301 H315 H335"},
        // 26(1)(c): corrosion speaks for irritation, and for nothing else.
        {{"H318", "H315"}, "Danger", "GHS05", "H315 H318"},
        {{"H318", "H317"}, "Danger", "GHS05 GHS07", "H317 H318"},
        {{"H318", "H332"}, "Danger", "GHS05 GHS07", "H318 H332"},
        // 26(1)(d): allergy by breathing speaks for that of the skin and for irritation; harm by swallowing stays.
        {{"H334", "H317", "H315", "H319"}, "Danger", "GHS08", "H315 H317 H319 H334"},
        {{"H334", "H319", "H335"}, "Danger", "GHS08 GHS07", "H319 H334 H335"},
        {{"H334", "H302"}, "Danger", "GHS08 GHS07", "H302 H334"},
        // Another health hazard is not an allergy by breathing.
        {{"H351", "H317"}, "Warning", "GHS07 GHS08", "H317 H351"},
        // 26(1)(a) and (e) make flame, flame over circle and cylinder optional: they stay.
        {{"H240", "H228 1", "H271"}, "Danger", "GHS01 GHS02 GHS03", "H228 H240 H271"},
        {{"H220", "H280"}, "Danger", "GHS02 GHS04", "H220 H280"},
        // CLP, annex I, note to table 3.3.5.
        {{"H314", "H318", "H319"}, "Danger", "GHS05", "H314"},
        // CLP, article 27: no statement twice.
        {{"H317", "H317"}, "Warning", "GHS07", "H317"},
        {{"H302", "H332", "H302+H332"}, "Warning", "GHS07", "H302+H332"},
        {{"H302", "H312+H332"}, "Warning", "GHS07", "H302 H312+H332"},
        // EUH codes come last and bear no sign.
        {{"EUH208", "H412"}, "", "", "H412 EUH208"},
    };
    for (const Case& one : cases) {
        const HazardLabel label = label_of(hazards(one.given));
        INFO(joined(one.given, " "));
        CHECK(signal(label) == one.signal);
        CHECK(pictograms(label) == one.pictograms);
        CHECK(codes(label.statements) == one.statements);
    }
}

TEST_CASE("a category that is not recorded counts as the gravest", "[facts]") {
    CHECK(signal(label_of(hazards({"H228"}))) == "Danger");
    CHECK(signal(label_of(hazards({"H228 1"}))) == "Danger");
    CHECK(signal(label_of(hazards({"H228 2"}))) == "Warning");
    CHECK(signal(label_of(hazards({"H242 e"}))) == "Warning");
    // Of two powders in one jar, the graver.
    CHECK(signal(label_of(hazards({"H228 2", "H228 1"}))) == "Danger");
    CHECK(codes(label_of(hazards({"H228 2", "H228 1"})).statements) == "H228");
    CHECK(signal(label_of(hazards({"H261 3", "H261"}))) == "Danger");
}

TEST_CASE("statements that two sheets word differently are two", "[facts]") {
    const std::vector<Hazard> two = {{"EUH208", "", "Contains one dye. May produce an allergic reaction."},
                                     {"EUH208", "", "Contains another dye. May produce an allergic reaction."},
                                     {"EUH208", "", "Contains one dye. May produce an allergic reaction."}};
    CHECK(label_of(two).statements.size() == 2);
    // A combination holds the published words of its parts, not a sheet's own.
    const std::vector<Hazard> own_words = {{"H302", "", "Harmful if swallowed: holds one salt."},
                                           {"H302+H332", "", {}}};
    CHECK(codes(label_of(own_words).statements) == "H302 H302+H332");
}

TEST_CASE("precautions stand once each, and not beside a combination that holds them", "[facts]") {
    CHECK(codes(precautions_of({{"P501"}, {"P261"}, {"P280"}, {"P261"}})) == "P261 P280 P501");
    CHECK(codes(precautions_of({{"P338"}, {"P305+P351+P338"}, {"P351"}})) == "P305+P351+P338");
    CHECK(codes(precautions_of({{"P302+P352"}, {"P302"}, {"P352"}, {"P337+P313"}})) == "P302+P352 P337+P313");
}

TEST_CASE("of one code, the gravest class comes first, and the classes stand together", "[facts]") {
    std::set<std::string_view> seen;
    const auto all = hazard_classes();
    for (std::size_t i = 0; i < all.size(); ++i) {
        INFO(all[i].code);
        if (i > 0 && all[i - 1].code == all[i].code) {
            CHECK(all[i - 1].signal >= all[i].signal);
        } else {
            CHECK(seen.insert(all[i].code).second);
        }
    }
    CHECK(depends_on_category("H228"));
    CHECK_FALSE(depends_on_category("H317"));
    CHECK_FALSE(depends_on_category("H250"));
    CHECK_FALSE(depends_on_category("H999"));
}
