#include "base/gtin.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

std::string read(const char* text, Gtin kind) {
    const auto number = parse_gtin(text, kind);
    if (const auto* fault = std::get_if<GtinFault>(&number)) return fault->message + "; " + fault->help;
    return std::get<std::string>(number);
}

} // namespace

// The worked examples of GS1: a GTIN-13 and an SSCC (General Specifications, 7.9), and the sample number of GS1 US.
TEST_CASE("check digits", "[base]") {
    CHECK(gtin_check_digit("629104150021") == '3');
    CHECK(gtin_check_digit("37610425002123456") == '9');
    CHECK(gtin_check_digit("61414112345") == '2');
    CHECK(gtin_check_digit("000000000000") == '0');
}

TEST_CASE("an article number is its digits, with or without spaces", "[base]") {
    CHECK(read("6291041500213", Gtin::ean_13) == "6291041500213");
    CHECK(read("6 291041 500213", Gtin::ean_13) == "6291041500213");
    CHECK(read("614141123452", Gtin::upc_a) == "614141123452");
    CHECK(read("6 14141 12345 2", Gtin::upc_a) == "614141123452");
}

TEST_CASE("every single wrong digit shows", "[base]") {
    const std::string sound = "6291041500213";
    for (std::size_t at = 0; at < sound.size(); ++at) {
        for (char digit = '0'; digit <= '9'; ++digit) {
            std::string text = sound;
            text[at] = digit;
            CHECK(std::holds_alternative<std::string>(parse_gtin(text, Gtin::ean_13)) == (digit == sound[at]));
        }
    }
}

TEST_CASE("what is wrong with a number, and the right digit", "[base]") {
    CHECK(read("6291041500214", Gtin::ean_13) ==
          "the last digit of “6291041500214” checks the others, and does not fit them; it would be 3, as in "
          "\"6291041500213\"; compare every digit first, for the slip may be in any of them");
    CHECK(read("629104150021", Gtin::ean_13) ==
          "“629104150021” has 12 digits, and an EAN-13 has 13; if the last one is missing, which checks the others, it "
          "is 3: \"6291041500213\"");
    CHECK(read("614141123452", Gtin::ean_13) ==
          "“614141123452” has 12 digits, and an EAN-13 has 13; it is a sound UPC-A: write it as upc: \"614141123452\", "
          "or with a 0 before it as ean: \"0614141123452\"");
    CHECK(read("61414112345", Gtin::upc_a) ==
          "“61414112345” has 11 digits, and a UPC-A has 12; if the last one is missing, which checks the others, it is "
          "2: \"614141123452\"");
    CHECK(read("6291041500213", Gtin::upc_a) ==
          "“6291041500213” has 13 digits, and a UPC-A has 12; it is a sound EAN-13: write it as ean: "
          "\"6291041500213\"");
    CHECK(read("0614141123452", Gtin::upc_a) ==
          "“0614141123452” has 13 digits, and a UPC-A has 12; it is a sound EAN-13: as UPC-A, write \"614141123452\"");
    CHECK(
        read("62910", Gtin::ean_13) ==
        "“62910” has 5 digits, and an EAN-13 has 13; copy all 13 digits from under the bars, or from the list of your "
        "numbers");
    for (const char* text : {"", "62910415oo213", "6291041500213x", "٦٢٩١٠٤١٥٠٠٢١٣", "-291041500213"}) {
        INFO(text);
        CHECK(read(text, Gtin::ean_13).ends_with("is not an EAN-13; write its 13 digits and nothing else"));
    }
}
