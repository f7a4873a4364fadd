// SVG drawings on Cairo, as paths and not as pixels. The only room that includes librsvg.
#pragma once

#include "paint/cairo_handles.h"

#include <map>
#include <memory>
#include <set>
#include <string>
#include <utility>

using RsvgHandle = struct _RsvgHandle; // NOLINT(bugprone-reserved-identifier): the name is the library's

namespace dyeleaf {

struct DrawingDeleter {
    void operator()(RsvgHandle* drawing) const;
};

// Files read once each. One that cannot be drawn is a PaintError that names it.
class Drawings {
  public:
    // Fills the rectangle from the origin with the drawing, its shape kept.
    void draw(cairo_t* context, const std::string& file, double width, double height);

    // Whether it shows anything but black, white and greys.
    bool is_coloured(const std::string& file, double shape);

    // In greys, as pixels fine enough for any press at this size in points. Belongs to this object.
    cairo_surface_t* in_grey(const std::string& file, double width, double height);

  private:
    RsvgHandle* drawing(const std::string& file);
    // Whether it can be drawn in reasonable time; once for each file.
    void look(const std::string& file);

    std::map<std::string, std::unique_ptr<RsvgHandle, DrawingDeleter>> drawings_;
    std::set<std::string> looked_at_;
    std::map<std::string, bool> coloured_;
    std::map<std::pair<std::string, int>, CairoSurface> greys_; // by how many pixels high
};

} // namespace dyeleaf
