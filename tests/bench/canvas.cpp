#include "bench/canvas.h"

#include <cairo-ft.h>
#include <cairo-pdf.h>
#include <fontconfig/fontconfig.h>
#include <pango/pangofc-font.h>
#include <pango/pangofc-fontmap.h>
#include <pango/pangoft2.h>

#include <charconv>
#include <filesystem>
#include <stdexcept>
#include <utility>

#include FT_FREETYPE_H

namespace bench {

namespace {

// The size of the em at which everything is shaped.
constexpr double em = 100.0 * PANGO_SCALE;

void unhinted(FcPattern* pattern, void* /*data*/) {
    FcPatternDel(pattern, FC_HINTING);
    FcPatternAddBool(pattern, FC_HINTING, FcFalse);
}

std::string file_of(PangoFont* font) {
    FcChar8* file = nullptr;
    FcPatternGetString(pango_fc_font_get_pattern(PANGO_FC_FONT(font)), FC_FILE, 0, &file);
    return file == nullptr ? std::string{} : reinterpret_cast<const char*>(file);
}

void check(cairo_status_t status) {
    if (status != CAIRO_STATUS_SUCCESS) throw std::runtime_error(cairo_status_to_string(status));
}

} // namespace

struct Shaper::Engine {
    FcConfig* config = FcConfigCreate();
    PangoFontMap* map = nullptr;
    PangoContext* context = nullptr;
    PangoLayout* layout = nullptr;
    FT_Library library = nullptr;
    std::map<std::string, cairo_font_face_t*> faces;

    cairo_font_face_t* face(const std::string& file) {
        const auto [found, is_new] = faces.try_emplace(file, nullptr);
        if (is_new) {
            FT_Face opened = nullptr;
            if (FT_New_Face(library, file.c_str(), 0, &opened) != 0) throw std::runtime_error("no font in " + file);
            found->second = cairo_ft_font_face_create_for_ft_face(opened, FT_LOAD_NO_HINTING | FT_LOAD_NO_BITMAP);
        }
        return found->second;
    }
};

Shaper::Shaper(const std::string& fonts) : engine_(std::make_unique<Engine>()) {
    Engine& engine = *engine_;
    // File by file: of a folder fontconfig would want to keep a cache, and complain that it has no place for one.
    for (const auto& entry : std::filesystem::directory_iterator{fonts}) {
        const std::string name = entry.path().extension().string();
        if (name == ".otf" || name == ".ttf")
            FcConfigAppFontAddFile(engine.config, reinterpret_cast<const FcChar8*>(entry.path().c_str()));
    }
    FcConfigSetCurrent(engine.config);
    engine.map = pango_ft2_font_map_new();
    pango_ft2_font_map_set_resolution(PANGO_FT2_FONT_MAP(engine.map), 72, 72);
    pango_fc_font_map_set_config(PANGO_FC_FONT_MAP(engine.map), engine.config);
    pango_fc_font_map_set_default_substitute(PANGO_FC_FONT_MAP(engine.map), unhinted, nullptr, nullptr);
    engine.context = pango_font_map_create_context(engine.map);
    pango_context_set_round_glyph_positions(engine.context, FALSE);
    pango_context_set_language(engine.context, pango_language_from_string("und"));
    engine.layout = pango_layout_new(engine.context);
    if (FT_Init_FreeType(&engine.library) != 0) throw std::runtime_error("FreeType does not start");
}

Shaper::~Shaper() = default; // the process ends with it

Shaped Shaper::shape(const std::string& text, const Style& style) {
    PangoLayout* layout = engine_->layout;
    PangoFontDescription* description = pango_font_description_new();
    pango_font_description_set_family_static(description, style.family);
    pango_font_description_set_weight(description, static_cast<PangoWeight>(style.weight));
    pango_font_description_set_style(description, style.italic ? PANGO_STYLE_ITALIC : PANGO_STYLE_NORMAL);
    pango_font_description_set_absolute_size(description, em);
    PangoAttrList* attributes = pango_attr_list_new();
    pango_attr_list_insert(attributes,
                           pango_attr_font_features_new(style.tabular ? "lnum=1, calt=0, tnum=1" : "lnum=1, calt=0"));
    pango_layout_set_font_description(layout, description);
    pango_layout_set_attributes(layout, attributes);
    pango_layout_set_text(layout, text.data(), static_cast<int>(text.size()));

    Shaped shaped;
    const PangoLayoutLine* line = pango_layout_get_line_readonly(layout, 0);
    for (const GSList* node = line->runs; node != nullptr; node = node->next) {
        auto* item = static_cast<PangoGlyphItem*>(node->data);
        Run run{engine_->face(file_of(item->item->analysis.font)),
                text.substr(static_cast<std::size_t>(item->item->offset), static_cast<std::size_t>(item->item->length)),
                {},
                {}};
        for (int i = 0; i < item->glyphs->num_glyphs; ++i) {
            const PangoGlyphInfo& info = item->glyphs->glyphs[i];
            run.glyphs.push_back({info.glyph, shaped.width + info.geometry.x_offset / em, info.geometry.y_offset / em});
            shaped.width += info.geometry.width / em;
        }
        PangoGlyphItemIter cluster{};
        for (gboolean more = pango_glyph_item_iter_init_start(&cluster, item, text.c_str()); more != FALSE;
             more = pango_glyph_item_iter_next_cluster(&cluster))
            run.clusters.push_back({cluster.end_index - cluster.start_index, cluster.end_glyph - cluster.start_glyph});
        shaped.runs.push_back(std::move(run));
    }
    pango_attr_list_unref(attributes);
    pango_font_description_free(description);
    return shaped;
}

Colour colour_of(const std::string& hex) {
    unsigned value = 0;
    std::from_chars(hex.data() + 1, hex.data() + hex.size(), value, 16);
    return {(value >> 16) / 255.0, (value >> 8 & 255) / 255.0, (value & 255) / 255.0};
}

Canvas::Canvas(const std::string& file, bool tagged)
    : surface_(cairo_pdf_surface_create(file.c_str(), 1, 1)), context_(cairo_create(surface_)), tagged_(tagged) {
    cairo_pdf_surface_restrict_to_version(surface_, CAIRO_PDF_VERSION_1_5);
    cairo_set_line_cap(context_, CAIRO_LINE_CAP_BUTT);
}

Canvas::~Canvas() {
    cairo_destroy(context_);
    cairo_surface_destroy(surface_);
}

void Canvas::page(double width, double height) {
    cairo_pdf_surface_set_size(surface_, width, height);
}

void Canvas::end_page() {
    cairo_show_page(context_);
    check(cairo_status(context_)); // a text with the wrong clusters would empty all later pages
}

void Canvas::finish() {
    cairo_surface_finish(surface_);
    check(cairo_status(context_));
    check(cairo_surface_status(surface_));
}

void Canvas::colour(Colour colour) {
    if (colour.red == current_.red && colour.green == current_.green && colour.blue == current_.blue) return;
    cairo_set_source_rgb(context_, colour.red, colour.green, colour.blue);
    current_ = colour;
}

void Canvas::text(const Shaped& shaped, double x, double y, double size, Colour ink) {
    colour(ink);
    for (const Run& run : shaped.runs) {
        const auto [font, is_new] = fonts_.try_emplace({run.face, size}, nullptr);
        if (is_new) {
            cairo_matrix_t scaling{};
            cairo_matrix_t unit{};
            cairo_matrix_init_scale(&scaling, size, size);
            cairo_matrix_init_identity(&unit);
            cairo_font_options_t* options = cairo_font_options_create();
            cairo_font_options_set_hint_style(options, CAIRO_HINT_STYLE_NONE);
            cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
            font->second = cairo_scaled_font_create(run.face, &scaling, &unit, options);
            cairo_font_options_destroy(options);
        }
        cairo_set_scaled_font(context_, font->second);
        glyphs_.clear();
        for (const cairo_glyph_t& glyph : run.glyphs)
            glyphs_.push_back({glyph.index, x + glyph.x * size, y + glyph.y * size});
        cairo_show_text_glyphs(context_, run.text.data(), static_cast<int>(run.text.size()), glyphs_.data(),
                               static_cast<int>(glyphs_.size()), run.clusters.data(),
                               static_cast<int>(run.clusters.size()), cairo_text_cluster_flags_t{});
    }
}

void Canvas::begin(const char* role) {
    if (tagged_) cairo_tag_begin(context_, role, nullptr);
}

void Canvas::end(const char* role) {
    if (tagged_) cairo_tag_end(context_, role);
}

} // namespace bench
