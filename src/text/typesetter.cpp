#include "text/typesetter.h"

#include "text/font_set.h"
#include "text/glyph_lines.h"
#include "text/plain_text.h"

#include <hb-ot.h>
#include <pango/pangofc-fontmap.h>
#include <pango/pangoft2.h>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <map>
#include <tuple>
#include <utility>

namespace dyeleaf {

namespace {

struct GObjectDeleter {
    void operator()(void* object) const { g_object_unref(object); }
};
struct DescriptionDeleter {
    void operator()(PangoFontDescription* description) const { pango_font_description_free(description); }
};
struct AttributesDeleter {
    void operator()(PangoAttrList* attributes) const { pango_attr_list_unref(attributes); }
};
using FontMap = std::unique_ptr<PangoFontMap, GObjectDeleter>;
using Context = std::unique_ptr<PangoContext, GObjectDeleter>;
using Layout = std::unique_ptr<PangoLayout, GObjectDeleter>;
using LoadedFont = std::unique_ptr<PangoFont, GObjectDeleter>;
using Description = std::unique_ptr<PangoFontDescription, DescriptionDeleter>;
using Attributes = std::unique_ptr<PangoAttrList, AttributesDeleter>;

// Everything is shaped at 100 pixels to the em: fine enough to serve every size, and a line may grow 20,000 ems long
// before Pango's whole numbers overflow.
constexpr double units_per_em = 100.0 * PANGO_SCALE;

// Texts that repeat in a run of labels, and those of one label while its sizes are sought, are far fewer.
constexpr std::size_t most_kept = 1'000;

// Hinting would tie advances to pixels.
void unhinted(FcPattern* pattern, void* /*data*/) {
    for (const char* property : {FC_HINTING, FC_AUTOHINT, FC_EMBEDDED_BITMAP}) {
        FcPatternDel(pattern, property);
        FcPatternAddBool(pattern, property, FcFalse);
    }
}

FontMap font_map(FcConfig* config) {
    // Pango initialises fontconfig itself, which would read the machine's settings if none were current.
    FcConfigSetCurrent(config);
    FontMap map{pango_ft2_font_map_new()};
    pango_ft2_font_map_set_resolution(PANGO_FT2_FONT_MAP(map.get()), 72, 72);
    pango_fc_font_map_set_config(PANGO_FC_FONT_MAP(map.get()), config);
    pango_fc_font_map_set_default_substitute(PANGO_FC_FONT_MAP(map.get()), unhinted, nullptr, nullptr);
    return map;
}

Context context_of(PangoFontMap* map) {
    Context context{pango_font_map_create_context(map)};
    pango_context_set_round_glyph_positions(context.get(), FALSE);
    // No particular language: a named one makes Pango ask the locale which others the reader knows.
    pango_context_set_language(context.get(), pango_language_from_string("und"));
    pango_context_set_base_dir(context.get(), PANGO_DIRECTION_WEAK_LTR);
    return context;
}

Description description_of(const Font& font) {
    Description description{pango_font_description_new()};
    pango_font_description_set_family(description.get(), font.family.c_str());
    pango_font_description_set_weight(description.get(), static_cast<PangoWeight>(font.weight));
    pango_font_description_set_style(description.get(), font.italic ? PANGO_STYLE_ITALIC : PANGO_STYLE_NORMAL);
    pango_font_description_set_absolute_size(description.get(), units_per_em);
    return description;
}

// Figures stand on the line. Contextual alternates are off: they print 3x9 as 3×9, and a code must stay as recorded. A
// hyphen appears only where the text has a soft one, for the same reason.
Attributes attributes_of(const std::string& text, const Font& font) {
    Attributes attributes{pango_attr_list_new()};
    const char* features = font.tabular_figures ? "lnum=1, calt=0, tnum=1" : "lnum=1, calt=0";
    pango_attr_list_insert(attributes.get(), pango_attr_font_features_new(features));
    const auto tracking = static_cast<int>(std::lround(font.tracking * units_per_em));
    if (tracking != 0) pango_attr_list_insert(attributes.get(), pango_attr_letter_spacing_new(tracking));
    const bool soft_hyphens = text.find("\u00AD") != std::string::npos;
    pango_attr_list_insert(attributes.get(), pango_attr_insert_hyphens_new(soft_hyphens));
    return attributes;
}

// Rounded up by one unit, so that text set at the very width that was measured for it does not break anew.
int in_units(double ems) {
    constexpr double most = G_MAXINT / 2.0;
    return static_cast<int>(std::clamp(std::ceil(ems * units_per_em) + 1, 0.0, most));
}

bool fits_in(double needed, double available) {
    constexpr double tolerance = 2 / units_per_em;
    return needed <= available + tolerance;
}

} // namespace

struct Typesetter::Engine {
    using Key = std::tuple<std::string, Font, std::optional<double>, bool>;
    using Result = std::shared_ptr<const Paragraph>;

    FontSet fonts;
    FontMap map;
    Context context;
    Layout layout;
    std::map<Key, Result> kept;
    std::map<Font, FontMetrics> kept_metrics;

    Engine(const std::vector<std::filesystem::path>& folders, Diagnostics& diagnostics)
        : fonts(load_fonts(folders, diagnostics)) {
        if (fonts.families.empty()) return;
        map = font_map(fonts.config.get());
        context = context_of(map.get());
        layout.reset(pango_layout_new(context.get()));
    }

    template <class Make> Result kept_or_made(Key key, Make make) {
        if (const auto known = kept.find(key); known != kept.end()) return known->second;
        if (kept.size() >= most_kept) kept.clear();
        return kept.emplace(std::move(key), std::make_shared<const Paragraph>(make())).first->second;
    }

    Result set(const std::string& text, const Font& font, std::optional<double> width, bool balanced) {
        // Most texts fit, and one that fits is the same at every width.
        Result whole = kept_or_made({text, font, std::nullopt, false}, [&] { return unbroken(text, font); });
        if (!width || fits_in(whole->width, *width)) return whole;
        return kept_or_made({text, font, width, balanced},
                            [&] { return broken(text, *whole, font, *width, balanced); });
    }

    // One line a paragraph of the text.
    Paragraph unbroken(const std::string& text, const Font& font) {
        std::string rest = plain_text(text);
        start(rest, font);
        pango_layout_set_width(layout.get(), -1);
        std::vector<std::string> missing;
        // A character without a glyph would be drawn as a box: the text is set without it.
        for (auto more = missing_characters(layout.get()); !more.empty(); more = missing_characters(layout.get())) {
            for (const std::string& character : more)
                rest = without(rest, character);
            std::ranges::move(more, std::back_inserter(missing));
            rest = plain_text(rest);
            start(rest, font);
        }
        Paragraph paragraph = rest.empty() ? Paragraph{} : taken();
        paragraph.missing = std::move(missing);
        return paragraph;
    }

    Paragraph broken(const std::string& text, const Paragraph& whole, const Font& font, double width, bool balanced) {
        std::string rest = plain_text(text);
        for (const std::string& character : whole.missing)
            rest = without(rest, character);
        start(plain_text(rest), font);
        Paragraph paragraph = at_width(width, PANGO_WRAP_WORD);
        if (!fits_in(paragraph.width, width)) {
            paragraph = at_width(width, PANGO_WRAP_WORD_CHAR);
            paragraph.words_broken = true;
        } else if (balanced) {
            paragraph = evened_out(std::move(paragraph), width);
        }
        paragraph.missing = whole.missing;
        return paragraph;
    }

    // The narrowest width that needs no line more. Below half the width there is none: a line and the first word of the
    // next are together wider than the width.
    Paragraph evened_out(Paragraph best, double width) {
        constexpr double close_enough = 0.02;
        double too_narrow = width / 2;
        while (best.width - too_narrow > close_enough) {
            const double middle = (too_narrow + best.width) / 2;
            Paragraph tried = at_width(middle, PANGO_WRAP_WORD);
            if (tried.lines.size() <= best.lines.size() && fits_in(tried.width, middle)) {
                best = std::move(tried);
            } else {
                too_narrow = middle;
            }
        }
        return best;
    }

    void start(const std::string& text, const Font& font) {
        pango_layout_set_font_description(layout.get(), description_of(font).get());
        pango_layout_set_attributes(layout.get(), attributes_of(text, font).get());
        pango_layout_set_text(layout.get(), text.data(), static_cast<int>(text.size()));
    }

    Paragraph at_width(double width, PangoWrapMode wrap) {
        pango_layout_set_wrap(layout.get(), wrap);
        pango_layout_set_width(layout.get(), in_units(width));
        return taken();
    }

    Paragraph taken() {
        Paragraph paragraph;
        for (const GSList* line = pango_layout_get_lines_readonly(layout.get()); line != nullptr; line = line->next) {
            paragraph.lines.push_back(glyph_line(static_cast<PangoLayoutLine*>(line->data), units_per_em));
            paragraph.width = std::max(paragraph.width, paragraph.lines.back().width);
        }
        return paragraph;
    }

    FontMetrics metrics(const Font& font) {
        if (const auto known = kept_metrics.find(font); known != kept_metrics.end()) return known->second;
        const LoadedFont loaded{pango_context_load_font(context.get(), description_of(font).get())};
        hb_font_t* face = pango_font_get_hb_font(loaded.get());
        int x_scale = 0;
        int y_scale = 0;
        hb_font_get_scale(face, &x_scale, &y_scale);
        const auto value = [&](hb_ot_metrics_tag_t tag, double fallback) {
            hb_position_t position = 0;
            const bool stated = hb_ot_metrics_get_position(face, tag, &position) != 0 && position != 0;
            return stated ? static_cast<double>(position) / y_scale : fallback;
        };
        const FontMetrics metrics{value(HB_OT_METRICS_TAG_HORIZONTAL_ASCENDER, 0.8),
                                  -value(HB_OT_METRICS_TAG_HORIZONTAL_DESCENDER, -0.2),
                                  value(HB_OT_METRICS_TAG_CAP_HEIGHT, 0.7)};
        kept_metrics.emplace(font, metrics);
        return metrics;
    }
};

Typesetter::Typesetter(const std::vector<std::filesystem::path>& font_folders, Diagnostics& diagnostics)
    : engine_(std::make_unique<Engine>(font_folders, diagnostics)) {}
Typesetter::~Typesetter() = default;
Typesetter::Typesetter(Typesetter&&) noexcept = default;
Typesetter& Typesetter::operator=(Typesetter&&) noexcept = default;

const std::vector<std::string>& Typesetter::families() const {
    return engine_->fonts.families;
}

FontMetrics Typesetter::metrics(const Font& font) const {
    if (!engine_->layout) return {0.8, 0.2, 0.7};
    return engine_->metrics(font);
}

std::shared_ptr<const Paragraph> Typesetter::set(const std::string& text, const Font& font, std::optional<double> width,
                                                 bool balanced) const {
    if (!engine_->layout) return std::make_shared<const Paragraph>();
    return engine_->set(text, font, width, balanced);
}

} // namespace dyeleaf
