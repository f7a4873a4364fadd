// The fonts of a document (ISO 32000-1, 9.7). Texts have two bytes a glyph, its number in the font file; a map leads
// from there to its number in what is embedded, which is known only when all pages are written.
#pragma once

#include "pdf/font_program.h"
#include "pdf/object_file.h"

#include <cstdint>
#include <deque>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <utility>

namespace dyeleaf {

class DocumentFont {
  public:
    DocumentFont(const FontFace& face, int object) : program_(face), object_(object) {}

    [[nodiscard]] int object() const { return object_; }
    // In thousandths of the em, to a tenth, as the document states it.
    double width(std::uint32_t glyph);
    // The glyph is used for this text; false where it stands for another text already, so that this one must be told
    // beside it.
    bool use(std::uint32_t glyph, std::string_view text);
    void use(std::uint32_t glyph) { used_.insert(glyph); }

    void write(ObjectFile& file) const;

  private:
    [[nodiscard]] std::string widths(const FontSubset& subset) const;
    [[nodiscard]] std::string text_map() const;

    FontProgram program_;
    int object_;
    std::set<std::uint32_t> used_;
    std::map<std::uint32_t, std::string> texts_; // UTF-8
    std::map<std::uint32_t, double> widths_;
};

class Fonts {
  public:
    DocumentFont& font(const FontFace& face, ObjectFile& file);
    // Once all is written that uses them.
    void write(ObjectFile& file) const;

  private:
    std::deque<std::pair<FontFace, DocumentFont>> fonts_; // a handful, in the order of their first use
};

// The operators that show a run from where the text matrix is, `size` points to the em.
void append_run(std::string& content, const ShapedRun& run, double size, DocumentFont& font);

} // namespace dyeleaf
