// What is said about files that are not read as their writer meant: tests/cases/source.
#include "complaint_cases.h"
#include "project_folder.h"
#include "source/document.h"

#include <array>

using namespace dyeleaf;

TEST_CASE("a slip in YAML is told in plain words, at its place", "[source]") {
    constexpr std::array<std::string_view, 12> keys = {"id",     "name",  "line",   "colourway", "base",    "dye",
                                                       "skeins", "parts", "market", "dyes",      "dye lot", "depth"};
    std::size_t cases = 0;
    for (const char* name : {"yaml", "colons", "quotes", "brackets"}) {
        cases += run_cases(project_folder() / "tests/cases/source" / (std::string{name} + ".case"),
                           [&](const auto& files, Diagnostics& diagnostics) {
                               for (const auto& file : files)
                                   (void)parse_document(file, diagnostics, keys);
                           });
    }
    CHECK(cases >= 90);
}

TEST_CASE("without known keys a file is told what is sure", "[source]") {
    const std::size_t cases = run_cases(project_folder() / "tests/cases/source/no_keys.case",
                                        [](const auto& files, Diagnostics& diagnostics) {
                                            for (const auto& file : files)
                                                (void)parse_document(file, diagnostics);
                                        });
    CHECK(cases >= 4);
}
