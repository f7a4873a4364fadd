#include "paint/painter.h"

#include "base/geometry.h"
#include "paint/cairo_handles.h"
#include "paint/player.h"

#include <cairo-svg.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <string_view>
#include <utility>

namespace dyeleaf {

namespace {

// Cairo numbers surfaces and pictures by what the whole process has painted before; here each drawing starts at 1.
std::string renumbered(std::string_view svg) {
    constexpr std::array<std::string_view, 2> names = {"surface", "image"};
    std::map<std::string_view, std::size_t> numbers;
    std::string result;
    while (!svg.empty()) {
        const auto quote = svg.find('"');
        const auto start = quote == std::string_view::npos ? svg.size() : svg.find_first_not_of("\"#", quote);
        result += svg.substr(0, start);
        svg.remove_prefix(std::min(start, svg.size()));
        for (const std::string_view name : names) {
            const auto end = svg.find_first_not_of("0123456789", name.size());
            if (!svg.starts_with(name) || end == name.size() || end == std::string_view::npos) continue;
            const auto number = numbers.emplace(svg.substr(0, end), numbers.size() + 1).first->second;
            result += std::string{name} + std::to_string(number);
            svg.remove_prefix(end);
        }
    }
    return result;
}

} // namespace

void check_size(Size page) {
    const auto sound = [](Length side) { return side > Length{} && side <= inches(200); };
    if (!sound(page.width) || !sound(page.height)) {
        throw PaintError("a page of " + to_string(Rect{{}, page}) + " mm cannot be painted");
    }
}

std::string paint_png(const DisplayList& list, double dpi) {
    check_size(list.size);
    constexpr double most_pixels = 20'000;
    const auto pixels = [&](Length side) { return std::max(1.0, std::round(side / inches(1) * dpi)); };
    const double width = pixels(list.size.width);
    const double height = pixels(list.size.height);
    if (!(width <= most_pixels && height <= most_pixels)) {
        throw PaintError("a picture larger than 20000 pixels a side cannot be painted; ask for fewer dots to the inch");
    }
    const CairoSurface surface{
        cairo_image_surface_create(CAIRO_FORMAT_RGB24, static_cast<int>(width), static_cast<int>(height))};
    const CairoContext context{cairo_create(surface.get())};
    cairo_set_source_rgb(context.get(), 1, 1, 1);
    cairo_paint(context.get());
    cairo_scale(context.get(), dpi / 72, dpi / 72);
    Player{Medium::pixels}.play(context.get(), list);
    check(context.get(), "the picture cannot be painted");

    std::string bytes;
    check(cairo_surface_write_to_png_stream(surface.get(), append_bytes, &bytes), "the picture cannot be written");
    return bytes;
}

std::string paint_svg(const DisplayList& list) {
    check_size(list.size);
    std::string bytes;
    const CairoSurface surface{
        cairo_svg_surface_create_for_stream(append_bytes, &bytes, list.size.width.in_pt(), list.size.height.in_pt())};
    const CairoContext context{cairo_create(surface.get())};
    Player{Medium::svg}.play(context.get(), list);
    check(context.get(), "the drawing cannot be painted");
    cairo_surface_finish(surface.get());
    check(cairo_surface_status(surface.get()), "the drawing cannot be finished");
    return renumbered(bytes);
}

} // namespace dyeleaf
