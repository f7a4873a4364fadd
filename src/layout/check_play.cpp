#include "layout/check_play.h"

#include "base/words.h"
#include "layout/check_label.h"

#include <algorithm>
#include <array>
#include <optional>
#include <string>

namespace dyeleaf {

namespace {

constexpr Rgb white = {1, 1, 1};

// How far the four sides of a rectangle lie inside the label.
std::array<Length, 4> distances(Rect rect, Size size) {
    return {rect.top(), size.width - rect.right(), size.height - rect.bottom(), rect.left()};
}

bool near_an_edge(Rect rect, Size size) {
    return std::ranges::any_of(distances(rect, size),
                               [](Length inside) { return !fits(back_play, inside) && !fits(inside, -back_play); });
}

std::string name_of(const Zone& zone) {
    switch (zone.kind) {
    case Zone::Kind::colour: return "a colour";
    case Zone::Kind::background: return "a background";
    case Zone::Kind::picture: return "a picture";
    case Zone::Kind::hole: return "a hole";
    case Zone::Kind::code: return "the code " + in_quotes(shortened(zone.text, 40));
    default: return "the text " + in_quotes(shortened(zone.text, 40));
    }
}

bool is_seen(const Zone& zone) {
    return zone.kind != Zone::Kind::background || zone.box == nullptr || zone.box->background != white;
}

// As it is inked: what reaches the edge runs on as far as the label bleeds.
Rect bled(Rect rect, Size size, Length bleed) {
    const auto inside = distances(rect, size);
    const auto beyond = [&](Length distance) { return near(distance, Length{}) ? -bleed : Length{}; };
    return shrunk(rect, {beyond(inside[0]), beyond(inside[1]), beyond(inside[2]), beyond(inside[3])});
}

bool stands_play(const Zone& zone, Size size, const Shape& shape) {
    if (zone.kind == Zone::Kind::colour || zone.kind == Zone::Kind::background)
        return !near_an_edge(bled(zone.rect, size, shape.bleed), size);
    Shape farther = shape;
    farther.safe = back_play;
    // What is too close for the layout's own measure has been complained of.
    return keeps_inside(zone, size, farther) || !keeps_inside(zone, size, shape);
}

std::optional<Rect> bounds(const StrokePath& stroke) {
    std::optional<Rect> all;
    const auto add = [&](Point p) {
        if (!all) {
            all = Rect{p, {}};
            return;
        }
        const Point least = {smaller(all->left(), p.x), smaller(all->top(), p.y)};
        const Point most = {larger(all->right(), p.x), larger(all->bottom(), p.y)};
        all = Rect{least, {most.x - least.x, most.y - least.y}};
    };
    for (const auto& step : stroke.path) {
        if (const auto* move = std::get_if<MoveTo>(&step)) add(move->to);
        if (const auto* line = std::get_if<LineTo>(&step)) add(line->to);
        if (const auto* curve = std::get_if<CurveTo>(&step)) add(curve->to);
    }
    return all;
}

} // namespace

void check_play(const Design& design, const Item& item, Size size, const Placement& back, Diagnostics& diagnostics) {
    const std::string off = "a back can land " + to_string(back_play) + " off its front";
    const auto warn = [&](const Spot& spot, const std::string& what, const std::string& help) {
        diagnostics.warning(spot, in_quotes(item.id) + ": " + what + " on the back, and " + off, help);
    };
    for (const Zone& zone : back.zones) {
        if (!is_seen(zone) || stands_play(zone, size, design.shape)) continue;
        const Spot spot = zone.box == nullptr ? design.spot : zone.box->spot;
        const bool fills = zone.kind == Zone::Kind::colour || zone.kind == Zone::Kind::background;
        if (fills) {
            warn(spot, name_of(zone) + " ends less than " + to_string(back_play) + " from the edge",
                 "end it " + to_string(back_play) +
                     " or more inside the edge; or let it reach the edge and give the "
                     "layout's shape a bleed of 3 mm, so that it runs on beyond");
        } else {
            warn(spot, name_of(zone) + " comes closer than " + to_string(back_play) + " to the edge",
                 "give the back a larger padding");
        }
    }
    for (const DisplayItem& drawn : back.list.items) {
        const auto* stroke = std::get_if<StrokePath>(&drawn);
        const auto rect = stroke == nullptr || stroke->colour == white ? std::nullopt : bounds(*stroke);
        if (!rect || !near_an_edge(*rect, size)) continue;
        warn(design.back ? design.back->spot : design.spot,
             "a line runs or ends less than " + to_string(back_play) + " from the edge",
             "keep frames and rules of the back farther inside; a frame near the edge looks crooked at once");
        break;
    }
}

} // namespace dyeleaf
