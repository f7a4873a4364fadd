#include "facts/check_lots.h"

#include "base/number.h"
#include "base/words.h"
#include "facts/lot_code.h"
#include "facts/lot_differences.h"
#include "facts/skein_numbers.h"
#include "facts/wording.h"

namespace dyeleaf {

namespace {

// The year that two figures mean beside another: the nearest.
int year_of(const std::string& figures, int beside) {
    const int year = parse_whole(figures).value_or(0);
    if (figures.size() > 2) return year;
    const int in_century = beside - beside % 100 + year;
    if (in_century - beside > 50) return in_century - 100;
    return beside - in_century > 50 ? in_century + 100 : in_century;
}

// A code is given out when a lot is begun: it cannot be dry before.
void check_code_against_day(const LotForm& form, const Lot& lot, Diagnostics& diagnostics) {
    const auto code = read_lot_code(form, lot.id.value);
    const auto dyed = known_date(lot.dyed);
    if (!code || !dyed || code->year.empty()) return;
    Date begun{year_of(code->year, dyed->year), parse_whole(code->month).value_or(0), 0};
    Date dry{dyed->year, dyed->month, 0};
    if (begun.month == 0 || dry.month == 0 || begun.year != dry.year) begun.month = dry.month = 0;
    if (begun <= dry) return;
    diagnostics.warning(lot.id.spot,
                        "lot " + in_quotes(lot.id.value) + " was dyed in " + to_iso(dry) + ", but its code says " +
                            to_iso(begun),
                        "look at “dyed” and at the code again: codes are given out when a lot is begun");
}

void check_form(const LotForm& form, const Lot& lot, Diagnostics& diagnostics) {
    if (const auto meant = mended_lot_code(form, lot.id.value)) {
        diagnostics.warning(lot.id.spot, "the lot code " + in_quotes(lot.id.value) + " seems to have a slip in it",
                            "was " + in_quotes(*meant) + " meant? If not, look at every figure of it");
    }
    check_code_against_day(form, lot, diagnostics);
}

// A figure too many or too few, which the tag would print.
void check_skein_weights(const Base& base, const Lot& lot, Diagnostics& diagnostics) {
    constexpr double most_times = 4;
    constexpr double least_times = 0.1;
    const auto check = [&](Mass mass, const std::string& which) {
        const double times = mass / base.skein.mass.value;
        if (times <= most_times && times >= least_times) return;
        diagnostics.warning(lot.spot,
                            which + " of lot " + in_quotes(lot.id.value) + " weighs " + decimal(mass.number(), 1) +
                                " g, and one of its base " + decimal(base.skein.mass.value.number(), 1) + " g",
                            "look at the weight again: the tag prints it");
    };
    if (lot.skein_mass) check(lot.skein_mass->value, "a skein");
    for (const OddSkein& odd : lot.odd_skeins)
        check(odd.mass.value, "skein " + std::to_string(odd.number));
}

} // namespace

void check_lot_code(const Studio& studio, const Lot& lot, Diagnostics& diagnostics) {
    if (studio.lot_codes) check_form(*studio.lot_codes, lot, diagnostics);
    if (!fits_gs1(lot.id.value)) {
        diagnostics.warning(lot.id.spot,
                            "the lot code " + in_quotes(lot.id.value) + " cannot go into a GS1 code to scan",
                            "that takes 20 characters at the most; on the tag it prints as it is");
    }
}

// Of two that are mistaken for each other, the later in the records is the one to change.
void check_look_alikes(const LotGroups& by_reading, const Lot& lot, Diagnostics& diagnostics) {
    const auto warn = [&](const Id& earlier, const Id& later) {
        diagnostics.warning(later.spot,
                            "lot " + in_quotes(later.value) + " is easily taken for lot " + in_quotes(earlier.value),
                            "give one of them a code that cannot be read as the other's, if no tag of it is out yet");
    };
    bool is_later = true;
    for (const Lot* other : by_reading.of(lot)) {
        if (other == &lot) {
            is_later = false;
        } else if (is_later) {
            warn(other->id, lot.id);
        } else {
            warn(lot.id, other->id);
        }
    }
}

void check_differences(const LotGroups& by_yarn, const Lot& lot, const LotLimits& limits, Diagnostics& diagnostics) {
    for (const LotDifference& one : differences_to_earlier(by_yarn, lot, limits)) {
        if (one.match == LotMatch::uncertain) continue;
        const std::string both = "lot " + in_quotes(lot.id.value) + " and lot " + in_quotes(one.earlier->id.value) +
                                 " of the same colourway ";
        const std::string by = " (ΔE00 " + fixed(one.delta_e_2000, 1) + ")";
        if (!one.is_measured) {
            if (lot.alternate && one.earlier->alternate) continue; // she has looked
            diagnostics.warning(
                lot.spot, both + "seem to differ visibly by photograph or eye" + by,
                "compare the yarn by eye in daylight; then write “alternate: yes” or “alternate: no” in "
                "both");
        } else if (one.match == LotMatch::too_much) {
            diagnostics.warning(lot.spot, both + "differ too much for one name" + by,
                                "give one of them another colourway, or look at both colours again");
        } else if (one.match == LotMatch::visible && (lot.alternate == false || one.earlier->alternate == false)) {
            diagnostics.warning(lot.spot, both + "differ visibly" + by + ", and a tag of theirs does not say so",
                                "delete “alternate: no”, and the tags ask to alternate skeins");
        }
    }
}

void check_skeins(const Records& records, const Lot& lot, Diagnostics& diagnostics) {
    check_skein_weights(records.base(lot.base.value), lot, diagnostics);
    const auto for_sale = static_cast<int>(skeins_for_sale(lot).size());
    const int spoilt = lot.skeins - for_sale;
    const std::string which = "lot " + in_quotes(lot.id.value);
    if (for_sale == 0) {
        diagnostics.warning(lot.spot, "every skein of " + which + " is spoilt, so none gets a tag",
                            "“spoilt” lists the numbers of those that are not for sale");
    } else if (spoilt > for_sale) {
        diagnostics.warning(lot.spot,
                            "of " + which + " more skeins are spoilt (" + std::to_string(spoilt) + ") than for sale (" +
                                std::to_string(for_sale) + ")",
                            "“spoilt” lists the numbers of those that are not for sale, not of the good ones");
    }
    if (lot.alternate == true && for_sale == 1) {
        diagnostics.warning(lot.spot, which + " has one skein for sale, and its tag says to alternate two",
                            "delete “alternate: yes”");
    }
}

} // namespace dyeleaf
