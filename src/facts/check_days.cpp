#include "facts/check_days.h"

#include "base/number.h"
#include "base/words.h"
#include "facts/wording.h"

namespace dyeleaf {

namespace {

// `what`: "lot “26-117” was dyed".
void check_day(const std::optional<RecordedDate>& date, const std::string& what, const Spot& spot, const Date& today,
               Diagnostics& diagnostics) {
    constexpr int longest_ago = 50; // years; a slip of the keyboard rather than a memory
    const auto day = known_date(date);
    if (day && day->year < today.year - longest_ago) {
        diagnostics.warning(spot, what + " more than fifty years ago: " + to_iso(*day), "look at the year again");
    }
    if (!day || *day <= today) return;
    diagnostics.warning(spot, what + " in the future: " + to_iso(*day),
                        "today is " + to_iso(today) + "; look at the year and the month again");
}

bool is_before(const std::optional<RecordedDate>& one, const std::optional<RecordedDate>& other) {
    const auto first = known_date(one);
    const auto second = known_date(other);
    return first && second && is_over(*first, *second);
}

// What is written of a jar must be able to follow from what came before it.
void check_order(const Jar& jar, Diagnostics& diagnostics) {
    const std::string which = "jar " + in_quotes(jar.id.value);
    if (jar.weighed && is_before(jar.weighed->on, jar.mixed)) {
        diagnostics.warning(jar.spot, which + " was weighed before it was mixed",
                            "look at both dates again; if it was mixed anew, weigh it again");
    }
    if (jar.topped_up.empty()) return;
    if (is_before(jar.topped_up.front().on, jar.mixed)) {
        diagnostics.warning(jar.spot, which + " was topped up before it was mixed",
                            "look at both dates again; “mixed” keeps the day of the first filling");
    }
    for (std::size_t i = 1; i < jar.topped_up.size(); ++i) {
        if (!is_before(jar.topped_up[i].on, jar.topped_up[i - 1].on)) continue;
        diagnostics.warning(jar.spot, "what " + which + " was topped up with stands out of order",
                            "write the earliest first: its strength is reckoned in this order");
        return;
    }
}

} // namespace

void check_days(const Dye& dye, const Date& today, Diagnostics& diagnostics) {
    const std::string which = "dye " + in_quotes(dye.id.value);
    check_day(dye.opened, which + " was opened", dye.spot, today, diagnostics);
    if (dye.speckle) check_day(dye.speckle->tried_on, which + " was tried for speckles", dye.spot, today, diagnostics);
    const auto in_future = [&](const Swatch& swatch) {
        const auto day = known_date(swatch.dyed);
        return day && *day > today;
    };
    bool told = false; // once a dye: a clock that is wrong makes one complaint of many swatches
    for (const Swatch& swatch : dye.swatches) {
        if (told && in_future(swatch)) continue;
        told = told || in_future(swatch);
        check_day(swatch.dyed,
                  "the swatch of " + in_quotes(dye.id.value) + " at " + decimal(swatch.depth.number(), 4) +
                      " % was dyed",
                  swatch.spot, today, diagnostics);
    }
}

void check_days(const Jar& jar, const Date& today, Diagnostics& diagnostics) {
    const std::string which = "jar " + in_quotes(jar.id.value);
    check_day(jar.mixed, which + " was mixed", jar.spot, today, diagnostics);
    for (const TopUp& top_up : jar.topped_up)
        check_day(top_up.on, which + " was topped up", jar.spot, today, diagnostics);
    if (jar.weighed) check_day(jar.weighed->on, which + " was weighed", jar.spot, today, diagnostics);
    check_order(jar, diagnostics);
}

void check_days(const Lot& lot, const Date& today, Diagnostics& diagnostics) {
    check_day(lot.dyed, "lot " + in_quotes(lot.id.value) + " was dyed", lot.spot, today, diagnostics);
}

} // namespace dyeleaf
