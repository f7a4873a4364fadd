// What the floor draws with: a PDF of Cairo's and texts shaped by Pango, and nothing between them.
#pragma once

#include <cairo.h>

#include <map>
#include <memory>
#include <string>
#include <vector>

namespace bench {

struct Style {
    const char* family;
    int weight = 400;
    bool italic = false;
    bool tabular = false;
};

// A text shaped once: glyphs in ems from its left end, for every size.
struct Run {
    cairo_font_face_t* face = nullptr;
    std::string text;
    std::vector<cairo_glyph_t> glyphs;
    std::vector<cairo_text_cluster_t> clusters;
};
struct Shaped {
    std::vector<Run> runs;
    double width = 0; // in ems
};

// The fonts of one folder, the machine's own left alone.
class Shaper {
  public:
    explicit Shaper(const std::string& fonts);
    ~Shaper();
    Shaper(const Shaper&) = delete;
    Shaper& operator=(const Shaper&) = delete;

    Shaped shape(const std::string& text, const Style& style);

  private:
    struct Engine;
    std::unique_ptr<Engine> engine_;
};

struct Colour {
    double red = 0, green = 0, blue = 0;
};
Colour colour_of(const std::string& hex); // "#7b4a72"

// A PDF that is written as its pages are drawn. Lengths are points.
class Canvas {
  public:
    Canvas(const std::string& file, bool tagged);
    ~Canvas();
    Canvas(const Canvas&) = delete;
    Canvas& operator=(const Canvas&) = delete;

    [[nodiscard]] cairo_t* context() const { return context_; }
    void page(double width, double height);
    void end_page();
    void finish(); // throws where anything was not drawn

    void text(const Shaped& shaped, double x, double y, double size, Colour colour = {});
    void colour(Colour colour);
    void forget_colour() { current_ = {-1, -1, -1}; } // another one may be set

    // What lies between the two is one part for a reader; nothing in a file without tags.
    void begin(const char* role);
    void end(const char* role);

  private:
    cairo_surface_t* surface_;
    cairo_t* context_;
    bool tagged_;
    Colour current_{-1, -1, -1};
    std::map<std::pair<cairo_font_face_t*, double>, cairo_scaled_font_t*> fonts_;
    std::vector<cairo_glyph_t> glyphs_; // kept for its memory
};

} // namespace bench
