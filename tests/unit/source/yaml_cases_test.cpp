// What is said about files that are not read as their writer meant: tests/cases/source.
#include "complaint_cases.h"
#include "source/document.h"

using namespace dyeleaf;

TEST_CASE("a slip in YAML is told in plain words, at its place", "[source]") {
    const auto cases =
        run_cases(std::string{DYELEAF_CASES} + "/source/yaml.case", [](const auto& files, Diagnostics& diagnostics) {
            for (const auto& file : files)
                (void)parse_document(file, diagnostics);
        });
    CHECK(cases >= 50);
}
