// Dates in the forms that layouts choose from.
#include "facts/date_rows.h"

#include "english.h"
#include "facts/items.h"
#include "studio_records.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

std::string text(const Facts& facts, const std::string& name) {
    const auto value = facts.find(name);
    return value ? std::get<std::string>(*value) : "(none)";
}

} // namespace

// ISO 8601: year, month and day; what is not known is left off at the end.
TEST_CASE("a date is written as far as it is known", "[facts]") {
    struct Case {
        Date date;
        const char *brief, *full, *month, *iso;
    };
    const Case cases[] = {
        {{2026, 11, 2}, "2 Nov 2026", "2 November 2026", "Nov 2026", "2026-11-02"},
        {{2024, 2, 29}, "29 Feb 2024", "29 February 2024", "Feb 2024", "2024-02-29"},
        {{2026, 5, 0}, "May 2026", "May 2026", "May 2026", "2026-05"},
        {{2019, 0, 0}, "2019", "2019", "2019", "2019"},
    };
    for (const auto& [date, brief, full, month, iso] : cases) {
        INFO(iso);
        CHECK(date_words(english(), date, DateForm::brief) == brief);
        CHECK(date_words(english(), date, DateForm::full) == full);
        CHECK(date_words(english(), date, DateForm::month) == month);
        CHECK(date_words(english(), date, DateForm::iso) == iso);
    }
}

TEST_CASE("every date of a record has its forms", "[facts]") {
    const Records records = studio_records();
    const Printing printing{{english()}, nullptr, {2026, 11, 30}};
    Diagnostics diagnostics;
    const auto dyes = make_items(records, ItemKind::dyes, std::nullopt, {{"sloe"}}, printing, diagnostics);
    CHECK(text(dyes[0].facts, "dye.opened.iso") == "2026-03");
    CHECK(text(dyes[0].facts, "dye.date.long") == "14 March 2026");
    CHECK(text(dyes[0].facts, "printed.date.iso") == "2026-11-30");
    const auto jars = make_items(records, ItemKind::jars, std::nullopt, {}, printing, diagnostics);
    CHECK(text(jars[0].facts, "jar.mixed.long") == "2 November 2026");
    CHECK(text(jars[1].facts, "jar.mixed.iso") == "(none)"); // recorded as unknown
    const auto lots = make_items(records, ItemKind::lots, std::nullopt, {}, printing, diagnostics);
    CHECK(text(lots[0].facts, "lot.dyed.iso") == "2026-11-09");
    CHECK(text(lots[0].facts, "lot.dyed.month") == "Nov 2026");
    CHECK(text(lots[0].facts, "lot.for_sale") == "11");
    CHECK(text(lots[0].facts, "lot.numbers") == "1–6, 8–12");
    CHECK(text(lots[1].facts, "lot.dyed.iso") == "(none)"); // not recorded
}
