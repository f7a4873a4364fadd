#include "complaint_cases.h"
#include "english.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

const Language little{
    "xx", "Little", {{"jar.mixed", "mixed {date}"}, {"numbers.decimal mark", ","}, {"plain", "words"}}};

std::optional<Language> read(const std::string& text, const Language* beneath, Diagnostics& diagnostics) {
    const auto file = std::make_shared<const SourceFile>(SourceFile{"xx.yaml", text});
    const auto node = parse_document(file, diagnostics);
    REQUIRE(node);
    return read_language(*node, "xx", beneath, diagnostics);
}

std::vector<std::string> complaints(const std::string& text) {
    Diagnostics diagnostics;
    CHECK_FALSE(read(text, &little, diagnostics));
    std::vector<std::string> messages;
    for (const Diagnostic& one : diagnostics.sorted())
        messages.push_back(std::to_string(one.spot.line) + ": " + one.message + " / " + one.help);
    return messages;
}

} // namespace

TEST_CASE("a phrase is said with its holes filled", "[language]") {
    CHECK(little.say("jar.mixed", {{"date", "today"}}) == "mixed today");
    CHECK(little.say("plain") == "words");
    CHECK_THROWS_AS(little.say("nothing"), std::out_of_range);
    CHECK_THROWS_AS(little.say("jar.mixed"), std::out_of_range);
}

TEST_CASE("a number has its language's decimal mark", "[language]") {
    CHECK(little.number(2.5, 2) == "2,5");
    CHECK(little.number(2.0, 2) == "2");
    CHECK(little.number("2.50") == "2,50");
    CHECK(english().number(2.5, 2) == "2.5");
}

TEST_CASE("what a language leaves out is said in the one beneath", "[language]") {
    Diagnostics diagnostics;
    const auto read_one = read("language: Klein\njar: {mixed: \"gemischt {date}\"}\n", &little, diagnostics);
    REQUIRE(read_one);
    CHECK(read_one->name() == "Klein");
    CHECK(read_one->say("jar.mixed", {{"date", "heute"}}) == "gemischt heute");
    CHECK(read_one->say("plain") == "words");
    CHECK(diagnostics.errors() == 0);
}

TEST_CASE("a phrase that the program cannot fill is refused where it stands", "[language]") {
    CHECK(complaints("jar:\n  mixt: \"mixed {date}\"\n") ==
          std::vector<std::string>{"2: there is no phrase “jar.mixt” / did you mean “jar.mixed”?"});
    CHECK(complaints("jar:\n  mixed: \"mixed {day}\"\n") ==
          std::vector<std::string>{
              "2: this phrase has {day} / the program fills {date} here; keep what stands in braces as it is"});
    CHECK(complaints("jar:\n  mixed: mixed\nplain: \"{words}\"\n") ==
          std::vector<std::string>{
              "2: this phrase lacks {date} / the program fills {date} here; keep what stands in braces as it is",
              "3: this phrase has {words} / the program fills nothing in here: take the braces out"});
    CHECK(complaints("plain:\n") == std::vector<std::string>{"1: nothing stands after this phrase's name / write its "
                                                             "words, or leave the line out"});
    CHECK(complaints("plain: \"{words\"\n") ==
          std::vector<std::string>{"1: this phrase has a { or } without its partner / a hole is a name between braces, "
                                   "as in \"mixed {date}\""});
}

TEST_CASE("lists are numbered from one", "[language]") {
    CHECK(english().say("dates.short months.11") == "Nov");
    CHECK(english().say("numbers.counts.12") == "twelve");
}
