#include "paint/painter.h"

#include "base/geometry.h"
#include "paint/cairo_handles.h"
#include "paint/player.h"

#include <cairo-pdf.h>
#include <cairo-svg.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <string_view>
#include <utility>

namespace dyeleaf {

namespace {

cairo_status_t append(void* bytes, const unsigned char* data, unsigned int length) {
    static_cast<std::string*>(bytes)->append(reinterpret_cast<const char*>(data), length);
    return CAIRO_STATUS_SUCCESS;
}

// PDF viewers take no page longer than 200 inches (ISO 32000-1, annex C).
void check_size(Size size) {
    const auto sound = [](Length side) { return side > Length{} && side <= inches(200); };
    if (!sound(size.width) || !sound(size.height)) {
        throw PaintError("a page of " + to_string(Rect{{}, size}) + " mm cannot be painted");
    }
}

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

struct PdfPainter::Surface {
    std::string bytes;
    CairoSurface surface{cairo_pdf_surface_create_for_stream(append, &bytes, 1, 1)};
    CairoContext context{cairo_create(surface.get())};
    Player player{Medium::pdf};
};

PdfPainter::PdfPainter() : surface_(std::make_unique<Surface>()) {
    cairo_surface_t* surface = surface_->surface.get();
    cairo_pdf_surface_restrict_to_version(surface, CAIRO_PDF_VERSION_1_5);
    // A fixed date instead of now: the same lists make the same bytes.
    cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_CREATE_DATE, "2000-01-01T00:00:00Z");
    check(surface_->context.get(), "the PDF cannot be started");
}

PdfPainter::~PdfPainter() = default;

TaggedPage PdfPainter::page(const DisplayList& list) {
    check_size(list.size);
    cairo_t* context = surface_->context.get();
    cairo_pdf_surface_set_size(surface_->surface.get(), list.size.width.in_pt(), list.size.height.in_pt());
    TaggedPage tagged = surface_->player.play(context, list);
    cairo_show_page(context);
    check(context, "the page cannot be painted");
    return tagged;
}

std::string PdfPainter::finish() {
    cairo_surface_finish(surface_->surface.get());
    check(cairo_surface_status(surface_->surface.get()), "the PDF cannot be finished");
    return std::move(surface_->bytes);
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
    check(cairo_surface_write_to_png_stream(surface.get(), append, &bytes), "the picture cannot be written");
    return bytes;
}

std::string paint_svg(const DisplayList& list) {
    check_size(list.size);
    std::string bytes;
    const CairoSurface surface{
        cairo_svg_surface_create_for_stream(append, &bytes, list.size.width.in_pt(), list.size.height.in_pt())};
    const CairoContext context{cairo_create(surface.get())};
    Player{Medium::svg}.play(context.get(), list);
    check(context.get(), "the drawing cannot be painted");
    cairo_surface_finish(surface.get());
    check(cairo_surface_status(surface.get()), "the drawing cannot be finished");
    return renumbered(bytes);
}

} // namespace dyeleaf
