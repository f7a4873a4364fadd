#include "cli/studio.h"

#include "cli/check_printers.h"
#include "records/read_pictures.h"
#include "records/read_records.h"
#include "source/files.h"

#include <utility>

namespace dyeleaf {

std::optional<Records> read_studio(const Reach& folder, Diagnostics& diagnostics) {
    const auto files = read_folder(folder.home, diagnostics);
    if (files.empty()) return std::nullopt;
    Records records = read_records(files, diagnostics);
    check_printers(records.printers, diagnostics);
    read_pictures(records, folder, diagnostics);
    return records;
}

std::optional<Languages> languages_of(const Records& records, const Library& library, Diagnostics& diagnostics) {
    const Studio& studio = records.studio;
    const Statements statements = has_statements(records) ? Statements::wanted : Statements::unwanted;
    auto first = studio.language ? find_language(*studio.language, library, statements, diagnostics)
                                 : find_english(library, statements, diagnostics);
    std::optional<Language> second;
    if (studio.second_language) second = find_language(*studio.second_language, library, statements, diagnostics);
    if (!first || (studio.second_language && !second)) return std::nullopt;
    return Languages{std::move(*first), std::move(second)};
}

} // namespace dyeleaf
