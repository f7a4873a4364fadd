#include "cli/printed_note.h"

#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>

using namespace dyeleaf;

namespace {

std::filesystem::path folder_with(const std::string& note) {
    const auto folder = std::filesystem::temp_directory_path() / "dyeleaf-printed-note-test";
    std::filesystem::remove_all(folder);
    std::filesystem::create_directories(folder);
    std::ofstream{note_file(folder), std::ios::binary} << note;
    return folder;
}

} // namespace

TEST_CASE("a note is read as it was written", "[cli]") {
    const PrintedNote note = {{{"dye-card", "sloe"}, {0x00af63dc4c8601ec, "2026-11-20"}},
                              {{"hang-tag", "26-117:3"}, {0xffffffffffffffff, "2026-11-21"}}};
    CHECK_THAT(write_note(note), Catch::Contains("dye-card\tsloe\t2026-11-20\t00af63dc4c8601ec\n"));
    const auto folder = folder_with(write_note(note));
    Diagnostics diagnostics;
    const PrintedNote read = read_note(folder, diagnostics);
    CHECK(diagnostics.sorted().empty());
    REQUIRE(read.size() == 2);
    CHECK(write_note(read) == write_note(note));
    std::filesystem::remove_all(folder);
}

TEST_CASE("no note is an empty one", "[cli]") {
    Diagnostics diagnostics;
    CHECK(read_note("/nonexistent", diagnostics).empty());
    CHECK(diagnostics.sorted().empty());
}

TEST_CASE("a line that is no note is warned of and counts for nothing", "[cli]") {
    const auto folder = folder_with("# a remark\n\ndye-card\tsloe\t2026-11-20\t00af63dc4c8601\r\n"
                                    "dye-card\tmoss\t2026-11-20\t00af63dc4c8601ec\r\nhalf a li");
    Diagnostics diagnostics;
    const PrintedNote read = read_note(folder, diagnostics);
    CHECK(read.size() == 1);
    REQUIRE(diagnostics.warnings() == 2);
    CHECK(diagnostics.sorted()[0].spot.line == 3);
    CHECK(diagnostics.sorted()[0].message == "this line is not one that dyeleaf wrote; its label counts as new");
    CHECK(diagnostics.sorted()[1].spot.line == 5);
    std::filesystem::remove_all(folder);
}

TEST_CASE("a file of that name with other things in it is not taken for a note", "[cli]") {
    for (const auto* text : {"Sloe: printed on Monday\n", "dye-card\tsloe\n"}) {
        const auto folder = folder_with(text);
        Diagnostics diagnostics;
        CHECK(read_note(folder, diagnostics).empty());
        REQUIRE(diagnostics.errors() == 1);
        CHECK(diagnostics.sorted()[0].help == "give the file another name");
        std::filesystem::remove_all(folder);
    }
    const auto folder = folder_with(write_note({}) + "half a li");
    Diagnostics diagnostics;
    CHECK(read_note(folder, diagnostics).empty());
    CHECK(diagnostics.errors() == 0);
    CHECK(diagnostics.warnings() == 1);
    std::filesystem::remove_all(folder);
}
