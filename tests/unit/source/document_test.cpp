// YAML becomes nodes with their places, and nothing else than what was written.
#include "source/document.h"

#include <catch2/catch.hpp>

#include <chrono>

using namespace dyeleaf;

namespace {

std::optional<Node> read(const std::string& text, Diagnostics& diagnostics, const DocumentLimits& limits = {}) {
    return parse_document(std::make_shared<const SourceFile>(SourceFile{"a.yaml", text}), diagnostics, {}, limits);
}

Node read(const std::string& text) {
    Diagnostics diagnostics;
    auto node = read(text, diagnostics);
    REQUIRE(diagnostics.sorted().empty());
    REQUIRE(node);
    return std::move(*node);
}

std::string only_complaint(const std::string& text, const DocumentLimits& limits = {}) {
    Diagnostics diagnostics;
    CHECK_FALSE(read(text, diagnostics, limits));
    const auto all = diagnostics.sorted();
    REQUIRE(all.size() == 1);
    return std::to_string(all[0].spot.line) + ":" + std::to_string(all[0].spot.column) + " " + all[0].message;
}

std::string repeated(const std::string& piece, int times) {
    std::string text;
    for (int i = 0; i < times; ++i)
        text += piece;
    return text;
}

} // namespace

TEST_CASE("scalars stay the text that was written", "[source]") {
    const Node node = read("[No, yes, on, 0077, 1e5, 2024-05-01, 012, 0x1F, .inf, 12:30:45, 1_000, nUll]");
    const std::vector<std::string> written = {"No",  "yes",  "on",   "0077",     "1e5",   "2024-05-01",
                                              "012", "0x1F", ".inf", "12:30:45", "1_000", "nUll"};
    REQUIRE(node.items().size() == written.size());
    for (std::size_t i = 0; i < written.size(); ++i) {
        CHECK(node.items()[i].kind == Node::Kind::scalar);
        CHECK(node.items()[i].text == written[i]);
    }
}

TEST_CASE("nothing is ~, null and what is left empty, unless quoted", "[source]") {
    const Node node = read("a:\nb: ~\nc: null\nd: ''\ne: \"~\"\nf: 'null'\ng:\n");
    REQUIRE(node.entries().size() == 7);
    for (const std::size_t i : {0U, 1U, 2U, 6U})
        CHECK(node.entries()[i].value.kind == Node::Kind::nothing);
    for (const std::size_t i : {3U, 4U, 5U}) {
        CHECK(node.entries()[i].value.kind == Node::Kind::scalar);
        CHECK(node.entries()[i].value.quoted);
    }
    CHECK(node.entries()[0].value.spot.line == 1); // where its key stands, not where the next begins
    CHECK(node.entries()[1].value.spot.column == 4);
    CHECK(node.entries()[6].value.spot.line == 7);
}

TEST_CASE("places count lines and characters from one", "[source]") {
    const Node node = read("\xEF\xBB\xBFé: \"Slöe\"   # remark\r\nbreaks into: [rüst, 'lilac']\r\nlast: {ä: ö}\r\n");
    CHECK(node.spot.line == 1);
    CHECK(node.entries()[0].key_spot.column == 1);
    CHECK(node.entries()[0].value.spot.column == 4);
    CHECK(node.entries()[0].value.spot.length == 6); // with its quotation marks
    CHECK(node.entries()[1].key_spot.line == 2);
    CHECK(node.entries()[1].key_spot.length == 11);
    CHECK(node.entries()[1].value.spot.column == 14);
    CHECK(node.entries()[1].value.items()[1].spot.column == 21);
    CHECK(node.entries()[2].value.entries()[0].value.spot.line == 3);
    CHECK(node.entries()[2].value.entries()[0].value.spot.column == 11);
}

TEST_CASE("aliases are copied and keep the place of what they name", "[source]") {
    const Node node = read("a: &fibre {wool: 100 %}\nb: *fibre\n");
    REQUIRE(node.entries()[1].value.entries().size() == 1);
    CHECK(node.entries()[1].value.entries()[0].key == "wool");
    CHECK(node.entries()[1].value.spot.line == 1);
}

TEST_CASE("keys stay in the order written", "[source]") {
    const Node node = read("z: 1\na: 2\nm: 3\n");
    CHECK(node.entries()[0].key == "z");
    CHECK(node.entries()[2].key == "m");
}

TEST_CASE("bytes that are no text are refused at their place", "[source]") {
    CHECK(only_complaint("ab: \xE9t\xE9\n") == "1:5 a character here is not UTF-8");
    CHECK(only_complaint("a: 1\nü: \xED\xA0\x80\n") == "2:4 a character here is not UTF-8"); // a lone surrogate
    CHECK(only_complaint(std::string{"a: 1\nb: \0", 9}) == "2:4 this is not a text file");
    CHECK(only_complaint("a: 1\nb: \x07\n") == "2:4 an invisible control character stands here");
    CHECK(only_complaint("a: 1\nb: x\u202Ey\n") == "2:5 an invisible mark stands here that makes text run backwards");
    CHECK(only_complaint("a: 1\nb: \xC2\x85\n") == "2:4 an invisible control character stands here");
    CHECK(only_complaint("\xFF\xFE"
                         "a") == "1:1 the file is saved as UTF-16");
    CHECK(only_complaint("a: 1\rb: 2\r") == "1:5 the lines end in a way that no system uses now");
    CHECK(only_complaint("a: " + std::string(70'000, 'x')) == "1:1 this line is 70003 bytes long");
}

TEST_CASE("files of word processors are known by their first bytes", "[source]") {
    const std::string saved = "0:0 this was saved by a word processor";
    CHECK(only_complaint("{\\rtf1\\ansi dyes:}") == saved);
    CHECK(only_complaint(std::string{"PK\x03\x04\x14\0\x06\0", 8}) == saved);
    CHECK(only_complaint("\xD0\xCF\x11\xE0\xA1\xB1") == saved);
}

TEST_CASE("a warning about a file that cannot be read is kept back", "[source]") {
    CHECK(only_complaint("a: Hedge #4\nb\n  c: d\n") == "2:1 “b” has no colon");
}

TEST_CASE("a file without content is empty", "[source]") {
    for (const char* text : {"", "\n\n", "# only a remark\n", "---\n", "---\n...\n", "\xEF\xBB\xBF", "~"})
        CHECK(only_complaint(text) == "0:0 the file is empty");
}

TEST_CASE("hostile files end in one complaint, within a second", "[source]") {
    const auto start = std::chrono::steady_clock::now();
    std::string bomb = "a: &a [x,x,x,x,x,x,x,x,x,x]\n";
    for (char name = 'b'; name <= 'j'; ++name) {
        const std::string before = std::string{"*"} + static_cast<char>(name - 1);
        bomb += std::string{name} + ": &" + name + " [" + repeated(before + ",", 9) + before + "]\n";
    }
    CHECK(only_complaint(bomb).ends_with("there is too much in this file to be records"));
    for (const char* piece : {"[", "{", "- ", "[\n", "? "})
        CHECK(only_complaint(repeated(piece, 20'000)).ends_with("too deeply here"));
    CHECK(only_complaint("a: &a [" + repeated("[", 30) + repeated("]", 30) + "]\nb: " + repeated("[", 30) + "*a" +
                         repeated("]", 30))
              .ends_with("too deeply here"));
    CHECK(only_complaint(repeated(",", 60'000)) == "1:1 this cannot be read");
    CHECK(only_complaint("a: \"" + repeated("b\n", 100'000)) == "1:4 this quotation mark is never closed");
    CHECK(std::chrono::steady_clock::now() - start < std::chrono::seconds{5}); // in all, on a slow machine
}

TEST_CASE("limits are kept", "[source]") {
    CHECK(only_complaint("[a, b, c]", {.nodes = 3}) == "1:8 there is too much in this file to be records");
    CHECK(only_complaint("a: bbbb", {.scalar_bytes = 3}).starts_with("1:4 a single text of"));
    CHECK(only_complaint("a: b", {.bytes = 3}).starts_with("0:0 the file is larger"));
    CHECK(only_complaint("a: {b: {c: d}}", {.depth = 2}) ==
          "1:8 lists and keys stand inside one another too deeply here");
}
