#include "facts/base_price.h"

namespace dyeleaf {

std::optional<PriceSpan> prices_on(const Records& records, const Base& base) {
    std::optional<PriceSpan> span;
    for (const Lot& lot : records.lots) {
        if (lot.base.value != base.id.value || lot.skein_mass || !lot.price) continue;
        if (!span) span = {*lot.price, *lot.price};
        if (lot.price->minor < span->least.minor) span->least = *lot.price;
        if (lot.price->minor > span->most.minor) span->most = *lot.price;
    }
    return span;
}

} // namespace dyeleaf
