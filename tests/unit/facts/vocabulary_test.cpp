// Every name that a layout may use, asked of full records and of almost empty ones.

#include "english.h"
#include "facts/items.h"
#include "studio_records.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <set>
#include <string>

using namespace dyeleaf;

namespace {

const Printing printing{{english()}, nullptr, {2026, 11, 30}};

Items items(const Records& records, ItemKind kind, std::optional<Grouping> grouping = std::nullopt) {
    Diagnostics diagnostics;
    Items result = make_items(records, kind, grouping, {}, printing, diagnostics);
    CHECK(diagnostics.errors() == 0);
    return result;
}

std::string text(const Facts& facts, const std::string& name) {
    const auto value = facts.find(name);
    const auto* words = value ? std::get_if<std::string>(&*value) : nullptr;
    return words == nullptr ? "(none)" : *words;
}

std::vector<Facts> list(const Facts& facts, const std::string& name) {
    const auto value = facts.find(name);
    return value ? std::get<std::vector<Facts>>(*value) : std::vector<Facts>{};
}

Patch patch(const Facts& facts, const std::string& name) {
    return std::get<Patch>(facts.find(name).value());
}

FactKind kind_of(const FactValue& value) {
    constexpr std::array kinds{FactKind::text,   FactKind::patch,   FactKind::length,  FactKind::list,
                               FactKind::symbol, FactKind::picture, FactKind::speckles};
    return kinds.at(value.index());
}

// Asks everything, items of lists included, and notes which names gave something.
void ask_all(const Facts& facts, std::set<std::string>& answered) {
    for (const Vocabulary* vocabulary : facts.vocabularies()) {
        for (const FactRow& row : vocabulary->rows) {
            INFO(row.name);
            CHECK((row.kind == FactKind::list) == (row.items != nullptr));
            const auto value = facts.find(row.name);
            if (!value) continue;
            answered.insert(row.name);
            CHECK(kind_of(*value) == row.kind);
            if (const auto* words = std::get_if<std::string>(&*value)) CHECK_FALSE(words->empty());
            if (const auto* colour = std::get_if<Patch>(&*value)) CHECK_FALSE(colour->description.empty());
            if (const auto* inner = std::get_if<std::vector<Facts>>(&*value)) {
                CHECK_FALSE(inner->empty());
                for (const Facts& item : *inner) {
                    CHECK(item.vocabularies().front() == row.items);
                    ask_all(item, answered);
                }
            }
        }
    }
}

// `scope` is what can be asked in one place, innermost first; its first `fresh` vocabularies are new there.
void collect_names(const std::vector<const Vocabulary*>& scope, std::size_t fresh, std::set<std::string>& names) {
    std::set<std::string> here;
    for (const Vocabulary* vocabulary : scope) {
        for (const FactRow& row : vocabulary->rows) {
            INFO(vocabulary->name << ": " << row.name);
            CHECK(here.insert(row.name).second);
            CHECK_FALSE(row.meaning.empty());
            CHECK(row.meaning.find('\n') == std::string::npos);
            names.insert(row.name);
        }
    }
    for (std::size_t i = 0; i < fresh; ++i) {
        for (const FactRow& row : scope[i]->rows) {
            if (row.items == nullptr) continue;
            // Inside a list its items come first, then what is around them.
            std::vector<const Vocabulary*> inner{row.items};
            inner.insert(inner.end(), scope.begin(), scope.end());
            collect_names(inner, 1, names);
        }
    }
}

void collect_names(const std::vector<const Vocabulary*>& scope, std::set<std::string>& names) {
    collect_names(scope, scope.size(), names);
}

constexpr std::array kinds{ItemKind::dyes, ItemKind::jars, ItemKind::skeins, ItemKind::lots, ItemKind::bases};
constexpr Grouping whole_line{40, Together::by_line};

// Records of which every fact says something, some of one dye and some of another.
Records complete_records() {
    Records records = studio_records();
    Dye neon = plain_dye("neon", "Ember", "Fenlight acid", "F-9");
    neon.fluorescent = true;
    neon.in_stock = true;
    Dye strong = plain_dye("strong", "Damselfly", "Fenlight acid", "F-10");
    strong.swatches = {swatch(4, "plain-sock", Lab{44, -26, -40})}; // outside sRGB
    PhotoColour photo;
    photo.photo.name.value = "damselfly.jpg";
    photo.reading = PhotoReading{};
    photo.reading->read_as = "sRGB";
    const Sourced<RecordedColour> photographed{Boxed{photo}, {}};
    strong.swatches.push_back(swatch(3, "plain-sock", Boxed{photo}));
    strong.breaks_into = std::vector<Component>{{"teal", photographed, std::nullopt}};
    records.lots.front().colour = photographed;
    records.dyes.push_back(strong);
    neon.breaks_into = std::vector<Component>{};
    neon.hazards = std::vector<Hazard>{{"H318"}, {"H302"}, {"H334"}};
    records.dyes.push_back(neon);
    Jar guessed = full_jar();
    guessed.batch = std::nullopt;
    records.ingredients[0].bulk_density = grams_per_millilitre(1.2);
    records.jars.push_back(guessed);
    Jar grave = full_jar();
    grave.parts.front().id.value = "neon";
    records.jars.push_back(grave);
    for (const Girth::By by : {Girth::By::circumference, Girth::By::strip}) {
        Jar round = full_jar();
        round.girth = {by, mm(132), mm(132)};
        records.jars.push_back(round);
    }
    Jar cup = full_jar();
    cup.girth = {Girth::By::diameter, mm(60), mm(50)};
    records.jars.push_back(cup);
    records.bases[1].yarn_weight = "DK"; // and no gauge or needles of its own
    const PictureFile drawing{"logo.svg", PictureKind::svg, {}, 1, 1.5};
    const RecordedPicture picture{{"logo.svg", {}}, drawing};
    records.studio.logo = picture;
    records.lots.front().picture = picture;
    for (Dye& dye : records.dyes) {
        for (Swatch& swatch : dye.swatches)
            swatch.picture = picture;
    }
    return records;
}

} // namespace

TEST_CASE("no name means two things in one place", "[facts]") {
    for (const ItemKind kind : kinds) {
        std::set<std::string> names;
        collect_names(vocabularies(kind, false), names);
        collect_names(vocabularies(kind, true), names);
        CHECK(names.size() > 20);
    }
}

TEST_CASE("every name answers for full records, in its kind", "[facts]") {
    const Records records = complete_records();
    std::set<std::string> names;
    std::set<std::string> answered;
    for (const ItemKind kind : kinds) {
        collect_names(vocabularies(kind, false), names);
        for (const Item& item : items(records, kind)) {
            ask_all(item.facts, answered);
            ask_all(item.facts.printed({english(), true}, nullptr), answered);
        }
    }
    collect_names(vocabularies(ItemKind::dyes, true), names);
    for (const Item& item : items(records, ItemKind::dyes, whole_line))
        ask_all(item.facts, answered);
    for (const std::string& name : names) {
        INFO(name);
        CHECK(answered.contains(name));
    }
}

TEST_CASE("every name can be asked of records with next to nothing in them", "[facts]") {
    Records records;
    records.dyes = {plain_dye("d", "D", "", "d")};
    Ingredient salt;
    salt.id.value = "salt";
    salt.name = "salt";
    records.ingredients = {salt};
    Jar jar;
    jar.id.value = jar.code = "j";
    jar.parts = {part("d", true, 1), part("salt", false, 1)};
    records.jars = {jar};
    Base base;
    base.id.value = base.name = base.code = "b";
    records.bases = {base};
    Lot lot;
    lot.id.value = "l";
    lot.base.value = "b";
    lot.skeins = 1;
    records.lots = {lot};
    std::set<std::string> answered;
    for (const ItemKind kind : kinds) {
        for (const Item& item : items(records, kind))
            ask_all(item.facts, answered);
    }
    for (const Item& item : items(records, ItemKind::dyes, whole_line))
        ask_all(item.facts, answered);
    for (const char* always : {"caution.not_food", "caution.dust", "caution.airtight", "caution.hazards",
                               "caution.dust.short", "caution.airtight.short", "caution.hazards.short", "dye.breaks",
                               "dye.speckle", "jar.strength.text", "jar.ratio", "jar.recipe", "dye.unswatched"}) {
        INFO(always);
        CHECK(answered.contains(always));
    }
    for (const char* never :
         {"dye.warnings", "dye.components", "dye.swatches", "dye.status", "jar.mixed", "jar.total", "jar.lid.diameter",
          "lot.price", "skein.pot", "base.care", "base.tex", "studio.made_in"}) {
        INFO(never);
        CHECK_FALSE(answered.contains(never));
    }
}

// 63 g of 420 m in 100 g are 264.6 m; €16.00 for 63 g are €25.397 for 100 g (arithmetic).
TEST_CASE("a skein's facts are its own", "[facts]") {
    Records records = studio_records();
    records.lots[0].odd_skeins = {{3, {grams(63), grams(63), {}}, Price{1600}}, {4, {grams(80), grams(80), {}}, {}}};
    const auto skeins = items(records, ItemKind::skeins);
    CHECK(text(skeins[0].facts, "skein.put_up") == "100\u00a0g\u00a0· 420\u00a0m");
    CHECK(text(skeins[0].facts, "skein.put_up.other") == "3.5\u00a0oz\u00a0· 455\u00a0yd");
    CHECK(text(skeins[0].facts, "skein.price") == "€26.00");
    CHECK(text(skeins[0].facts, "skein.price.per_100_g") == "€26.00\u00a0per\u00a0100\u00a0g");
    CHECK(text(skeins[0].facts, "skein.price.blank") == "(none)");
    CHECK(text(skeins[2].facts, "skein.put_up") == "63\u00a0g\u00a0· 260\u00a0m");
    CHECK(text(skeins[2].facts, "skein.put_up.other") == "2.2\u00a0oz\u00a0· 285\u00a0yd");
    CHECK(text(skeins[2].facts, "skein.price") == "€16.00");
    CHECK(text(skeins[2].facts, "skein.price.per_100_g") == "€25.40\u00a0per\u00a0100\u00a0g");
    CHECK(text(skeins[2].facts, "lot.put_up") == "100\u00a0g\u00a0· 420\u00a0m");
    CHECK(text(skeins[3].facts, "skein.weight") == "80\u00a0g");
    CHECK(text(skeins[3].facts, "skein.price") == "(none)");
    CHECK(text(skeins[3].facts, "skein.price.blank") == "Price");
}

TEST_CASE("a dye's facts", "[facts]") {
    const Records records = studio_records();
    const Facts sloe = items(records, ItemKind::dyes).front().facts;
    CHECK(text(sloe, "dye.replaced_by") == "Use Ember (T24)");
    CHECK(text(sloe, "dye.hazards") == "H317 H334");
    CHECK(text(sloe, "dye.swatch.deepest.label") == "2\u00a0% on Plain Sock");
    CHECK(text(sloe, "dye.deepest.stock") == "200\u00a0mL");
    CHECK(text(sloe, "dye.date") == "14 Mar 2026");
    CHECK(text(sloe, "dye.dates") == "12 Mar 2026 to 14 Mar 2026, one undated");
    CHECK(text(sloe, "dye.family") == "violet");
    CHECK(text(sloe, "dye.fluorescent") == "(none)");
    CHECK(text(sloe, "card.of") == "1 of 2");
    CHECK(text(sloe, "studio.contact") == "The old pump house\u00a0· wool@quillmoor.example");
    CHECK(text(sloe, "printed.date") == "30 Nov 2026");

    const auto swatches = list(sloe, "dye.swatches");
    REQUIRE(swatches.size() == 3);
    CHECK(text(swatches[0], "swatch.depth") == "0.5\u00a0%");
    CHECK(text(swatches[0], "swatch.source") == "from a photo");
    CHECK(patch(swatches[0], "swatch.patch").kind == Patch::Kind::estimated);
    CHECK(text(swatches[1], "swatch.stock") == "200\u00a0mL");
    CHECK(patch(swatches[1], "swatch.patch").description == "Sloe at 2\u00a0% on Plain Sock");
    CHECK(text(swatches[2], "swatch.base.code") == "FD");
    CHECK(text(swatches[2], "swatch.date") == "(none)");
    CHECK(text(swatches[2], "swatch.date.or_unknown") == "date unknown");
    CHECK(patch(swatches[2], "swatch.patch").kind == Patch::Kind::not_recorded);
    // Inside a list the dye is still there to be asked.
    CHECK(text(swatches[2].within(sloe), "dye.code") == "F-412");

    const auto depths = list(sloe, "dye.depths");
    REQUIRE(depths.size() == 2);
    CHECK(text(depths[1], "depth.text") == "2\u00a0%");
    const auto cells = list(depths[1], "depth.patches");
    REQUIRE(cells.size() == 2);
    CHECK(text(cells[1], "cell.base") == "Fell DK");
    CHECK(patch(cells[1], "cell.patch").description == "Sloe at 2\u00a0% on Fell DK, not swatched");

    const auto bases = list(sloe, "dye.bases");
    REQUIRE(bases.size() == 2);
    CHECK(text(bases[0], "base.fibres") == "75\u00a0% merino wool\u00a0· 25\u00a0% polyamide");
    CHECK(list(bases[0], "base.swatches").size() == 2);
    CHECK(text(bases[0], "base.swatched") == "12 Mar 2026 to 14 Mar 2026");
    CHECK(text(bases[1], "base.swatched") == "date unknown");
}

TEST_CASE("a dye's dates stand only where a day is known", "[facts]") {
    Records records = studio_records();
    for (Swatch& one : records.dyes[0].swatches)
        one.dyed = UnknownDate{};
    const Facts sloe = items(records, ItemKind::dyes).front().facts;
    CHECK(text(sloe, "dye.date") == "(none)");
    CHECK(text(sloe, "dye.dates") == "(none)");
}

TEST_CASE("a fluorescent dye is not printable, with or without a tint", "[facts]") {
    Records records = studio_records();
    for (Dye& dye : records.dyes)
        dye.fluorescent = true;
    const auto dyes = items(records, ItemKind::dyes);
    CHECK(patch(dyes[0].facts, "dye.swatch.deepest").kind == Patch::Kind::not_printable);
    CHECK(patch(dyes[1].facts, "dye.swatch.deepest").kind == Patch::Kind::not_printable);
    CHECK(patch(dyes[1].facts, "dye.swatch.deepest").colour == Rgb{1, 1, 1});
}

TEST_CASE("a jar's facts", "[facts]") {
    const Records records = studio_records();
    const auto jars = items(records, ItemKind::jars);
    const Facts full = jars[0].facts;
    CHECK(text(full, "jar.name") == "Sloe, half strength");
    CHECK(text(full, "jar.strength") == "50\u00a0%");
    CHECK(text(full, "jar.recipe") == "50\u00a0% dye = 20\u00a0g Sloe + 20\u00a0g fine table salt");
    CHECK(text(list(full, "jar.parts")[1], "part.name") == "fine table salt");
    CHECK(text(full, "jar.salt") == "(none)");
    CHECK(text(full, "jar.total") == "40\u00a0g");
    CHECK(text(full, "jar.mixed") == "2 November 2026");
    CHECK(text(full, "jar.mixed.short") == "2 Nov 2026");
    CHECK(text(full, "jar.mixed.iso") == "2026-11-02");
    CHECK(text(full, "jar.mixed.or_unknown") == "mixed 2 Nov 2026");
    CHECK(text(full, "jar.topped_up") == "topped up Jan 2027");
    CHECK(text(full, "jar.use_by") == "Nov 2027");
    CHECK(text(full, "jar.dye_lot") == "77120 + 77188");
    CHECK(text(full, "caution.hazards") == "Danger: May cause an allergic skin reaction. May cause allergy or asthma "
                                           "symptoms or breathing difficulties if inhaled.");
    CHECK(text(full, "caution.signal") == "Danger");
    CHECK(text(full, "caution.hazards.short") == "Danger: H317 H334");
    CHECK(text(full, "jar.signal_word") == "Danger");
    CHECK(text(full, "jar.hazard_codes") == "H317 H334");
    CHECK(text(full, "jar.precautions.text") ==
          "Avoid breathing dust/fume/gas/mist/vapours/spray. Wear protective gloves.");
    const auto pictograms = list(full, "jar.pictograms");
    REQUIRE(pictograms.size() == 1);
    CHECK(std::get<Symbol>(pictograms[0].find("pictogram.symbol").value()).key == "ghs/GHS08");
    CHECK(text(pictograms[0], "pictogram.name") == "health hazard");
    CHECK(text(pictograms[0], "pictogram.word") == "(none)");
    const auto statements = list(full, "jar.hazard_statements");
    REQUIRE(statements.size() == 2);
    CHECK(text(statements[0], "statement.code") == "H317");
    CHECK(text(statements[0], "statement.text") == "May cause an allergic skin reaction");
    CHECK(std::get<Length>(full.find("jar.wrap.length").value()) == mm(137.3));
    CHECK(std::get<Length>(full.find("jar.lid.diameter").value()) == mm(36));

    const Facts sparse = jars[1].facts;
    CHECK(text(sparse, "jar.name") == "Ember + Sloe");
    CHECK(text(sparse, "jar.strength") == "(none)");
    CHECK(text(sparse, "jar.strength.text") == "by volume: strength unknown");
    CHECK(text(sparse, "jar.mixed") == "(none)");
    CHECK(text(sparse, "jar.mixed.or_unknown") == "mixing date unknown");
    CHECK(text(sparse, "jar.salt") == "salt type not recorded");
    CHECK(text(sparse, "jar.class") == "class not recorded + acid");
    CHECK(text(sparse, "jar.lines") == "Tarnbeck milling + Fenlight acid");
    CHECK(text(sparse, "caution.hazards") == "Danger: May cause an allergic skin reaction. May cause allergy or asthma "
                                             "symptoms or breathing difficulties if inhaled. Hazard data not on file "
                                             "for Ember: treat as harmful if breathed in.");
    const auto parts = list(sparse, "jar.parts");
    REQUIRE(parts.size() == 3);
    CHECK(text(parts[0], "part.parts") == "2\u00a0parts");
    CHECK(text(parts[0], "part.mass") == "(none)");
    CHECK(text(parts[2], "part.name") == "salt");
    CHECK_FALSE(parts[2].find("part.patch"));
    CHECK(list(sparse, "jar.patches").size() == 2);
}

// 103 − 78.4 = 24.6 g, half of it dye; 24.6 / 1.5 = 16.4 skeins.
TEST_CASE("a jar says where print falls short of its colour", "[facts]") {
    Records records = studio_records();
    const auto label = [&] { return text(items(records, ItemKind::jars)[0].facts, "jar.swatch_label"); };
    CHECK(label() == "2\u00a0% on Plain Sock");
    for (Swatch& swatch : records.dyes[0].swatches)
        swatch.colour = Sourced<RecordedColour>{Lab{44, -26, -40}, {}};
    CHECK(label() == "2\u00a0% on Plain Sock, stronger than print can show");
}

TEST_CASE("what the bench asks of a jar", "[facts]") {
    Records records = studio_records();
    const Facts jar = items(records, ItemKind::jars)[0].facts;
    CHECK(text(jar, "jar.left") == "24.6\u00a0g");
    CHECK(text(jar, "jar.left.dye") == "12.3\u00a0g");
    CHECK(text(jar, "jar.left.on") == "20 Jan 2027");
    CHECK(text(jar, "jar.skeins_left") == "16\u00a0skeins");
    CHECK(text(jar, "jar.per_skein.dye") == "0.75\u00a0g");
    const auto weaken = list(jar, "jar.weaken");
    REQUIRE(weaken.size() == 3);
    CHECK(text(weaken[0], "weaken.to") == "20\u00a0%");
    CHECK(text(weaken[0], "weaken.for_ten") == "15\u00a0g");
    CHECK(text(weaken[0], "weaken.salt") == "36.9\u00a0g");
    const auto steps = list(jar, "jar.mixing_steps");
    REQUIRE(steps.size() == 1);
    CHECK(text(steps[0], "step.text") == "20\u00a0g Sloe + 20\u00a0g fine table salt");

    records.jars[0].weighed->on = Date{2026, 12, 1}; // before it was topped up
    records.jars[0].use_by = std::nullopt;
    records.studio.jars_keep = Months{6};
    const Facts again = items(records, ItemKind::jars)[0].facts;
    CHECK(text(again, "jar.left") == "(none)");
    CHECK(text(again, "jar.skeins_left") == "(none)");
    CHECK(text(again, "jar.use_by") == "2 May 2027");
    records.jars[0].keeps = Months{24};
    CHECK(text(items(records, ItemKind::jars)[0].facts, "jar.use_by") == "2 Nov 2028");
    records.jars[0].use_by = UnknownDate{};
    CHECK(text(items(records, ItemKind::jars)[0].facts, "jar.use_by") == "(none)");
}

// 1180 g at 1.5 % from 1 % is 1770 mL; 0.02 % of it is 0.236 g, in three pots of 0.1 g 0.3 g, which is 0.025 %.
TEST_CASE("what the bench asks of a lot", "[facts]") {
    Records records = studio_records();
    const auto lots = items(records, ItemKind::lots);
    const Facts lot = lots[0].facts;
    CHECK(text(lot, "lot.dry_weight") == "1180\u00a0g");
    CHECK(text(lot, "lot.dry_weight.basis") == "dry weight, as weighed");
    CHECK(text(lot, "lot.water") == "35.4\u00a0L");
    CHECK(text(lot, "lot.liquor") == "1\u00a0:\u00a030");
    const auto lines = list(lot, "lot.recipe");
    REQUIRE(lines.size() == 3);
    CHECK(text(lines[0], "line.name") == "Sloe");
    CHECK(text(lines[0], "line.amount") == "1770\u00a0mL");
    CHECK(text(lines[0], "line.from") == "1\u00a0% stock: 1\u00a0g in 100\u00a0mL");
    CHECK(text(lines[0], "line.result") == "(none)");
    CHECK(patch(lines[0], "line.patch").description == "Sloe at 1.5\u00a0% on Plain Sock, estimated between swatches");
    CHECK(text(lines[1], "line.amount") == "0.3\u00a0g");
    CHECK(text(lines[1], "line.result") == "comes to 0.025\u00a0% on this scale");
    CHECK(text(lines[1], "line.note") == "after twenty minutes");
    CHECK(text(lines[2], "line.name") == "Sloe, half strength");
    CHECK(text(lines[2], "line.from") == "shaken on, 1.5\u00a0g a skein of 50\u00a0% dye");
    CHECK(text(lines[2], "line.amount") == "18\u00a0g");
    const auto portions = list(lines[0], "line.pots");
    REQUIRE(portions.size() == 3);
    CHECK(text(portions[2], "pot.letter") == "C");
    CHECK(text(portions[2], "pot.amount") == "590\u00a0mL");
    const auto acid = list(lot, "lot.acid");
    REQUIRE(acid.size() == 1);
    CHECK(text(acid[0], "acid.name") == "Citric acid");
    CHECK(text(acid[0], "acid.amount") == "35.4\u00a0g");
    CHECK(text(acid[0], "acid.vinegar") ==
          "or about 660\u00a0mL of 5\u00a0% vinegar: as much acid, but not the same pH");
    const auto pots = list(lot, "lot.pots");
    REQUIRE(pots.size() == 3);
    CHECK(text(pots[1], "pot.name") == "Pot B");
    CHECK(text(pots[1], "pot.numbers") == "5–8");
    CHECK(text(pots[1], "pot.skeins") == "4\u00a0skeins");
    CHECK(text(pots[1], "pot.water") == "11.8\u00a0L");

    const Facts bare = lots[1].facts;
    CHECK(text(bare, "lot.dry_weight.basis") == "dry weight, nominal");
    // Three skeins of four ounces: 340.194 g.
    records.lots[1].skein_mass = SkeinFigure<Mass>{grams(28.349523125 * 4), {}, grams(28.349523125 * 4)};
    CHECK(text(items(records, ItemKind::lots)[1].facts, "lot.dry_weight") == "340.2\u00a0g");
    CHECK(text(bare, "lot.water") == "(none)");
    CHECK(text(bare, "caution.hazards") == "(none)");
    CHECK_FALSE(bare.find("lot.recipe"));
    CHECK_FALSE(bare.find("lot.pots"));

    records.lots[0].pots.clear();
    records.lots[0].recipe.pot_holds = 5;
    CHECK(text(items(records, ItemKind::lots)[0].facts, "lot.pot_count") == "3");
    CHECK(text(items(records, ItemKind::skeins)[4].facts, "skein.pot") == "Pot B");
    CHECK(text(items(records, ItemKind::skeins)[4].facts, "skein.pot.letter") == "B");
}

TEST_CASE("facts of yarn for sale", "[facts]") {
    const Records records = studio_records();
    const auto skeins = items(records, ItemKind::skeins);
    const Facts third = skeins[2].facts;
    CHECK(text(third, "skein.of") == "3 of 12");
    CHECK(text(third, "skein.pot") == "Pot A");
    CHECK(text(skeins[6].facts, "skein.of") == "8 of 12");
    CHECK(text(skeins[6].facts, "skein.pot") == "Pot B");
    CHECK(text(third, "lot.price") == "€26.00");
    CHECK(text(third, "price.blank") == "(none)");
    CHECK(text(third, "lot.wash_note") == "May bleed at first wash: wash apart");
    CHECK(text(third, "lot.alternate") == "Skeins differ a little: alternate two as you knit");
    CHECK(text(third, "base.put_up") == "100\u00a0g\u00a0· 420\u00a0m");
    CHECK(text(third, "base.put_up.other") == "3.5\u00a0oz\u00a0· 455\u00a0yd");
    CHECK(text(third, "base.care") == "Hand\u00a0wash\u00a0· Do\u00a0not\u00a0bleach");
    CHECK(text(third, "lot.crock_note") == "May rub off on hands and needles: wash before wearing");
    CHECK(text(third, "lot.rinse_note") == "Keeps tinting the water: wash apart");
    CHECK(text(third, "base.fibres") == "75\u00a0% merino wool\u00a0· 25\u00a0% polyamide"); // as written: no market
    CHECK(text(third, "base.regain") == "14.31\u00a0%");
    CHECK(text(third, "base.dry_weight") == "87.5\u00a0g");
    CHECK(text(third, "base.provenance") == "spun in Portugal\u00a0· dyed in Ireland");
    CHECK(text(third, "base.care.proposed") ==
          "Hand\u00a0wash\u00a0· Do\u00a0not\u00a0bleach\u00a0· Do\u00a0not\u00a0tumble\u00a0dry\u00a0· Dry\u00a0flat"
          "\u00a0· Iron\u00a0low");
    const Facts bare = skeins[skeins.size() - 1].facts;
    CHECK(text(bare, "lot.crock_note") == "(none)");
    CHECK(text(bare, "lot.rinse_note") == "(none)");
    CHECK(text(bare, "price.blank") == "Price");
    CHECK(text(bare, "skein.pot") == "(none)");
    CHECK(text(bare, "lot.wash_note") == "(none)");
    CHECK_FALSE(bare.find("lot.patch"));
}

TEST_CASE("fibres are named as the studio's market asks", "[facts]") {
    Records records = studio_records();
    records.studio.market = Market::us;
    const Facts base = items(records, ItemKind::bases).front().facts;
    CHECK(text(base, "base.fibres") == "75\u00a0% wool\u00a0· 25\u00a0% nylon");
    const auto fibres = list(base, "base.fibre_list");
    REQUIRE(fibres.size() == 2);
    CHECK(text(fibres[1], "fibre.name") == "nylon");
    CHECK(text(fibres[1], "fibre.share") == "25\u00a0%");
    const auto dyes = items(records, ItemKind::dyes);
    CHECK(text(list(dyes.front().facts, "dye.bases").front(), "base.fibres") ==
          "75\u00a0% wool\u00a0· 25\u00a0% nylon");
}

TEST_CASE("care is said in words unless the studio wants symbols", "[facts]") {
    const std::string in_words = "Hand\u00a0wash\u00a0· Do\u00a0not\u00a0bleach";
    const auto [style, words, symbols] = GENERATE_COPY(table<CareStyle, std::string, std::size_t>({
        {CareStyle::words, in_words, 0},
        {CareStyle::symbols, "(none)", 2},
        {CareStyle::both, in_words, 2},
    }));
    Records records = studio_records();
    records.studio.care_style = style;
    const Facts base = items(records, ItemKind::bases).front().facts;
    CHECK(text(base, "base.care") == in_words);
    CHECK(text(base, "base.care.words") == words);
    const auto drawn = list(base, "base.care_symbols");
    REQUIRE(drawn.size() == symbols);
    if (drawn.empty()) return;
    const auto symbol = std::get<Symbol>(drawn.front().find("care.symbol").value());
    CHECK(symbol.key == "care/hand wash");
    CHECK(symbol.description == "Hand wash");
}

TEST_CASE("what a lot's codes to scan hold", "[facts]") {
    Records records = studio_records();
    const auto lot = [&] { return items(records, ItemKind::lots).front().facts; };
    CHECK(text(lot(), "lot.link") == "https://quillmoor.example/lot/26-117");
    CHECK(text(lot(), "lot.ean") == "2000000100012"); // its base's
    CHECK(text(lot(), "lot.upc") == "400000100012");
    records.lots[0].numbers.ean = Sourced<std::string>{"2000000100029", {}};
    records.lots[0].id.value = "26/117";
    CHECK(text(lot(), "lot.ean") == "2000000100029");
    CHECK(text(lot(), "base.ean") == "2000000100012");
    CHECK(text(lot(), "lot.link") == "https://quillmoor.example/lot/26%2F117");
    records.studio.link.reset();
    CHECK(text(lot(), "lot.link") == "(none)");
    // 300 dots to the inch, where none are recorded.
    CHECK(std::get<Length>(lot().find("printer.dot").value()).in_mm() == Approx(25.4 / 300));
}
