// Lot codes.
#include "facts/lot_code.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

LotForm form(const char* text) {
    const auto parsed = parse_lot_form(text);
    INFO(text);
    REQUIRE(std::holds_alternative<LotForm>(parsed));
    return std::get<LotForm>(parsed);
}

std::deque<Lot> lots(const std::vector<std::string>& ids) {
    std::deque<Lot> result;
    for (const std::string& id : ids) {
        Lot lot;
        lot.id.value = id;
        result.push_back(lot);
    }
    return result;
}

constexpr Date november{2026, 11, 9};

} // namespace

TEST_CASE("forms that are none say why", "[facts]") {
    struct Case {
        const char* text;
        const char* message;
    };
    const Case cases[] = {
        {"yy-mm", "“yy-mm” has no number that counts on"},
        {"YY-NNN", "“YY-NNN” has no number that counts on"},
        {"nn-nnn", "“nn-nnn” says the same thing twice"},
        {"yy-yynnn", "“yy-yynnn” says the same thing twice"},
        {"yyy-nnn", "the year in a lot code has two figures or four, not “yyy”"},
        {"yym-nnn", "the month in a lot code has two figures, not “m”"},
        {"mm-nnn", "“mm-nnn” has a month without its year"},
        {"yy-nnn-cc", "a lot code has one check character, not “cc”"},
        {"c-yy-nnn", "the check character is not the last in “c-yy-nnn”"},
        {"nnnyy", "nothing parts the number from what follows it in “nnnyy”"},
        {"yy-nnnc", "nothing parts the number from what follows it in “yy-nnnc”"},
        {"yy-nnnnnnn", "no studio dyes so many lots as “nnnnnnn” has figures for"},
        {"26-nnn", "“26-nnn” is not a form for lot codes"},
        {"yy nnn", "“yy nnn” is not a form for lot codes"},
        {"yy-nnn-w", "“yy-nnn-w” is not a form for lot codes"},
        {"QUILLMOOR-yy-nnn", "“QUILLMOOR-yy-nnn” is too long for a lot code"},
    };
    for (const auto& [text, message] : cases) {
        INFO(text);
        const auto parsed = parse_lot_form(text);
        REQUIRE(std::holds_alternative<LotFormFault>(parsed));
        CHECK(std::get<LotFormFault>(parsed).message == message);
        CHECK_FALSE(std::get<LotFormFault>(parsed).help.empty());
    }
}

// Check characters: worked out apart from this program with the rule of ISO/IEC 7064, MOD 37,36.
TEST_CASE("codes are written in the studio's form", "[facts]") {
    struct Case {
        const char* form;
        int number;
        const char* code;
    };
    const Case cases[] = {
        {"yy-nnn", 117, "26-117"},     {"yy-nnn", 7, "26-007"},
        {"yy-nnn", 1250, "26-1250"},   {"yyyy.n", 7, "2026.7"},
        {"yymm-nn", 18, "2611-18"},    {"nnnn", 77, "0077"},
        {"yy-nnn-c", 117, "26-117-0"}, {"yy-nnn-c", 118, "26-118-Y"},
        {"n_yy", 3, "3_26"},           {"Qyymm-nnn-c", 118, "Q2611-118-1"},
    };
    for (const auto& [text, number, code] : cases) {
        INFO(text);
        CHECK(write_lot_code(form(text), november, number) == code);
        const auto read = read_lot_code(form(text), code);
        REQUIRE(read);
        CHECK(read->number == number);
    }
}

TEST_CASE("codes of another form mean nothing", "[facts]") {
    for (const char* code : {"0077", "2026-05-01", "24-05-01", "26-117-0", "26117", "26-", "26-1I7", "Hedge", "6-117",
                             "26-1234567", "-26-117", "26-117 "}) {
        INFO(code);
        CHECK_FALSE(read_lot_code(form("yy-nnn"), code));
    }
    const auto before_the_check = read_lot_code(form("yy-nnn-c"), "26-117");
    REQUIRE(before_the_check);
    CHECK(before_the_check->year == "26");
    CHECK_FALSE(before_the_check->has_check);
    CHECK_FALSE(read_lot_code(form("yy-nnn-c"), "26-117-"));
    CHECK_FALSE(read_lot_code(form("yy-nnn-c"), "26-117--"));
}

TEST_CASE("the next code counts on from the highest of the year", "[facts]") {
    struct Case {
        const char* form;
        std::vector<std::string> there;
        const char* next;
    };
    const Case cases[] = {
        {"yy-nnn", {}, "26-001"},
        {"yy-nnn", {"0077", "2024-05-01", "Hedge"}, "26-001"},
        {"yy-nnn", {"26-117", "26-131", "26-118"}, "26-132"}, // the gap stays
        {"yy-nnn", {"25-999", "26-003", "27-500"}, "26-004"}, // other years do not count
        {"yy-nnn", {"26-7"}, "26-008"},                       // however it is written
        {"yy-nnn", {"26-999"}, "26-1000"},                    // the number grows
        {"yy-nnn", {"26-004", "26-0O5"}, "26-006"},           // 26-005 would be read as 26-0O5
        {"yymm-nn", {"2610-41", "2611-42"}, "2611-43"},       // the month does not start it anew
        {"nnnn", {"0077", "0078"}, "0079"},
        {"nnnn", {"26-117"}, "0001"},
        {"yy-nnn-c", {"26-116"}, "26-117-0"}, // codes from before the check character count
        {"yy-nnn-c", {"26-117-0"}, "26-118-Y"},
        {"yyyy-nnn", {"26-117"}, "2026-001"},
    };
    for (const auto& [text, there, next] : cases) {
        INFO(text << " " << next);
        CHECK(next_lot_code(form(text), lots(there), november) == next);
    }
    CHECK_FALSE(next_lot_code(form("yy-nnn"), lots({"26-999999"}), november));
}

TEST_CASE("no check character is given out that could be read as a figure", "[facts]") {
    const LotForm checked = form("yy-nnn-c");
    std::vector<std::string> codes;
    for (int i = 0; i < 200; ++i) {
        const auto next = next_lot_code(checked, lots(codes), november);
        REQUIRE(next);
        CHECK(next->find_first_of("OQILZSGB") == std::string::npos);
        CHECK_FALSE(mended_lot_code(checked, *next));
        codes = {*next};
    }
    CHECK(read_lot_code(checked, codes.front())->number > 200);
}

TEST_CASE("slips in codes are mended", "[facts]") {
    struct Case {
        const char* form;
        const char* code;
        const char* meant; // empty: nothing to mend
    };
    const Case cases[] = {
        {"yy-nnn", "26-117", ""},
        {"yy-nnn", "26-1I7", "26-117"},
        {"yy-nnn", "26-O07", "26-007"},
        {"yy-nnn", "26-7", ""},
        {"yy-nnn", "0077", ""},
        {"yy-nnn", "S1-117", ""},
        {"yy-nnn", "26-SOLO", ""},
        {"yy-nnn-c", "26-118-Y", ""},
        {"yy-nnn-c", "26-118-y", ""},
        {"yy-nnn-c", "26-118-V", "26-118-Y"},
        {"yy-nnn-c", "26-117-O", "26-117-0"},
        {"yy-nnn-c", "26-1I8-Y", "26-118-Y"},
        {"yy-nnn-c", "26-118", ""},
        {"yy-nnn-c", "24-05-1", ""},
    };
    for (const auto& [text, code, meant] : cases) {
        INFO(text << " " << code);
        CHECK(mended_lot_code(form(text), code).value_or("") == meant);
    }
}

TEST_CASE("codes that are read alike", "[facts]") {
    CHECK(read_alike("0077", "OO77"));
    CHECK(read_alike("26-117", "26-ll7"));
    CHECK(read_alike("26.117", "26_1i7"));
    CHECK(read_alike("hedge-2", "Hedge-Z"));
    CHECK(read_alike("SB6Q", "586O"));
    CHECK_FALSE(read_alike("26-117", "26117"));
    CHECK_FALSE(read_alike("26-117", "26-171"));
    CHECK_FALSE(read_alike("26-117", "26-1170"));
}

// GS1 syntax dictionary: AI 10 is X..20; its linter for set 82 lists the characters.
TEST_CASE("what goes into a GS1 code", "[facts]") {
    CHECK(fits_gs1("26-117-0"));
    CHECK(fits_gs1("Hedge_2.b/(x)"));
    CHECK(fits_gs1("12345678901234567890"));
    CHECK_FALSE(fits_gs1("123456789012345678901"));
    CHECK_FALSE(fits_gs1(""));
    for (const char* text : {"26 117", "a#", "a$", "a@", "a[", "a\\", "a]", "a^", "a`", "a{", "a|", "a}", "a~", "é"}) {
        INFO(text);
        CHECK_FALSE(fits_gs1(text));
    }
}
