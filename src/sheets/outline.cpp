#include "sheets/outline.h"

#include "display/bend.h"
#include "display/transform_path.h"

namespace dyeleaf {

Path ellipse_path(Rect rect) {
    const Point centre = rect.centre();
    const Transform stretched{rect.size.width / mm(2), 0, 0, rect.size.height / mm(2), centre.x, centre.y};
    return transformed(circle_path({}, mm(1)), stretched);
}

namespace {

Path clipped_path(Rect rect, Length clipped) {
    return {MoveTo{{rect.left() + clipped, rect.top()}},
            LineTo{{rect.right() - clipped, rect.top()}},
            LineTo{{rect.right(), rect.top() + clipped}},
            LineTo{{rect.right(), rect.bottom()}},
            LineTo{{rect.left(), rect.bottom()}},
            LineTo{{rect.left(), rect.top() + clipped}},
            ClosePath{}};
}

} // namespace

Path visible_part(const Trim& trim, Length bleed) {
    if (trim.sector) return bend(rounded_path(grown({{}, trim.sector->flat()}, bleed), trim.corner), *trim.sector);
    const Rect rect = grown({{}, trim.size}, bleed);
    if (trim.round) return ellipse_path(rect);
    if (trim.clipped > Length{}) return clipped_path(rect, trim.clipped);
    return bleed > Length{} ? rect_path(rect) : rounded_path(rect, trim.corner);
}

Path film_outline(const Trim& trim, Length film) {
    if (trim.round) return ellipse_path(grown({{}, trim.size}, film));
    const Size flat = trim.sector ? trim.sector->flat() : trim.size;
    Path path = rounded_path(grown({{}, flat}, film), trim.corner + film);
    return trim.sector ? bend(path, *trim.sector) : path;
}

} // namespace dyeleaf
