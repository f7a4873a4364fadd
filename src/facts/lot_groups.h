// Lots that have something in common, found without comparing each with all others: a studio gathers thousands.
#pragma once

#include "records/records.h"

#include <span>
#include <vector>

namespace dyeleaf {

class LotGroups {
  public:
    // Those make a group of which none is `before` another. The records must outlive this.
    using Before = bool (*)(const Lot& one, const Lot& other);
    LotGroups(const Records& records, Before before);

    // The lot, which is one of the records', and those that go with it, in the order of the records.
    [[nodiscard]] std::span<const Lot* const> of(const Lot& lot) const;

  private:
    Before before_;
    std::vector<const Lot*> lots_;
};

// What a customer takes for the same: one colourway on one base.
LotGroups lots_by_yarn(const Records& records);
// Codes that are easily taken for one another.
LotGroups lots_by_reading(const Records& records);

} // namespace dyeleaf
