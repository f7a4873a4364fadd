// Records and what is said about them: tests/cases/records.
#include "complaint_cases.h"
#include "project_folder.h"
#include "records/read_records.h"

#include <algorithm>

using namespace dyeleaf;

namespace {

const std::filesystem::path folder = project_folder() / "tests/cases/records";

// Few cases are about the studio: the others are given one, in a file of its own.
std::vector<std::shared_ptr<const SourceFile>> with_studio(std::vector<std::shared_ptr<const SourceFile>> files) {
    const auto has_studio = [](const auto& file) { return file->text.find("studio:") != std::string::npos; };
    if (std::ranges::none_of(files, has_studio))
        files.push_back(std::make_shared<const SourceFile>(SourceFile{"studio.yaml", "studio: {name: Quillmoor}\n"}));
    return files;
}

} // namespace

TEST_CASE("records say what is wrong, where, and what to write", "[records]") {
    std::size_t cases = 0;
    for (const char* name : {"files", "studio", "photos", "printers", "values", "dyes", "jars", "bases", "lots",
                             "recipes", "references", "slips", "unread"}) {
        cases += run_cases(folder / (std::string{name} + ".case"), [](const auto& files, Diagnostics& diagnostics) {
            (void)read_records(with_studio(files), diagnostics);
        });
    }
    CHECK(cases >= 120);
}

TEST_CASE("records without a studio are read with a warning", "[records]") {
    const std::size_t cases = run_cases(folder / "no_studio.case", [](const auto& files, Diagnostics& diagnostics) {
        (void)read_records(files, diagnostics);
    });
    CHECK(cases >= 3);
}
