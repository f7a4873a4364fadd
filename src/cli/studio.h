// One studio's folder: its records, and the languages that it prints in.
#pragma once

#include "base/date.h"
#include "base/diagnostic.h"
#include "base/reach.h"
#include "cli/library.h"
#include "facts/items.h"
#include "language/language.h"
#include "records/records.h"

#include <optional>

namespace dyeleaf {

// The records of one folder, or nothing where the folder cannot be read at all. Fit to print only while there are no
// errors.
std::optional<Records> read_studio(const Reach& folder, Diagnostics& diagnostics);

// What a studio's labels are printed in.
struct Languages {
    Language first;
    std::optional<Language> second;

    [[nodiscard]] Printing printing(const Date& today, Ink ink) const {
        return {{first, ink}, second ? &*second : nullptr, today};
    }
};

// Those that the studio asks for, English if none; one that is not there is an error.
std::optional<Languages> languages_of(const Records& records, const Library& library, Diagnostics& diagnostics);

} // namespace dyeleaf
