// What a complaint looks like.
#include "base/diagnostic.h"

#include <catch2/catch.hpp>

#include <memory>

using namespace dyeleaf;

namespace {

std::shared_ptr<const SourceFile> file(const std::string& text) {
    return std::make_shared<const SourceFile>(SourceFile{"jars.yaml", text});
}

} // namespace

TEST_CASE("a complaint shows its line, a caret and what to write", "[base]") {
    const Diagnostic one{
        Severity::error, {file("jars:\n  - holds: 60\n"), 2, 12, 2}, "“60” has no unit", "write “60 mL”"};
    CHECK(describe(one) == "jars.yaml:2:12: error: “60” has no unit\n"
                           "  2 |   - holds: 60\n"
                           "    |            ^^\n"
                           "  help: write “60 mL”\n");
}

TEST_CASE("the caret stands under its character, not under its byte", "[base]") {
    const Diagnostic one{Severity::warning, {file("name: Éclat déjà\n"), 1, 13, 4}, "odd", ""};
    CHECK(describe(one) == "jars.yaml:1:13: warning: odd\n"
                           "  1 | name: Éclat déjà\n"
                           "    |             ^^^^\n");
}

TEST_CASE("a complaint about a whole file shows no line", "[base]") {
    CHECK(describe({Severity::error, {file(""), 0, 0, 1}, "the file is empty", ""}) ==
          "jars.yaml: error: the file is empty\n");
}

TEST_CASE("control characters in a line cannot reach the terminal", "[base]") {
    const Diagnostic one{Severity::error, {file("a\x1b[2Jb\n"), 1, 1, 1}, "odd", ""};
    CHECK(describe(one).find('\x1b') == std::string::npos);
}

TEST_CASE("complaints are sorted by place and kept once", "[base]") {
    Diagnostics diagnostics;
    const auto text = file("a\nb\n");
    diagnostics.error({text, 2, 1, 1}, "second");
    diagnostics.warning({text, 1, 1, 1}, "first");
    diagnostics.error({text, 2, 1, 1}, "second");
    REQUIRE(diagnostics.sorted().size() == 2);
    CHECK(diagnostics.sorted()[0].message == "first");
    CHECK(diagnostics.errors() == 1);
    CHECK(diagnostics.warnings() == 1);
}
