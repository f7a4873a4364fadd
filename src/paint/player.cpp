#include "paint/player.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace dyeleaf {

namespace {

// In points, to a thousandth of one: no press shows less, and the file has fewer digits to hold.
double points(Length length) {
    return std::round(length.in_pt() * 1000) / 1000;
}

struct PathTracer {
    cairo_t* context;
    double (*unit)(Length); // points, rounded or not

    void operator()(const MoveTo& step) const { cairo_move_to(context, unit(step.to.x), unit(step.to.y)); }
    void operator()(const LineTo& step) const { cairo_line_to(context, unit(step.to.x), unit(step.to.y)); }
    void operator()(const CurveTo& step) const {
        cairo_curve_to(context, unit(step.control1.x), unit(step.control1.y), unit(step.control2.x),
                       unit(step.control2.y), unit(step.to.x), unit(step.to.y));
    }
    void operator()(const ClosePath& /*step*/) const { cairo_close_path(context); }
};

double exact_points(Length length) {
    return length.in_pt();
}

void trace(cairo_t* context, const Path& path, double (*unit)(Length)) {
    cairo_new_path(context);
    for (const auto& step : path)
        std::visit(PathTracer{context, unit}, step);
}

// How much the x and the y of a context's drawing are stretched.
std::pair<double, double> stretch_of(const cairo_matrix_t& m) {
    return {std::hypot(m.xx, m.yx), std::hypot(m.xy, m.yy)};
}

// Moved by less than a dot, so that the path's first point lies on a whole one of the page. A page may be stretched to
// suit its printer; the dots are not, nor is what is drawn on them. `unit` is a point on an unstretched page.
void trace_on_dots(cairo_t* context, const FillPath& fill, double unit) {
    const auto* first = fill.path.empty() ? nullptr : std::get_if<MoveTo>(&fill.path.front());
    if (first == nullptr) return;
    cairo_matrix_t m{};
    cairo_get_matrix(context, &m);
    double x = first->to.x.in_pt();
    double y = first->to.y.in_pt();
    cairo_matrix_transform_point(&m, &x, &y);
    const auto [across, down] = stretch_of(m);
    m.xx *= unit / across;
    m.yx *= unit / across;
    m.xy *= unit / down;
    m.yy *= unit / down;
    double moved_x = first->to.x.in_pt();
    double moved_y = first->to.y.in_pt();
    cairo_matrix_transform_point(&m, &moved_x, &moved_y);
    const double dot = fill.dot.in_pt() * unit;
    m.x0 += std::round(x / dot) * dot - moved_x;
    m.y0 += std::round(y / dot) * dot - moved_y;
    cairo_save(context);
    cairo_set_matrix(context, &m);
    trace(context, fill.path, exact_points);
    cairo_restore(context);
}

void set_colour(cairo_t* context, Rgb colour) {
    cairo_set_source_rgb(context, colour.red, colour.green, colour.blue);
}

void set_ends(cairo_t* context, bool round) {
    cairo_set_line_cap(context, round ? CAIRO_LINE_CAP_ROUND : CAIRO_LINE_CAP_BUTT);
    cairo_set_line_join(context, round ? CAIRO_LINE_JOIN_ROUND : CAIRO_LINE_JOIN_MITER);
}

// Glyphs keep their shapes and distances at every resolution; lines end where they are said to.
void set_options(cairo_t* context) {
    const CairoFontOptions options{cairo_font_options_create()};
    cairo_font_options_set_hint_style(options.get(), CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_hint_metrics(options.get(), CAIRO_HINT_METRICS_OFF);
    cairo_font_options_set_antialias(options.get(), CAIRO_ANTIALIAS_GRAY);
    cairo_set_font_options(context, options.get());
    set_ends(context, false);
}

} // namespace

void Player::play(cairo_t* context, const DisplayList& list) {
    cairo_matrix_t page{};
    cairo_get_matrix(context, &page);
    unit_ = stretch_of(page).first;
    cairo_save(context);
    set_options(context);
    draw(context, list);
    cairo_restore(context);
}

void Player::draw(cairo_t* context, const DisplayList& list) {
    for (const DisplayItem& item : list.items) {
        std::visit([&](const auto& kind) { draw_item(context, kind); }, item);
    }
}

void Player::draw_item(cairo_t* context, const FillPath& fill) {
    set_colour(context, fill.colour);
    if (fill.dot == Length{}) {
        trace(context, fill.path, points);
        cairo_fill(context);
        return;
    }
    trace_on_dots(context, fill, unit_);
    // In pixels each one is black or white.
    if (medium_ == Medium::pixels) cairo_set_antialias(context, CAIRO_ANTIALIAS_NONE);
    cairo_fill(context);
    cairo_set_antialias(context, CAIRO_ANTIALIAS_DEFAULT);
}

void Player::draw_item(cairo_t* context, const StrokePath& stroke) {
    set_colour(context, stroke.colour);
    cairo_set_line_width(context, points(stroke.width));
    std::vector<double> dash;
    for (const Length length : stroke.dash)
        dash.push_back(points(length));
    cairo_set_dash(context, dash.data(), static_cast<int>(dash.size()), 0);
    trace(context, stroke.path, points);
    if (stroke.round) set_ends(context, true);
    cairo_stroke(context);
    if (stroke.round) set_ends(context, false);
}

void Player::draw_item(cairo_t* context, const DrawRun& draw) {
    const ShapedRun& run = *draw.run;
    const double size = draw.size.in_pt();
    double x = points(draw.baseline.x);
    double y = points(draw.baseline.y);
    if (draw.turn != 0) {
        cairo_save(context);
        cairo_translate(context, std::exchange(x, 0), std::exchange(y, 0));
        cairo_rotate(context, draw.turn);
    }
    glyphs_.clear();
    for (const Glyph& glyph : run.glyphs)
        glyphs_.push_back({glyph.index, x + glyph.x * size, y + glyph.y * size});
    clusters_.clear();
    for (const Cluster& cluster : run.clusters)
        clusters_.push_back({cluster.bytes, cluster.glyphs});

    set_colour(context, draw.colour);
    cairo_set_font_face(context, faces_.face(run.face));
    cairo_set_font_size(context, size);
    if (medium_ == Medium::pixels) {
        cairo_glyph_path(context, glyphs_.data(), static_cast<int>(glyphs_.size()));
        cairo_fill(context);
    } else {
        // The text goes along, so that it can be searched, copied and read aloud.
        cairo_show_text_glyphs(context, run.text.data(), static_cast<int>(run.text.size()), glyphs_.data(),
                               static_cast<int>(glyphs_.size()), clusters_.data(), static_cast<int>(clusters_.size()),
                               run.right_to_left ? CAIRO_TEXT_CLUSTER_FLAG_BACKWARD : cairo_text_cluster_flags_t{});
    }
    if (draw.turn != 0) cairo_restore(context);
}

// As large as fits in its rectangle, in the middle; drawn from the origin.
void Player::draw_item(cairo_t* context, const DrawPicture& draw) {
    const double shape = draw.picture.shape;
    const double width = std::min(draw.rect.size.width.in_pt(), draw.rect.size.height.in_pt() * shape);
    const double height = width / shape;
    const Point middle = draw.rect.centre();
    cairo_save(context);
    cairo_translate(context, points(middle.x) - width / 2, points(middle.y) - height / 2);
    if (draw.picture.kind == PictureKind::svg) {
        draw_drawing(context, draw, width, height);
    } else {
        draw_pixels(context, draw, width, height);
    }
    cairo_restore(context);
}

void Player::draw_pixels(cairo_t* context, const DrawPicture& draw, double width, double height) {
    cairo_surface_t* image = pictures_.picture(draw.picture, draw.grey);
    const Pixels pixels = seen(draw.picture);
    const Uprighting t = upright(draw.picture);
    const cairo_matrix_t turn{t.a, t.b, t.c, t.d, t.e, t.f};
    cairo_scale(context, width / pixels.across, height / pixels.down);
    cairo_transform(context, &turn);
    paint_image(context, image);
}

// A drawing in colours becomes pixels where it must be grey; one in black, white and greys stays as it is.
void Player::draw_drawing(cairo_t* context, const DrawPicture& draw, double width, double height) {
    const std::string& file = draw.picture.file;
    if (draw.grey && drawings_.is_coloured(file, draw.picture.shape)) {
        cairo_surface_t* image = drawings_.in_grey(file, width, height);
        cairo_scale(context, width / cairo_image_surface_get_width(image),
                    height / cairo_image_surface_get_height(image));
        paint_image(context, image);
    } else {
        drawings_.draw(context, file, width, height);
    }
}

void Player::paint_image(cairo_t* context, cairo_surface_t* image) {
    cairo_set_source_surface(context, image, 0, 0);
    // Edge pixels count to the edge instead of fading out beyond it.
    cairo_pattern_set_extend(cairo_get_source(context), CAIRO_EXTEND_PAD);
    cairo_rectangle(context, 0, 0, cairo_image_surface_get_width(image), cairo_image_surface_get_height(image));
    cairo_fill(context);
}

void Player::draw_item(cairo_t* context, const Group& group) {
    const Transform& t = group.transform;
    const cairo_matrix_t matrix{t.a, t.b, t.c, t.d, points(t.dx), points(t.dy)};
    cairo_save(context);
    cairo_transform(context, &matrix);
    if (group.clip) {
        trace(context, *group.clip, points);
        cairo_clip(context);
    }
    draw(context, *group.list);
    cairo_restore(context);
}

// Nothing of these is seen.
void Player::draw_item(cairo_t* /*context*/, const BeginTag& /*begin*/) const {}
void Player::draw_item(cairo_t* /*context*/, const EndTag& /*end*/) const {}

} // namespace dyeleaf
