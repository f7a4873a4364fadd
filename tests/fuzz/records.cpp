// Records: read, with the example studio's pictures beside them, and where they are sound, every fact and every warning
// of them.
#include "cli/fact_list.h"
#include "english.h"
#include "facts/checks.h"
#include "facts/lot_differences.h"
#include "input.h"
#include "project_folder.h"
#include "records/read_pictures.h"
#include "records/read_records.h"

using namespace dyeleaf;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    Diagnostics diagnostics;
    Records records = read_records({as_file(data, size)}, diagnostics);
    read_pictures(records, project_folder() / "examples" / "studio", diagnostics);
    if (diagnostics.errors() == 0) {
        const Date today{2026, 11, 9};
        check_facts(records, today, diagnostics);
        (void)lot_differences(records);
        const Printing printing{{english(), {}}, nullptr, today};
        const auto list = [&](const auto& all) {
            for (const auto& one : all)
                (void)list_facts(records, one.id.value, printing, diagnostics);
        };
        list(records.dyes);
        list(records.jars);
        list(records.bases);
        list(records.lots);
    }
    tell(diagnostics);
    return 0;
}
