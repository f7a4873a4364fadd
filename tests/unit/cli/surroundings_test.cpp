#include "cli/data_folder.h"
#include "cli/report.h"
#include "cli/today.h"
#include "project_folder.h"

#include <catch2/catch.hpp>
#include <memory>
#include <sstream>

using namespace dyeleaf;

TEST_CASE("the day asked for is today, before the epoch and the clock", "[cli]") {
    Diagnostics diagnostics;
    CHECK(today(Date{2026, 11, 2}, "0", diagnostics) == Date{2026, 11, 2});
    CHECK(today(std::nullopt, "0", diagnostics) == Date{1970, 1, 1});
    CHECK(today(std::nullopt, "1793577599", diagnostics) == Date{2026, 11, 1}); // 23:59:59 in UTC
    CHECK(today(std::nullopt, "1793577600", diagnostics) == Date{2026, 11, 2});
    CHECK(today(std::nullopt, "4102444800", diagnostics) == Date{2100, 1, 1}); // past 32 bits
    CHECK(diagnostics.errors() == 0);
    CHECK(today(std::nullopt, std::nullopt, diagnostics)->year >= 2024);
}

TEST_CASE("an epoch that is no count of seconds is an error", "[cli]") {
    const std::string epoch = GENERATE("", "yesterday", "12x", "-5", "99999999999999999999", "253402300800");
    Diagnostics diagnostics;
    CHECK_FALSE(today(std::nullopt, epoch, diagnostics));
    CHECK(diagnostics.errors() == 1);
}

TEST_CASE("a table counts characters, not bytes", "[cli]") {
    CHECK(table({{"id", "name", "line"}, {"møss", "Möss", "Fenlight"}, {"a", "", "x"}}) == "  id    name  line\n"
                                                                                           "  møss  Möss  Fenlight\n"
                                                                                           "  a           x\n");
    CHECK(table({{"a", "b"}, {"long", ""}}) == "  a     b\n  long\n");
    CHECK(table({}).empty());
}

TEST_CASE("problems are counted in words", "[cli]") {
    Diagnostics diagnostics;
    CHECK(count_problems(diagnostics) == "no problems");
    diagnostics.warning({}, "one");
    CHECK(count_problems(diagnostics) == "1 warning");
    diagnostics.error({}, "two");
    diagnostics.error({}, "three");
    CHECK(count_problems(diagnostics) == "2 errors, 1 warning");
}

TEST_CASE("the same complaint about several labels at one place is told and counted once", "[cli]") {
    const auto file = std::make_shared<SourceFile>(SourceFile{"tag.yaml", "front:\n"});
    const Spot spot{file, 1, 1, 5};
    Diagnostics diagnostics;
    for (const std::string label : {"a", "b", "c", "d"}) {
        diagnostics.warning(spot, "“" + label + "”: the box is too tall");
        diagnostics.warning({file, 1, 3, 1}, "“" + label + "”: text " + label + " is cut");
    }
    diagnostics.warning(spot, "“x” is not a style: known are a, b");
    CHECK(count_problems(diagnostics) == "6 warnings");
    const std::string told = describe_all(diagnostics);
    CHECK_THAT(told, Catch::Contains("warning: “a”, “b”, “c” and 1 more: the box is too tall\n"));
    CHECK_THAT(told, Catch::Contains("warning: “x” is not a style: known are a, b\n"));
    CHECK_THAT(told, Catch::Contains("warning: “d”: text d is cut\n"));
}

TEST_CASE("a name with spaces is shown as it must be typed", "[cli]") {
    CHECK(as_typed("my-studio") == "my-studio");
    CHECK(as_typed("my studio") == "\"my studio\"");
}

TEST_CASE("progress is shown to nobody at first, and never to a file", "[cli]") {
    std::ostringstream stream;
    {
        ProgressLine to_terminal{stream, true};
        to_terminal.show("sheet 1 of 2");
        ProgressLine to_file{stream, false};
        to_file.show("sheet 1 of 2");
    }
    CHECK(stream.str().empty());
}

TEST_CASE("the data folder is the one that DYELEAF_HOME names, or an error", "[cli]") {
    Diagnostics diagnostics;
    const std::filesystem::path source = fonts_folder().parent_path();
    CHECK(find_data_folder(source.string(), "/nowhere/build/dyeleaf", "/nowhere", diagnostics) == source);
    CHECK(find_data_folder(std::nullopt, "/nowhere/build/dyeleaf", source, diagnostics) == source);
    CHECK(find_data_folder(std::nullopt, source / "build" / "dyeleaf", "/nowhere", diagnostics) == source / "");
    CHECK(diagnostics.errors() == 0);
    CHECK_FALSE(find_data_folder("/nowhere", source / "build" / "dyeleaf", source, diagnostics));
    CHECK_FALSE(find_data_folder(std::nullopt, "/nowhere/build/dyeleaf", "/nowhere", diagnostics));
    CHECK(diagnostics.errors() == 2);
}
