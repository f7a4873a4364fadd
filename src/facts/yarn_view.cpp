#include "facts/yarn_view.h"

#include "facts/skein_size.h"

namespace dyeleaf {

SkeinSize size_of(const BaseView& view) {
    return view.base->skein;
}

SkeinSize size_of(const LotView& view) {
    return skein_size(view.records->base(view.lot->base.value), *view.lot);
}

SkeinSize size_of(const SkeinView& view) {
    return skein_size(view.records->base(view.lot->base.value), *view.lot, view.number);
}

} // namespace dyeleaf
