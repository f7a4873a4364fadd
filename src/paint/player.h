// Plays a display list on a Cairo context whose unit is the point, 1/72 inch.
#pragma once

#include "display/display_list.h"
#include "paint/cairo_handles.h"
#include "paint/drawings.h"
#include "paint/font_faces.h"
#include "paint/pictures.h"

namespace dyeleaf {

// What is drawn for. In pixels glyphs are filled as outlines, since Cairo would move each to a whole pixel.
enum class Medium { svg, pixels };

class Player {
  public:
    explicit Player(Medium medium) : medium_(medium) {}

    void play(cairo_t* context, const DisplayList& list);

  private:
    void draw(cairo_t* context, const DisplayList& list);
    void draw_item(cairo_t* context, const FillPath& fill);
    void draw_item(cairo_t* context, const StrokePath& stroke);
    void draw_item(cairo_t* context, const DrawRun& draw);
    void draw_item(cairo_t* context, const DrawPicture& draw);
    void draw_pixels(cairo_t* context, const DrawPicture& draw, double width, double height);
    void draw_drawing(cairo_t* context, const DrawPicture& draw, double width, double height);
    void paint_image(cairo_t* context, cairo_surface_t* image);
    void draw_item(cairo_t* context, const Group& group);
    void draw_item(cairo_t* context, const BeginTag& begin) const;
    void draw_item(cairo_t* context, const EndTag& end) const;

    Medium medium_;
    double unit_ = 1; // of the page's context: how long a point is
    FontFaces faces_;
    Pictures pictures_;
    Drawings drawings_;
    std::vector<cairo_glyph_t> glyphs_; // kept for its memory
    std::vector<cairo_text_cluster_t> clusters_;
};

} // namespace dyeleaf
