// Which of the records a selection means, always in recorded order. A selector that means nothing is an error with
// the nearest name that would have meant something.
#pragma once

#include "base/diagnostic.h"
#include "facts/items.h"
#include "records/records.h"

#include <string>
#include <vector>

namespace dyeleaf {

std::vector<const Dye*> select_dyes(const Records& records, const Selection& selection, Diagnostics& diagnostics);
std::vector<const Jar*> select_jars(const Records& records, const Selection& selection, Diagnostics& diagnostics);
std::vector<const Lot*> select_lots(const Records& records, const Selection& selection, Diagnostics& diagnostics);
std::vector<const Base*> select_bases(const Records& records, const Selection& selection, Diagnostics& diagnostics);

// The one dye or base that is meant: by its id, else its code, else its name. None, or several of one name, is an
// error.
const Dye* find_dye(const Records& records, const std::string& wanted, Diagnostics& diagnostics);
const Base* find_base(const Records& records, const std::string& wanted, Diagnostics& diagnostics);

struct Skein {
    const Lot* lot = nullptr;
    int number = 1;
};
// Spoilt skeins are left out; to ask for one alone is an error.
std::vector<Skein> select_skeins(const Records& records, const Selection& selection, Diagnostics& diagnostics);

} // namespace dyeleaf
