// The rules that need more than one record.
#pragma once

#include "base/diagnostic.h"
#include "records/records.h"

namespace dyeleaf {

// Of which lists some record could not be read: what refers to one of these may be right.
struct Unread {
    bool ingredients = false;
    bool dyes = false;
    bool bases = false;
    bool jars = false;
};

// Complains about ids used twice, references to nothing, mixes without a dye, and dyes or jars that cannot be told
// apart; takes out what came second, adds the salt that every studio has, and says of each part of a mix whether it is
// a dye.
void check_records(Records& records, const Unread& unread, Diagnostics& diagnostics);

} // namespace dyeleaf
