// What a picture of speckles shows, and what it says of that which nobody has recorded.
#include "english.h"
#include "facts/speckled_dye.h"
#include "studio_records.h"

#include <catch2/catch.hpp>
#include <numbers>

using namespace dyeleaf;

namespace {

Records studio() {
    Records records;
    records.bases = {full_base()};
    Base plain;
    plain.id.value = "fell-dk";
    plain.name = "Fell DK";
    records.bases.push_back(plain);
    records.dyes = {full_dye()};
    return records;
}

std::string note(const Records& records, const Dye& dye) {
    return speckled_note(english(), records, dye).value_or("(none)");
}

// Words keep numbers and units together; here that is not looked at.
std::string spaced(std::string text) {
    for (std::size_t at = text.find("\u00a0"); at != std::string::npos; at = text.find("\u00a0"))
        text.replace(at, 2, " ");
    return text;
}

} // namespace

TEST_CASE("a picture has the recorded sizes and the colours of the deepest swatch and its base", "[facts]") {
    const Records records = studio();
    const auto speckled = speckled_dye(english(), records, full_dye());
    REQUIRE(speckled.has_value());
    CHECK(speckled->dye_id == "sloe");
    CHECK(speckled->grade == SpeckleGrade::clean);
    CHECK(speckled->spread == mm(2.5));
    CHECK(speckled->density == per_square_centimetre(4));
    CHECK(speckled->dye == Speckled::Dye::shown);
    CHECK(to_hex(speckled->colour) == "#4c436f"); // lab(31 12 -24)
    REQUIRE(speckled->ground.has_value());
    CHECK(to_hex(*speckled->ground) == "#f2ede1");
    // The other colour that it breaks into has neither colour nor halo.
    REQUIRE(speckled->halos.size() == 1);
    CHECK(speckled->halos[0].reach == mm(3));
    CHECK(to_hex(speckled->halos[0].colour) == "#8a4b2a");
    CHECK(spaced(speckled->description) ==
          "Sloe: Clean speckles, 2.5 mm, 4 per cm², on Plain Sock; halos of rust 3 mm; true size on Plain Sock · "
          "without this colour");
}

TEST_CASE("without a try or a spread there is no picture and nothing is said of it", "[facts]") {
    const Records records = studio();
    Dye dye = full_dye();
    dye.speckle->spread.reset();
    CHECK_FALSE(speckled_dye(english(), records, dye).has_value());
    CHECK(note(records, dye) == "(none)");
    dye.speckle.reset();
    CHECK_FALSE(speckled_dye(english(), records, dye).has_value());
}

TEST_CASE("what is not recorded is said", "[facts]") {
    Records records = studio();
    Dye dye = full_dye();
    dye.breaks_into.reset();
    CHECK(spaced(note(records, dye)) == "true size on Plain Sock");
    dye.speckle->density.reset();
    CHECK(spaced(note(records, dye)) == "true size on Plain Sock · number assumed");
    records.bases[0].colour.reset();
    CHECK(spaced(note(records, dye)) == "true size · colour of the yarn not recorded · number assumed");
    CHECK_FALSE(speckled_dye(english(), records, dye)->ground.has_value());
    dye.swatches[0].colour_source = ColourSource::photo;
    CHECK(spaced(note(records, dye)) ==
          "true size · colour of the yarn not recorded · number assumed · estimated from a photo");
    dye.swatches.clear();
    CHECK(speckled_dye(english(), records, dye)->dye == Speckled::Dye::not_recorded);
    CHECK(spaced(note(records, dye)) ==
          "true size · colour of the yarn not recorded · number assumed · no colour recorded");
    dye.fluorescent = true;
    CHECK(speckled_dye(english(), records, dye)->dye == Speckled::Dye::not_printable);
    CHECK(speckled_dye(english(), records, dye)->description.find("fluorescent: not printable") != std::string::npos);
}

TEST_CASE("a number that is assumed leaves most of the yarn bare", "[facts]") {
    // One to a square of 1.7 × 2 mm: 100 / 11.56.
    CHECK(assumed_density(mm(2), {}).number() == Approx(8.6505).epsilon(0.001));
    // Specks of 5 mm in halos of 5 mm are 15 mm wide; one in three has them, and they cover no more than half.
    const double whole = assumed_density(mm(5), mm(5)).number() / 3;
    CHECK(whole * std::numbers::pi / 4 * 1.5 * 1.5 == Approx(0.5));
}
