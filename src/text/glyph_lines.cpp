#include "text/glyph_lines.h"

#include <fontconfig/fontconfig.h>
#include <pango/pangofc-font.h>

#include <algorithm>
#include <cstdlib>
#include <span>
#include <utility>

namespace dyeleaf {

namespace {

FontFace face_of(PangoFont* font) {
    FcPattern* pattern = pango_fc_font_get_pattern(PANGO_FC_FONT(font));
    FcChar8* file = nullptr;
    int index = 0;
    if (FcPatternGetString(pattern, FC_FILE, 0, &file) != FcResultMatch) return {};
    FcPatternGetInteger(pattern, FC_INDEX, 0, &index);
    return {reinterpret_cast<const char*>(file), index};
}

// Where the blanks at the line's end begin, in bytes of the layout's text.
int end_of_words(const PangoLayoutLine& line, const char* text) {
    const char* start = text + line.start_index;
    const char* end = start + line.length;
    while (end > start) {
        const char* last = g_utf8_prev_char(end);
        if (!g_unichar_isspace(g_utf8_get_char(last))) break;
        end = last;
    }
    return static_cast<int>(end - text);
}

struct Slot {
    int first = 0, count = 0; // glyphs, from the left
};

Slot slot_of(const PangoGlyphItemIter& cluster) {
    const int glyphs = std::abs(cluster.end_glyph - cluster.start_glyph);
    // Clusters of a right-to-left run end left of where they start.
    const bool leftward = cluster.end_glyph < cluster.start_glyph;
    return {leftward ? cluster.end_glyph + 1 : cluster.start_glyph, glyphs};
}

// One Pango item without what leaves no mark of its own: joiners, and blanks from byte `end` on.
ShapedRun shaped_run(PangoGlyphItem* item, const char* text, int end, double units) {
    const std::span<const PangoGlyphInfo> infos{item->glyphs->glyphs,
                                                static_cast<std::size_t>(item->glyphs->num_glyphs)};
    const auto drawn = [](const PangoGlyphInfo& info) {
        return info.glyph != PANGO_GLYPH_EMPTY && (info.glyph & PANGO_GLYPH_UNKNOWN_FLAG) == 0;
    };
    ShapedRun run;
    run.face = face_of(item->item->analysis.font);
    run.right_to_left = item->item->analysis.level % 2 != 0;

    std::vector<bool> kept(infos.size(), false);
    PangoGlyphItemIter cluster{};
    for (bool more = pango_glyph_item_iter_init_start(&cluster, item, text) != 0; more;
         more = pango_glyph_item_iter_next_cluster(&cluster) != 0) {
        const Slot slot = slot_of(cluster);
        int glyphs = 0;
        for (int i = slot.first; i < slot.first + slot.count; ++i) {
            const auto at = static_cast<std::size_t>(i);
            kept[at] = cluster.start_index < end && drawn(infos[at]);
            if (kept[at]) ++glyphs;
        }
        if (glyphs == 0) continue;
        run.text.append(text + cluster.start_index, text + cluster.end_index);
        run.clusters.push_back({cluster.end_index - cluster.start_index, glyphs});
    }
    int pen = 0;
    for (std::size_t i = 0; i < infos.size(); ++i) {
        if (!kept[i]) continue;
        const PangoGlyphGeometry& place = infos[i].geometry;
        run.glyphs.push_back({infos[i].glyph, (pen + place.x_offset) / units, place.y_offset / units});
        pen += place.width;
    }
    run.width = pen / units;
    return run;
}

} // namespace

TextLine glyph_line(PangoLayoutLine* line, double units) {
    const char* text = pango_layout_get_text(line->layout);
    const int end = end_of_words(*line, text);
    TextLine result;
    for (const GSList* node = line->runs; node != nullptr; node = node->next) {
        ShapedRun run = shaped_run(static_cast<PangoGlyphItem*>(node->data), text, end, units);
        if (run.glyphs.empty()) continue;
        const double x = std::exchange(result.width, result.width + run.width);
        result.runs.push_back({std::make_shared<const ShapedRun>(std::move(run)), x});
    }
    return result;
}

std::vector<std::string> missing_characters(PangoLayout* layout) {
    std::vector<std::string> missing;
    for (const GSList* line = pango_layout_get_lines_readonly(layout); line != nullptr; line = line->next) {
        for (const GSList* node = static_cast<PangoLayoutLine*>(line->data)->runs; node != nullptr; node = node->next) {
            const PangoGlyphString* glyphs = static_cast<PangoGlyphItem*>(node->data)->glyphs;
            for (int i = 0; i < glyphs->num_glyphs; ++i) {
                const PangoGlyph glyph = glyphs->glyphs[i].glyph;
                if (glyph == PANGO_GLYPH_EMPTY || (glyph & PANGO_GLYPH_UNKNOWN_FLAG) == 0) continue;
                char bytes[6];
                const int length = g_unichar_to_utf8(glyph & ~PANGO_GLYPH_UNKNOWN_FLAG, bytes);
                std::string character(bytes, static_cast<std::size_t>(length));
                if (std::ranges::find(missing, character) == missing.end()) missing.push_back(std::move(character));
            }
        }
    }
    return missing;
}

} // namespace dyeleaf
