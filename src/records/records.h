// The dyer's records as plain values: what she wrote and nothing else. An empty optional is "not recorded", which is
// never the same as "no". Every text is as written; ids are resolved (read_records refuses unknown ones).
#pragma once

#include "base/boxed.h"
#include "base/colour.h"
#include "base/date.h"
#include "base/length.h"
#include "base/quantity.h"
#include "base/spot.h"
#include "colour/spectrum.h"
#include "records/care.h"
#include "records/girth.h"
#include "records/lot_form.h"
#include "records/money.h"
#include "records/photo_colour.h"
#include "records/recipe.h"
#include "records/recorded_picture.h"
#include "records/speckle_grade.h"

#include <deque>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace dyeleaf {

using Id = Sourced<std::string>;

// `unknown` is something that a dyer writes on purpose; a date left out is an empty optional around this.
struct UnknownDate {
    friend bool operator==(UnknownDate, UnknownDate) = default;
};
using RecordedDate = std::variant<UnknownDate, Date>;

using RecordedColour = std::variant<Rgb, Lab, Spectrum, Boxed<PhotoColour>>;

// The photograph that it is read from; null where it comes from elsewhere.
const PhotoColour* photo_of(const RecordedColour& colour);

enum class Market { eu, uk, us, none };
enum class Units { metric, imperial, both }; // both: metric first
enum class ColourSource { instrument, photo, eye };
enum class DyeStatus { current, discontinued, reformulated };
enum class Basis { weight, volume };
enum class PutUp { skein, mini, cone, braid };
enum class Spinning { combed, carded };
enum class CareStyle { words, symbols, both }; // what tags say of care with
enum class CareSource { mill, own_test };
// How the paper comes to show its back: turned in the printer about one of its edges, or by hand, all fronts first; the
// pile then comes back with its last sheet on top where the order is reversed.
enum class Backs { long_edge, short_edge, by_hand, by_hand_reversed };
using Superwash = std::variant<bool, Percent>; // of all its wool or of none; or of so much of the yarn
using InStock = std::variant<bool, Mass>;      // some or none; or so much

// From which difference (ΔE00, CIEDE2000) on two lots of one colourway are told apart. There is no standard for yarn
// dyed by hand: these are common practice.
struct LotLimits {
    double a_little = 2, visibly = 5, too_much = 10;
    friend bool operator==(const LotLimits&, const LotLimits&) = default;
};

struct Studio {
    std::string name;
    std::string tagline;              // printed under the name where a layout asks for it
    std::vector<std::string> contact; // lines as they shall print
    Market market = Market::none;
    Units units = Units::metric;
    Currency currency;
    Mass scale_step = grams(0.1); // the finest step of her scale
    bool unit_price = false;      // tags state the price of 100 g beside that of the skein
    std::optional<std::string> made_in;
    std::optional<Months> jars_keep; // how long she trusts a jar, where it does not say otherwise
    CareStyle care_style = CareStyle::words;
    std::optional<Sourced<std::string>> language;        // of print, by its code: "de"; none: English
    std::optional<Sourced<std::string>> second_language; // beside it, where a layout asks for one
    LotLimits lot_limits;
    std::optional<LotForm> lot_codes; // the form of the codes that are given out from here on
    std::optional<Backs> backs;       // none: whichever edge keeps every back upright
    Boxed<RecordedPicture> logo;
    std::optional<std::string> link; // codes to scan lead there, with a lot's id behind it
    Length dot = inches(1) / 300;    // of her printer
    Spot spot;
};

// Two numbers that were read on one side of a measuring sheet, or off its two lines.
struct Reading {
    Length across, down;
    friend bool operator==(Reading, Reading) = default;
};
// One tray of one printer, as it was read off the measuring sheet that it printed (calibration/misprint.h).
struct Printer {
    Sourced<std::string> name;
    std::string tray;                      // empty: not named
    Sourced<std::string> paper;            // "A4"; looked up where papers are known
    std::optional<Backs> backs;            // how it turned the sheet; none: as the studio says
    Reading front;                         // where the creases cut the scales, 0 to 20 mm
    std::optional<Reading> back;           // none: printed on one side only
    std::optional<Sourced<Reading>> lines; // as long as they came out; none: not measured
    Spot spot;
};

struct Swatch {
    Percent depth; // dye on dry weight of fibre
    Id base;
    std::optional<Sourced<RecordedColour>> colour; // none: dyed, but no colour taken
    ColourSource colour_source = ColourSource::eye;
    std::optional<RecordedDate> dyed;
    Boxed<RecordedPicture> picture; // a photograph of it
    std::optional<std::string> notes;
    Spot spot;
};

// A colour that a dye breaks into.
struct Component {
    std::string name; // "rust"; empty where only a colour is recorded
    std::optional<Sourced<RecordedColour>> colour;
    std::optional<Length> halo; // how far it runs out beyond the main colour
};

struct Speckle {
    SpeckleGrade grade = SpeckleGrade::clean;
    std::optional<Length> spread;        // width of a speckle once wetted
    std::optional<ArealDensity> density; // of all that show, fine ones too, on the yarn
    std::optional<RecordedDate> tried_on;
};

// A hazard statement of the supplier's safety data sheet.
struct Hazard {
    std::string code;                     // "H317", "H302+H332", "EUH208"
    std::string category = {};            // of its class, as in "H228 cat 2"; empty: not recorded
    std::optional<std::string> says = {}; // in the sheet's own words, where these fill in a name or a choice
    Spot spot = {};
};

// A precautionary statement of the same sheet.
struct Precaution {
    std::string code; // "P261", "P305+P351+P338"
    std::optional<std::string> says = {};
    Spot spot = {};
};

struct Dye {
    Id id;
    std::string name;
    std::string line;
    std::string code; // the dyer's or the line's short code; the id where none is recorded
    std::optional<std::string> dye_class;
    std::optional<std::string> product; // as the supplier calls it
    std::optional<std::string> batch;
    std::optional<RecordedDate> opened;
    std::optional<std::string> form;
    DyeStatus status = DyeStatus::current;
    std::optional<Id> replaced_by;
    std::optional<std::string> status_note;
    std::optional<InStock> in_stock; // of its powder or liquid, apart from jars
    std::optional<bool> fluorescent;
    std::optional<bool> bleeds;
    std::optional<bool> crocks;
    std::optional<bool> rinses_clear;
    std::optional<std::string> light_fastness;
    std::optional<std::vector<Component>> breaks_into; // none: nobody has tried; empty: known not to break
    std::optional<Speckle> speckle;                    // none: nobody has tried
    std::optional<std::vector<Hazard>> hazards;        // none: no data on file; empty: the sheet lists none
    std::optional<std::vector<Precaution>> precautions;
    std::optional<Density> bulk_density;
    std::vector<Swatch> swatches;
    std::optional<std::string> notes; // printed where a layout asks for them
    Spot spot;
};

// What goes into a jar beside dye.
struct Ingredient {
    Id id;
    std::string name;
    std::optional<Density> bulk_density;
    std::optional<std::vector<Hazard>> hazards; // as of a dye
    std::optional<std::vector<Precaution>> precautions = {};
    Spot spot;
};

// One part of a mix: a dye or an ingredient, by its id.
struct Part {
    Id id;
    bool is_dye = false;
    double parts = 0;         // of the whole, in the jar's basis
    std::optional<Mass> mass; // as weighed in, where recorded
};

struct TopUp {
    RecordedDate on;
    std::optional<Mass> added;
    std::optional<std::string> dye_lot;
    std::optional<Mass> left; // in the jar until then; always there where `parts` are
    std::vector<Part> parts;  // of what was added, in the jar's basis; empty: mixed like the first filling
};

struct Weighing {
    RecordedDate on;
    Mass gross; // the jar with its lid and all that is in it
};

struct Jar {
    Id id;
    std::string code; // the id where none is recorded
    std::optional<std::string> name;
    std::vector<Part> parts; // in the order written
    Basis basis = Basis::weight;
    std::optional<Mass> batch; // the whole mix, as weighed in
    std::optional<Volume> holds;
    Girth girth;               // where the label lies
    Length height;             // of the wall between its bends, upright
    std::optional<Length> lid; // flat top of the lid
    std::optional<RecordedDate> mixed;
    std::optional<std::string> mixed_by;
    std::optional<std::string> dye_lot;
    std::vector<TopUp> topped_up;
    std::optional<RecordedDate> use_by;
    std::optional<Months> keeps; // from the day it was mixed; never beside a `use_by`
    std::optional<Mass> tare;    // the jar with its lid, empty
    std::optional<Weighing> weighed;
    std::optional<Mass> per_skein;   // how much of the mix one skein takes
    std::optional<std::string> salt; // which salt: "fine table salt"
    std::optional<std::string> notes;
    Spot spot;
};

struct Fibre {
    std::string name; // as written
    Percent share;
    Spot spot = {}; // of the name
};

// A figure of a skein: what it comes to, and what was written for it in either system of units or in both. Neither:
// it was worked out. Tags state what was written as it stands.
template <class T> struct SkeinFigure {
    T value{};
    std::optional<T> metric, imperial;
};

struct SkeinSize {
    SkeinFigure<Mass> mass;
    SkeinFigure<Length> length;
};

// What tills know a thing by: digits whose check digit is right.
struct ArticleNumbers {
    Boxed<Sourced<std::string>> ean; // 13
    Boxed<Sourced<std::string>> upc; // 12
};

struct Base {
    Id id;
    std::string name;
    std::string code;                // the id where none is recorded
    std::vector<Fibre> fibres;       // in the order written; add up to 100 %
    std::optional<bool> names_breed; // in brackets behind the fibre: "wool (merino)"
    std::optional<bool> virgin_wool;
    std::optional<Superwash> superwash;
    std::optional<Spinning> spinning;
    SkeinSize skein;
    PutUp put_up = PutUp::skein;
    std::optional<std::string> yarn_weight; // "super fine", "4-ply": the dyer's word
    std::optional<std::string> gauge;
    std::optional<std::string> needles;
    std::optional<std::string> origin;
    std::vector<Care> care; // empty: none recorded
    std::optional<CareSource> care_source;
    std::optional<Sourced<RecordedColour>> colour; // undyed
    Spot care_spot;                                // the base's own where no care is recorded
    std::optional<std::string> notes;
    ArticleNumbers numbers = {};
    Spot spot;
};

// One that holds more or less than the others of its lot.
struct OddSkein {
    int number = 0;
    SkeinFigure<Mass> mass;
    std::optional<Price> price; // none: its tag has an empty price box, the lot's price is for a whole skein
};

struct Lot {
    Id id; // text for ever: "0077" and "2024-05-01" stay as they are
    std::string colourway;
    Id base;
    int skeins = 0;                              // as dyed, spoilt ones among them
    std::vector<int> pots;                       // skeins in pot A, B, C …; empty: one pot, no letters
    std::vector<int> spoilt;                     // numbers of skeins that are not for sale; others keep theirs
    std::optional<SkeinFigure<Mass>> skein_mass; // of each, where it is not the base's
    std::vector<OddSkein> odd_skeins;            // as written
    std::optional<RecordedDate> dyed;
    std::optional<Price> price; // none: the tag has an empty price box
    std::optional<Sourced<RecordedColour>> colour;
    ColourSource colour_source = ColourSource::eye;
    std::vector<Id> dyes;           // used in it, where recorded, beside those of the recipe
    Recipe recipe;                  // every part of it may be missing
    std::optional<bool> alternate;  // tell the knitter to alternate skeins; none: where lots visibly differ
    Boxed<RecordedPicture> picture; // a photograph of its yarn
    std::optional<std::string> notes;
    ArticleNumbers numbers = {}; // its own, before those of its base
    Spot spot;
};

struct Records {
    Studio studio;
    std::vector<Printer> printers;
    std::vector<Ingredient> ingredients;
    std::vector<Dye> dyes;
    std::vector<Jar> jars;
    std::vector<Base> bases;
    std::deque<Lot> lots; // over the years very many: they stay in place as they grow

    // Requires: an id that read_records has accepted.
    [[nodiscard]] const Dye& dye(const std::string& id) const;
    [[nodiscard]] const Jar& jar(const std::string& id) const;
    [[nodiscard]] const Base& base(const std::string& id) const;
    [[nodiscard]] const Ingredient& ingredient(const std::string& id) const;
};

// Whether any hazard or precautionary statement is recorded.
bool has_statements(const Records& records);

} // namespace dyeleaf
