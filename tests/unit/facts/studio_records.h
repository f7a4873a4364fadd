// An invented studio for the tests of facts: one of everything with all that can be recorded, and one with next to
// nothing.
#pragma once

#include "records/records.h"

namespace dyeleaf {

inline Swatch swatch(double depth, const std::string& base, std::optional<RecordedColour> colour,
                     std::optional<RecordedDate> dyed = std::nullopt) {
    Swatch made;
    made.depth = percent(depth);
    made.base.value = base;
    if (colour) made.colour = Sourced<RecordedColour>{*colour, {}};
    made.dyed = dyed;
    return made;
}

inline Rgb hex(const std::string& text) {
    return parse_hex(text).value();
}

inline Dye full_dye() {
    Dye dye;
    dye.id.value = "sloe";
    dye.name = "Sloe";
    dye.line = "Fenlight acid";
    dye.code = "F-412";
    dye.dye_class = "acid";
    dye.product = "Fenlight Violet 3";
    dye.batch = "77120";
    dye.opened = Date{2026, 3, 0};
    dye.form = "powder";
    dye.status = DyeStatus::discontinued;
    dye.replaced_by = Id{"ember", {}};
    dye.status_note = "last tub";
    dye.fluorescent = false;
    dye.bleeds = true;
    dye.crocks = true;
    dye.rinses_clear = false;
    dye.light_fastness = "moderate";
    dye.breaks_into = std::vector<Component>{{"rust", Sourced<RecordedColour>{hex("#8a4b2a"), {}}, mm(3)},
                                             {"", std::nullopt, std::nullopt}};
    dye.speckle = Speckle{SpeckleGrade::clean, mm(2.5), per_square_centimetre(4), Date{2026, 3, 14}};
    dye.hazards = std::vector<Hazard>{{"H334"}, {"H317"}};
    dye.precautions = std::vector<Precaution>{{"P261"}, {"P280", "Wear protective gloves."}};
    dye.bulk_density = grams_per_millilitre(0.45);
    dye.swatches = {swatch(2, "plain-sock", Lab{31, 12, -24}, Date{2026, 3, 14}),
                    swatch(0.5, "plain-sock", hex("#8d7fa8"), Date{2026, 3, 12}),
                    swatch(0.5, "fell-dk", std::nullopt, UnknownDate{})};
    dye.swatches[1].notes = "first try";
    dye.swatches[1].colour_source = ColourSource::photo;
    dye.notes = "strikes fast";
    return dye;
}

inline Dye plain_dye(const std::string& id, const std::string& name, const std::string& line, const std::string& code) {
    Dye dye;
    dye.id.value = id;
    dye.name = name;
    dye.line = line;
    dye.code = code;
    return dye;
}

inline Part part(const std::string& id, bool is_dye, double parts, std::optional<Mass> mass = std::nullopt) {
    return {{id, {}}, is_dye, parts, mass};
}

inline Jar full_jar() {
    Jar jar;
    jar.id.value = "sloe-shaker";
    jar.code = "SL";
    jar.name = "Sloe, half strength";
    jar.parts = {part("sloe", true, 1), part("salt", false, 1)};
    jar.batch = grams(40);
    jar.holds = millilitres(60);
    jar.girth = {Girth::By::diameter, mm(42), mm(42)};
    jar.height = mm(70);
    jar.lid = mm(38);
    jar.mixed = Date{2026, 11, 2};
    jar.mixed_by = "RQ";
    jar.dye_lot = "77120";
    jar.topped_up = {{Date{2027, 1, 5}, grams(10), "77188", {}, {}}, {UnknownDate{}, {}, {}, {}, {}}};
    jar.use_by = Date{2027, 11, 0};
    jar.tare = grams(78.4);
    jar.weighed = Weighing{Date{2027, 1, 20}, grams(103)};
    jar.per_skein = grams(1.5);
    jar.salt = "fine table salt";
    jar.notes = "shake shut";
    return jar;
}

inline Jar sparse_jar() {
    Jar jar;
    jar.id.value = "two-spoons";
    jar.code = "TS";
    jar.parts = {part("ember", true, 2), part("sloe", true, 1), part("salt", false, 3)};
    jar.basis = Basis::volume;
    jar.girth = {Girth::By::diameter, mm(51), mm(51)};
    jar.height = mm(60);
    jar.mixed = UnknownDate{};
    return jar;
}

inline Base full_base() {
    Base base;
    base.id.value = "plain-sock";
    base.name = "Plain Sock";
    base.code = "PS";
    base.fibres = {{"polyamide", percent(25)}, {"merino wool", percent(75)}};
    base.skein = {{grams(100), grams(100), {}}, {metres(420), metres(420), {}}};
    base.yarn_weight = "super fine";
    base.gauge = "30 stitches = 10 cm";
    base.needles = "2.25–2.75 mm";
    base.origin = "spun in Portugal";
    base.care = {{CareProcess::bleach, "no bleach", "Do not bleach"}, {CareProcess::wash, "hand wash", "Hand wash"}};
    base.colour = Sourced<RecordedColour>{hex("#f2ede1"), {}};
    base.notes = "four plies";
    base.numbers = {Sourced<std::string>{"2000000100012", {}}, Sourced<std::string>{"400000100012", {}}};
    return base;
}

inline Records studio_records() {
    Records records;
    records.studio.name = "Quillmoor Yarn Works";
    records.studio.tagline = "Wool dyed in small pots";
    records.studio.contact = {"The old pump house", "wool@quillmoor.example"};
    records.studio.unit_price = true;
    records.studio.units = Units::both;
    records.studio.currency = {"EUR", 2};
    records.studio.made_in = "Ireland";
    records.studio.link = "https://quillmoor.example/lot/";
    records.studio.care_style = CareStyle::both;

    Ingredient salt;
    salt.id.value = "salt";
    salt.name = "salt";
    records.ingredients = {salt};

    records.dyes = {full_dye(), plain_dye("ember", "Ember", "Tarnbeck milling", "T24")};
    records.jars = {full_jar(), sparse_jar()};

    Base fell = full_base();
    fell.id.value = "fell-dk";
    fell.name = "Fell DK";
    fell.code = "FD";
    fell.fibres = {{"wool", percent(100)}};
    fell.yarn_weight = fell.gauge = fell.needles = fell.origin = fell.notes = std::nullopt;
    fell.care.clear();
    records.bases = {full_base(), fell};

    Lot lot;
    lot.id.value = "26-117";
    lot.colourway = "Hedge in October";
    lot.base.value = "plain-sock";
    lot.skeins = 12;
    lot.pots = {4, 4, 4};
    lot.spoilt = {7};
    lot.dyed = Date{2026, 11, 9};
    lot.price = Price{2600};
    lot.colour = Sourced<RecordedColour>{Lab{44, 18, 30}, {}};
    lot.dyes = {Id{"sloe", {}}};
    lot.alternate = true;
    lot.notes = "quick strike";
    lot.recipe.lines = {{DyeLine{{"sloe", {}}, percent(1.5), WeightInVolume{percent(1)}}, {}, {}},
                        {DyeLine{{"ember", {}}, percent(0.02), Powder{}}, "after twenty minutes", {}},
                        {JarLine{{"sloe-shaker", {}}, grams(1.5), {}}, {}, {}}};
    lot.recipe.dry_weight = grams(1180);
    lot.recipe.liquor = LiquorRatio{30};
    lot.recipe.acid = {{"citric acid", percent(3)}};
    lot.recipe.steps = {"soak two hours"};
    Lot bare;
    bare.id.value = "0077";
    bare.colourway = "Fog";
    bare.base.value = "fell-dk";
    bare.skeins = 3;
    records.lots = {lot, bare};
    return records;
}

} // namespace dyeleaf
