#include "facts/check_days.h"

#include "base/plain_figures.h"
#include "base/words.h"
#include "facts/wording.h"

namespace dyeleaf {

namespace {

// `what`: "lot “26-117” was dyed".
void check_day(const std::optional<RecordedDate>& date, const std::string& what, const Spot& spot, const Date& today,
               Diagnostics& diagnostics) {
    const auto day = known_date(date);
    if (!day || *day <= today) return;
    diagnostics.warning(spot, what + " in the future: " + to_iso(*day),
                        "today is " + to_iso(today) + "; look at the year and the month again");
}

} // namespace

void check_days(const Dye& dye, const Date& today, Diagnostics& diagnostics) {
    const std::string which = "dye " + in_quotes(dye.id.value);
    check_day(dye.opened, which + " was opened", dye.spot, today, diagnostics);
    if (dye.speckle) check_day(dye.speckle->tried_on, which + " was tried for speckles", dye.spot, today, diagnostics);
    for (const Swatch& swatch : dye.swatches) {
        check_day(swatch.dyed, "the swatch at " + plain(swatch.depth) + " was dyed", swatch.spot, today, diagnostics);
    }
}

void check_days(const Jar& jar, const Date& today, Diagnostics& diagnostics) {
    const std::string which = "jar " + in_quotes(jar.id.value);
    check_day(jar.mixed, which + " was mixed", jar.spot, today, diagnostics);
    for (const TopUp& top_up : jar.topped_up)
        check_day(top_up.on, which + " was topped up", jar.spot, today, diagnostics);
    if (jar.weighed) check_day(jar.weighed->on, which + " was weighed", jar.spot, today, diagnostics);
}

void check_days(const Lot& lot, const Date& today, Diagnostics& diagnostics) {
    check_day(lot.dyed, "lot " + in_quotes(lot.id.value) + " was dyed", lot.spot, today, diagnostics);
}

} // namespace dyeleaf
