// A font file as a PDF takes it: measured, and cut down to the glyphs that are used. The only room that includes
// HarfBuzz.
#pragma once

#include "display/display_list.h"

#include <cstdint>
#include <map>
#include <memory>
#include <set>
#include <string>

struct hb_face_t;
struct hb_font_t;

namespace dyeleaf {

// Lengths in thousandths of the em, as PDF fonts have them.
struct FontMeasures {
    double left = 0, bottom = 0, right = 0, top = 0; // around every glyph
    double ascent = 0, descent = 0, cap_height = 0;
    double italic_angle = 0; // degrees, leftward
};

struct FontSubset {
    std::string bytes;                              // the CFF table alone, or a TrueType file
    std::map<std::uint32_t, std::uint32_t> numbers; // of the glyphs: as in the whole font, and in here
};

class FontProgram {
  public:
    // A file that is no font is a PaintError that names it.
    explicit FontProgram(const FontFace& face);

    [[nodiscard]] double advance(std::uint32_t glyph) const; // in thousandths of the em
    [[nodiscard]] FontMeasures measures() const;
    [[nodiscard]] std::string postscript_name() const;
    // Whether its outlines are of the kind that OpenType calls CFF; else TrueType's.
    [[nodiscard]] bool is_cff() const;
    // These glyphs, those that they are made of, and glyph 0.
    [[nodiscard]] FontSubset subset(const std::set<std::uint32_t>& glyphs) const;

  private:
    struct Drop {
        void operator()(hb_face_t* face) const;
        void operator()(hb_font_t* font) const;
    };
    std::string file_;
    std::unique_ptr<hb_face_t, Drop> face_;
    std::unique_ptr<hb_font_t, Drop> font_;
    double thousandth_ = 1; // of the em, in the font's units
};

} // namespace dyeleaf
