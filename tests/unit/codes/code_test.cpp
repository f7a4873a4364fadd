// Modules against the tables of the standards, read here without the library that makes them.
#include "codes/code.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <array>
#include <optional>

using namespace dyeleaf;

namespace {

Code sound(CodeKind kind, const std::string& text) {
    auto code = make_code(kind, text);
    INFO(text);
    REQUIRE(std::holds_alternative<Code>(code));
    return std::get<Code>(std::move(code));
}

std::string fault(CodeKind kind, const std::string& text) {
    const auto code = make_code(kind, text);
    INFO(text);
    REQUIRE(std::holds_alternative<CodeFault>(code));
    return std::get<CodeFault>(code).message + "; " + std::get<CodeFault>(code).help;
}

// 1 for every dark module, row by row; each may be dark once.
std::vector<std::string> rows_of(const Code& code) {
    std::vector<std::string> rows(static_cast<std::size_t>(code.rows),
                                  std::string(static_cast<std::size_t>(code.columns), '0'));
    for (const DarkModules& one : code.dark) {
        for (int y = one.y; y < one.y + one.height; ++y) {
            for (int x = one.x; x < one.x + one.width; ++x) {
                char& module = rows.at(static_cast<std::size_t>(y)).at(static_cast<std::size_t>(x));
                CHECK(module == '0');
                module = '1';
            }
        }
    }
    return rows;
}

// ISO/IEC 15420, table 1: the digits of number set A (odd parity, left); C is its complement, B is C read backwards.
constexpr std::array<const char*, 10> set_a = {"0001101", "0011001", "0010011", "0111101", "0100011",
                                               "0110001", "0101111", "0111011", "0110111", "0001011"};
// Table 3: the sets of the left half, by the digit that has no bars.
constexpr std::array<const char*, 10> left_sets = {"AAAAAA", "AABABB", "AABBAB", "AABBBA", "ABAABB",
                                                   "ABBAAB", "ABBBAA", "ABABAB", "ABABBA", "ABBABA"};

std::string in_set(char set, int digit) {
    std::string pattern = set_a.at(static_cast<std::size_t>(digit));
    if (set == 'A') return pattern;
    for (char& module : pattern)
        module = module == '0' ? '1' : '0';
    if (set == 'B') std::reverse(pattern.begin(), pattern.end());
    return pattern;
}

// What the bars say; nothing where they say nothing.
std::optional<std::string> read_ean(const std::string& bars) {
    if (bars.size() != 95 || bars.substr(0, 3) != "101" || bars.substr(45, 5) != "01010" || bars.substr(92) != "101")
        return std::nullopt;
    std::string digits;
    std::string sets;
    const auto read = [&](std::size_t at, const std::string& known) {
        for (const char set : known) {
            for (int digit = 0; digit < 10; ++digit) {
                if (bars.substr(at, 7) != in_set(set, digit)) continue;
                digits += static_cast<char>('0' + digit);
                sets += set;
                return;
            }
        }
    };
    for (std::size_t i = 0; i < 6; ++i)
        read(3 + 7 * i, "AB");
    const std::string left = sets;
    for (std::size_t i = 0; i < 6; ++i)
        read(50 + 7 * i, "C");
    for (std::size_t first = 0; first < left_sets.size(); ++first) {
        if (left == left_sets.at(first)) return std::to_string(first) + digits;
    }
    return std::nullopt;
}

} // namespace

TEST_CASE("an EAN-13 reads as its digits by the standard's tables", "[codes]") {
    for (const char* text : {"6291041500213", "2000001000014", "2999999999991", "2100000123452", "0614141123452"}) {
        const Code code = sound(CodeKind::ean_13, text);
        CHECK(code.rows == 1);
        CHECK(read_ean(rows_of(code).front()) == text);
    }
    CHECK(read_ean(rows_of(sound(CodeKind::ean_13, "6 291041 500213")).front()) == "6291041500213");
}

TEST_CASE("a UPC-A has the bars of an EAN-13 with a zero in front", "[codes]") {
    CHECK(read_ean(rows_of(sound(CodeKind::upc_a, "614141123452")).front()) == "0614141123452");
}

TEST_CASE("guards reach down, and the digits stand between them", "[codes]") {
    const auto guards = [](const Code& code) {
        std::vector<int> places;
        for (const DarkModules& bar : code.dark) {
            if (bar.is_guard) places.push_back(bar.x);
        }
        return places;
    };
    const Code ean = sound(CodeKind::ean_13, "6291041500213");
    CHECK(guards(ean) == std::vector<int>{0, 2, 46, 48, 92, 94});
    REQUIRE(ean.captions.size() == 3);
    CHECK(ean.captions[0].text + " " + ean.captions[1].text + " " + ean.captions[2].text == "6 291041 500213");
    const Code upc = sound(CodeKind::upc_a, "614141123452");
    CHECK(guards(upc).size() == 10); // those of two digits, two bars each, as well
    REQUIRE(upc.captions.size() == 4);
    CHECK(upc.captions[1].text + upc.captions[2].text == "1414112345");
}

// ISO/IEC 18004, table 7 for error correction M: 14 bytes fit version 1 of 21 modules, 26 version 2, 42 version 3.
TEST_CASE("a QR code is the smallest that keeps error correction M", "[codes]") {
    CHECK(sound(CodeKind::qr, std::string(14, 'a')).columns == 21);
    CHECK(sound(CodeKind::qr, std::string(15, 'a')).columns == 25);
    CHECK(sound(CodeKind::qr, std::string(26, 'a')).columns == 25);
    CHECK(sound(CodeKind::qr, "https://quillmoor.example/lot/26-117").columns == 29);
    CHECK(sound(CodeKind::qr, std::string(42, 'a')).columns == 29);
    CHECK(sound(CodeKind::qr, std::string(43, 'a')).columns == 33);
}

TEST_CASE("a QR code has its three finders and its timing lines", "[codes]") {
    const Code code = sound(CodeKind::qr, "https://quillmoor.example/lot/26-117");
    const auto rows = rows_of(code);
    const auto last = static_cast<std::size_t>(code.columns) - 7;
    constexpr std::array finder = {"1111111", "1000001", "1011101", "1011101", "1011101", "1000001", "1111111"};
    for (std::size_t y = 0; y < finder.size(); ++y) {
        CHECK(rows[y].substr(0, 7) == finder.at(y));
        CHECK(rows[y].substr(last) == finder.at(y));
        CHECK(rows[last + y].substr(0, 7) == finder.at(y));
    }
    for (std::size_t i = 8; i < last - 1; ++i) {
        CHECK(rows[6][i] == (i % 2 == 0 ? '1' : '0'));
        CHECK(rows[i][6] == (i % 2 == 0 ? '1' : '0'));
    }
}

// ISO/IEC 15417: eleven modules a character and thirteen for the stop; start, text, check character, stop.
TEST_CASE("a Code 128 is as wide as its text asks for", "[codes]") {
    CHECK(sound(CodeKind::code_128, "AB").columns == 11 * 4 + 13);
    const Code code = sound(CodeKind::code_128, "PJJ123C");
    // Start A or B, and the stop pattern.
    const std::string bars = rows_of(code).front();
    CHECK((bars.starts_with("11010000100") || bars.starts_with("11010010000")));
    CHECK(bars.ends_with("1100011101011"));
    // Digits go two to a character: start C, three pairs, check, stop.
    CHECK(sound(CodeKind::code_128, "261170").columns == 11 * 5 + 13);
    REQUIRE(code.captions.size() == 1);
    CHECK(code.captions[0].text == "PJJ123C");
}

TEST_CASE("what cannot be a code", "[codes]") {
    CHECK(fault(CodeKind::qr, " ") == "there is nothing to put into the code; write a text or a fact after “code”");
    CHECK(fault(CodeKind::qr, std::string(3000, 'a'))
              .ends_with("is too long for a code to scan: 3000 characters; shorten it"));
    CHECK(fault(CodeKind::code_128, "Violette d’été") ==
          "“Violette d’été” cannot be a Code 128: that has letters without accents, digits and plain signs; write it "
          "otherwise, or place it with as: qr");
    CHECK(fault(CodeKind::code_128, std::string(49, 'a'))
              .ends_with(
                  "is too long for a Code 128: 49 characters, and it takes 48; shorten it, or place it with as: qr"));
    CHECK(fault(CodeKind::ean_13, "6291041500214").starts_with("the last digit of “6291041500214” checks the others"));
    CHECK(fault(CodeKind::upc_a, "6291041500213").starts_with("“6291041500213” has 13 digits, and a UPC-A has 12"));
}

TEST_CASE("the same text makes the same code", "[codes]") {
    CHECK(sound(CodeKind::qr, "26-117").dark == sound(CodeKind::qr, "26-117").dark);
}
