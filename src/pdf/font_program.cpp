#include "pdf/font_program.h"

#include "base/words.h"
#include "paint/painter.h"

#include <hb-ot.h>
#include <hb-subset.h>

#include <algorithm>
#include <array>

namespace dyeleaf {

namespace {

struct DropBlob {
    void operator()(hb_blob_t* blob) const { hb_blob_destroy(blob); }
};
using Blob = std::unique_ptr<hb_blob_t, DropBlob>;
struct DropInput {
    void operator()(hb_subset_input_t* input) const { hb_subset_input_destroy(input); }
};

struct DropPlan {
    void operator()(hb_subset_plan_t* plan) const { hb_subset_plan_destroy(plan); }
};

constexpr hb_tag_t cff_table = HB_TAG('C', 'F', 'F', ' ');

Blob table_of(hb_face_t* face, hb_tag_t tag) {
    return Blob{hb_face_reference_table(face, tag)};
}

std::string bytes_of(hb_blob_t* blob) {
    unsigned length = 0;
    const char* data = hb_blob_get_data(blob, &length);
    return {data, length};
}

// Two bytes with a sign, the high one first.
int number_at(const std::string& table, std::size_t place) {
    if (place + 2 > table.size()) return 0;
    const int value = static_cast<unsigned char>(table[place]) << 8 | static_cast<unsigned char>(table[place + 1]);
    return value < 0x8000 ? value : value - 0x10000;
}

} // namespace

void FontProgram::Drop::operator()(hb_face_t* face) const {
    hb_face_destroy(face);
}
void FontProgram::Drop::operator()(hb_font_t* font) const {
    hb_font_destroy(font);
}

FontProgram::FontProgram(const FontFace& face) : file_(face.file) {
    const Blob blob{hb_blob_create_from_file_or_fail(face.file.c_str())};
    if (blob) face_.reset(hb_face_create(blob.get(), static_cast<unsigned>(face.index)));
    if (!blob || hb_face_get_glyph_count(face_.get()) == 0)
        throw PaintError("the font " + in_quotes(face.file) + " cannot be read");
    font_.reset(hb_font_create(face_.get()));
    thousandth_ = hb_face_get_upem(face_.get()) / 1000.0;
}

double FontProgram::advance(std::uint32_t glyph) const {
    return hb_font_get_glyph_h_advance(font_.get(), glyph) / thousandth_;
}

FontMeasures FontProgram::measures() const {
    const std::string head = bytes_of(table_of(face_.get(), HB_TAG('h', 'e', 'a', 'd')).get());
    const std::string post = bytes_of(table_of(face_.get(), HB_TAG('p', 'o', 's', 't')).get());
    const auto value = [&](hb_ot_metrics_tag_t tag, double fallback) {
        hb_position_t position = 0;
        return hb_ot_metrics_get_position(font_.get(), tag, &position) != 0 ? position / thousandth_ : fallback;
    };
    // OpenType 1.9: xMin, yMin, xMax, yMax of “head”, italicAngle of “post”.
    return {number_at(head, 36) / thousandth_,
            number_at(head, 38) / thousandth_,
            number_at(head, 40) / thousandth_,
            number_at(head, 42) / thousandth_,
            value(HB_OT_METRICS_TAG_HORIZONTAL_ASCENDER, 800),
            value(HB_OT_METRICS_TAG_HORIZONTAL_DESCENDER, -200),
            value(HB_OT_METRICS_TAG_CAP_HEIGHT, 700),
            static_cast<double>(number_at(post, 4))};
}

std::string FontProgram::postscript_name() const {
    std::array<char, 128> name{};
    auto length = static_cast<unsigned>(name.size());
    hb_ot_name_get_utf8(face_.get(), HB_OT_NAME_ID_POSTSCRIPT_NAME, HB_LANGUAGE_INVALID, &length, name.data());
    std::string kept;
    for (const char c : std::string{name.data(), std::min<std::size_t>(length, name.size() - 1)}) {
        const bool plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-';
        if (plain) kept += c;
    }
    return kept.empty() ? "Font" : kept;
}

bool FontProgram::is_cff() const {
    return hb_blob_get_length(table_of(face_.get(), cff_table).get()) > 0;
}

FontSubset FontProgram::subset(const std::set<std::uint32_t>& glyphs) const {
    const auto made = [&](const auto& part) {
        if (!part) throw PaintError("the font " + in_quotes(file_) + " cannot be cut down to what is used of it");
    };
    const std::unique_ptr<hb_subset_input_t, DropInput> input{hb_subset_input_create_or_fail()};
    made(input);
    hb_subset_input_set_flags(input.get(), HB_SUBSET_FLAGS_NO_HINTING);
    for (const std::uint32_t glyph : glyphs)
        hb_set_add(hb_subset_input_glyph_set(input.get()), glyph);
    // A PDF names glyphs by their numbers and places them itself.
    for (const char* tag : {"GSUB", "GPOS", "GDEF", "BASE", "kern", "cmap", "name", "post", "OS/2", "STAT"})
        hb_set_add(hb_subset_input_set(input.get(), HB_SUBSET_SETS_DROP_TABLE_TAG), hb_tag_from_string(tag, -1));
    const std::unique_ptr<hb_subset_plan_t, DropPlan> plan{hb_subset_plan_create_or_fail(face_.get(), input.get())};
    made(plan);
    const std::unique_ptr<hb_face_t, Drop> kept{hb_subset_plan_execute_or_fail(plan.get())};
    made(kept);
    FontSubset subset;
    const Blob blob{is_cff() ? hb_face_reference_table(kept.get(), cff_table) : hb_face_reference_blob(kept.get())};
    subset.bytes = bytes_of(blob.get());
    for (const std::uint32_t glyph : glyphs)
        subset.numbers[glyph] = hb_map_get(hb_subset_plan_old_to_new_glyph_mapping(plan.get()), glyph);
    return subset;
}

} // namespace dyeleaf
