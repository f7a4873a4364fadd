// What is warned of in bases: tests/cases/facts/fibres.case and care.case.
#include "complaint_cases.h"
#include "facts/checks.h"
#include "project_folder.h"
#include "records/read_records.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

TEST_CASE("bases that would embarrass the dyer are warned of", "[facts]") {
    const std::string file = GENERATE(as<std::string>{}, "fibres.case", "care.case");
    const auto count =
        run_cases(project_folder() / "tests/cases/facts" / file, [](const auto& files, auto& diagnostics) {
            check_facts(read_records(files, diagnostics), Date{2026, 11, 20}, diagnostics);
        });
    CHECK(count > 4);
}
