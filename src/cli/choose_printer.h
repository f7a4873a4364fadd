// Which of the recorded printers prints.
#pragma once

#include "base/diagnostic.h"
#include "base/geometry.h"
#include "cli/options.h"
#include "records/records.h"

#include <string>
#include <vector>

namespace dyeleaf {

// Of those that were measured on this paper, the one that is wanted, or the only one. Nothing, with a remark, where
// several would do, or where only others were measured. A name that is none is an error.
struct ChosenPrinter {
    const Printer* printer = nullptr;
    std::string remark;
};
ChosenPrinter choose_printer(const std::vector<Printer>& printers, const WantedPrinter& wanted, Size paper,
                             Diagnostics& diagnostics);

} // namespace dyeleaf
