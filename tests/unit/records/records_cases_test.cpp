// Records and what is said about them: tests/cases/records.
#include "complaint_cases.h"
#include "records/read_records.h"

using namespace dyeleaf;

TEST_CASE("records say what is wrong, where, and what to write", "[records]") {
    const std::filesystem::path folder = std::string{DYELEAF_CASES} + "/records";
    std::size_t cases = 0;
    for (const char* name : {"files", "studio", "values", "dyes", "jars", "bases", "lots", "references"}) {
        cases += run_cases(folder / (std::string{name} + ".case"),
                           [](const auto& files, Diagnostics& diagnostics) { (void)read_records(files, diagnostics); });
    }
    CHECK(cases >= 90);
}
