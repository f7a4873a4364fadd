// YAML becomes a validated model.
#pragma once

#include "base/diagnostic.h"
#include "records/records.h"

#include <memory>
#include <vector>

namespace dyeleaf {

// Reads every file of one studio and reports every problem, each at its place. References are let pass where what they
// refer to may stand in a record or a file that could not be read; errors that are there already tell of such files.
// The result holds what was sound; it is fit to print only while the diagnostics have no errors. Guarantees then: ids
// unique within their list; every reference resolves; depths, masses, lengths and parts positive; fibres add up to 100
// %; pots add up to the skeins; spoilt numbers lie within the lot; every mix says its basis and holds at least one dye.
Records read_records(const std::vector<std::shared_ptr<const SourceFile>>& files, Diagnostics& diagnostics);

} // namespace dyeleaf
