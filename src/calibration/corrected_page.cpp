#include "calibration/corrected_page.h"

#include <memory>
#include <utility>

namespace dyeleaf {

namespace {

Turn turn_of(Size page) {
    return page.width > page.height ? Turn::left : Turn::none;
}

} // namespace

Transform standing(Size page) {
    return turned(turn_of(page), page);
}

Size standing_size(Size page) {
    return turned_size(turn_of(page), page);
}

DisplayList corrected(DisplayList page, const Misprint& misprint) {
    const Size size = standing_size(page.size);
    const Transform moved = correction(misprint, size).after(standing(page.size));
    return {size, {Group{std::make_shared<DisplayList>(std::move(page)), moved, std::nullopt}}};
}

} // namespace dyeleaf
