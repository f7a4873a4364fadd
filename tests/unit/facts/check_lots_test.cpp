// What is warned of in sound lots, in days and in swatches: tests/cases/facts/lots.case and shades.case.
#include "complaint_cases.h"
#include "facts/checks.h"
#include "project_folder.h"
#include "records/read_records.h"

using namespace dyeleaf;

namespace {

constexpr Date today{2026, 11, 25};

// Few cases are about the studio: the others are given one.
void give_studio(std::vector<std::shared_ptr<const SourceFile>>& files) {
    if (files.front()->text.find("studio:") != std::string::npos) return;
    files.push_back(std::make_shared<const SourceFile>(SourceFile{"studio.yaml", "studio: {name: Quillmoor}\n"}));
}

} // namespace

TEST_CASE("lots and swatches that would embarrass the dyer are warned of", "[facts]") {
    std::size_t cases = 0;
    for (const auto* file : {"lots.case", "shades.case"}) {
        cases += run_cases(project_folder() / "tests/cases/facts" / file, [](auto files, Diagnostics& diagnostics) {
            give_studio(files);
            const auto records = read_records(files, diagnostics);
            REQUIRE(diagnostics.errors() == 0);
            check_facts(records, today, diagnostics);
        });
    }
    CHECK(cases >= 12);
}
