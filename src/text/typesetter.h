// Words become glyph runs. The only room that includes Pango and fontconfig; it reads the fonts it is given and none
// of the machine's.
#pragma once

#include "base/diagnostic.h"
#include "display/display_list.h"

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

struct Font {
    std::string family;
    int weight = 400; // 100 to 900, as in CSS
    bool italic = false;
    double tracking = 0;          // added between letters, in ems
    bool tabular_figures = false; // every figure equally wide
    friend bool operator==(const Font&, const Font&) = default;
    friend auto operator<=>(const Font&, const Font&) = default;
};

// In ems, down from the baseline for `descent`, up for the others.
struct FontMetrics {
    double ascent = 0, descent = 0, cap_height = 0;
};

struct PlacedRun {
    std::shared_ptr<const ShapedRun> run;
    double x = 0; // from the line's left end, in ems
};
struct TextLine {
    std::vector<PlacedRun> runs;
    double width = 0; // in ems, trailing spaces left out
};
struct Paragraph {
    std::vector<TextLine> lines;
    double width = 0;                 // of the widest line, in ems
    bool words_broken = false;        // a word was wider than the line and was broken inside
    std::vector<std::string> missing; // characters that no font has, each once
};

class Typesetter {
  public:
    // Every *.otf and *.ttf of the folders; a family in a later folder does not hide one in an earlier. Files that are
    // not fonts are warnings; no font at all is an error.
    Typesetter(const std::vector<std::filesystem::path>& font_folders, Diagnostics& diagnostics);
    ~Typesetter();
    Typesetter(Typesetter&&) noexcept;
    Typesetter& operator=(Typesetter&&) noexcept;

    [[nodiscard]] const std::vector<std::string>& families() const;
    [[nodiscard]] FontMetrics metrics(const Font& font) const;

    // The text in lines no wider than `width` ems (no limit: one line a paragraph of the text), broken by Unicode's
    // rules; `\n` starts a new line. `balanced` evens the lines out without adding one. Directional overrides and
    // other invisible controls in `text` are dropped. Results are kept: asking again costs nothing.
    [[nodiscard]] std::shared_ptr<const Paragraph> set(const std::string& text, const Font& font,
                                                       std::optional<double> width, bool balanced) const;

  private:
    struct Engine;
    std::unique_ptr<Engine> engine_;
};

} // namespace dyeleaf
