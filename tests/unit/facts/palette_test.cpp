// The colours of a lot in the order in which they are laid on, and how far each can be trusted.
#include "colour/difference.h"
#include "colour/spaces.h"
#include "english.h"
#include "facts/palette.h"
#include "studio_records.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

Records studio() {
    Records records;
    records.bases = {full_base()};
    Base fell;
    fell.id.value = "fell-dk";
    fell.name = "Fell DK";
    records.bases.push_back(fell);
    Dye ember = plain_dye("ember", "Ember", "Fenlight acid", "F-1");
    ember.swatches = {swatch(1, "fell-dk", hex("#c04a20"))};
    Dye glow = plain_dye("glow", "Glow", "Fenlight acid", "F-2");
    glow.fluorescent = true;
    glow.swatches = {swatch(1, "plain-sock", hex("#d0ff20"))};
    records.dyes = {full_dye(), ember, glow, plain_dye("new", "New", "Fenlight acid", "F-3")};
    records.jars = {full_jar(), sparse_jar()};
    return records;
}

RecipeLine dye_line(const std::string& id, double depth) {
    return {DyeLine{{id, {}}, percent(depth), Powder{}}, {}, {}};
}
RecipeLine jar_line(const std::string& id) {
    return {JarLine{{id, {}}, grams(1), {}}, {}, {}};
}

Lot lot_of(std::vector<RecipeLine> lines) {
    Lot lot;
    lot.id.value = "26-1";
    lot.base.value = "plain-sock";
    lot.recipe.lines = std::move(lines);
    return lot;
}

struct Strip {
    Records records;
    Lot lot;
    [[nodiscard]] std::vector<PaletteColour> colours() const { return palette_of({&records, &lot}); }
    [[nodiscard]] Patch first() const { return palette_patch(english(), colours().front()); }
};

Strip strip(std::vector<RecipeLine> lines) {
    return {studio(), lot_of(std::move(lines))};
}

std::string spaced(std::string text) {
    for (std::size_t at = text.find("\u00a0"); at != std::string::npos; at = text.find("\u00a0"))
        text.replace(at, 2, " ");
    return text;
}

} // namespace

TEST_CASE("the bath comes before what is shaken on, each in the order of the recipe", "[facts]") {
    const Strip made =
        strip({dye_line("ember", 1), jar_line("two-spoons"), dye_line("sloe", 2), jar_line("sloe-shaker")});
    std::string order;
    for (const PaletteColour& colour : made.colours())
        order += colour.dye->id.value + (colour.depth ? " dyed, " : " speckled, ");
    CHECK(order == "ember dyed, sloe dyed, ember speckled, sloe speckled, sloe speckled, ");
}

TEST_CASE("a lot without a recipe has no palette", "[facts]") {
    Strip made = strip({});
    made.lot.dyes = {{"sloe", {}}};
    CHECK(made.colours().empty());
}

TEST_CASE("a swatch of that depth on the lot's base is the colour, as it was recorded", "[facts]") {
    CHECK(strip({dye_line("sloe", 2)}).first().kind == Patch::Kind::recorded);
    CHECK(to_hex(strip({dye_line("sloe", 2)}).first().colour) == "#4c436f");
    CHECK(strip({dye_line("sloe", 0.5)}).first().kind == Patch::Kind::estimated); // from a photo
    CHECK(to_hex(strip({dye_line("sloe", 0.5)}).first().colour) == "#8d7fa8");
}

TEST_CASE("between two swatches the shade is estimated", "[facts]") {
    const Patch patch = strip({dye_line("sloe", 1)}).first();
    CHECK(patch.kind == Patch::Kind::estimated);
    CHECK(spaced(patch.description) == "Sloe at 1 % on Plain Sock, estimated between swatches");
    const Lab deep{31, 12, -24};
    const Lab pale = to_lab(hex("#8d7fa8"));
    CHECK(to_lab(patch.colour).lightness > deep.lightness + 5);
    CHECK(to_lab(patch.colour).lightness < pale.lightness - 5);
}

TEST_CASE("beyond the swatches the nearest is shown and marked", "[facts]") {
    const Patch pale = strip({dye_line("sloe", 0.04)}).first();
    CHECK(pale.kind == Patch::Kind::estimated);
    CHECK(to_hex(pale.colour) == "#8d7fa8");
    CHECK(spaced(pale.description).ends_with(", not at 0.04 % on Plain Sock"));
    const Patch deep = strip({dye_line("sloe", 4)}).first();
    CHECK(deep.kind == Patch::Kind::estimated);
    CHECK(to_hex(deep.colour) == "#4c436f");
    CHECK(spaced(deep.description) == "Sloe at 2 % on Plain Sock, not at 4 % on Plain Sock");
    // On another base alone.
    const Patch other = strip({dye_line("ember", 1)}).first();
    CHECK(other.kind == Patch::Kind::estimated);
    CHECK(spaced(other.description) == "Ember at 1 % on Fell DK, not at 1 % on Plain Sock");
}

TEST_CASE("what is unknown or not printable looks as it does everywhere", "[facts]") {
    CHECK(strip({dye_line("new", 1)}).first().kind == Patch::Kind::not_recorded);
    CHECK(strip({dye_line("glow", 1)}).first().kind == Patch::Kind::not_printable);
    CHECK(strip({dye_line("glow", 3)}).first().kind == Patch::Kind::not_printable);
}

TEST_CASE("what is shaken on has the dye's deepest colour", "[facts]") {
    const Patch patch = strip({jar_line("sloe-shaker")}).first();
    CHECK(patch.kind == Patch::Kind::recorded);
    CHECK(to_hex(patch.colour) == "#4c436f");
}
