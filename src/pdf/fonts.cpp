#include "pdf/fonts.h"

#include "paint/painter.h"
#include "pdf/syntax.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <span>
#include <vector>

namespace dyeleaf {

namespace {

std::string number(double value) {
    std::string text;
    append_number(text, value, 1);
    return text;
}

// Six capitals that differ where the glyphs do (9.6.4).
std::string subset_tag(const std::set<std::uint32_t>& glyphs) {
    Digest digest;
    for (const std::uint32_t glyph : glyphs)
        digest.add(std::uint64_t{glyph});
    std::string tag;
    for (std::uint64_t rest = digest.value(); tag.size() < 6; rest /= 26)
        tag += static_cast<char>('A' + rest % 26);
    return tag;
}

// A table of two-byte codes (9.7.5 and 9.10.3).
std::string character_map(const std::string& head, const std::string& kind, const std::vector<std::string>& entries) {
    constexpr std::size_t most_in_block = 100;
    std::string map = "/CIDInit/ProcSet findresource begin\n12 dict begin\nbegincmap\n" + head +
                      "1 begincodespacerange\n<0000><FFFF>\nendcodespacerange\n";
    for (std::size_t first = 0; first < entries.size(); first += most_in_block) {
        const std::size_t past = std::min(first + most_in_block, entries.size());
        map += std::to_string(past - first) + " begin" + kind + "\n";
        for (std::size_t i = first; i < past; ++i)
            map += entries[i];
        map += "end" + kind + "\n";
    }
    return map + "endcmap\nCMapName currentdict/CMap defineresource pop\nend\nend\n";
}

// From numbers in the font file to those in what is embedded of it.
int put_encoding(const FontSubset& subset, ObjectFile& file) {
    const std::string system = "<</Registry(Adobe)/Ordering(Identity)/Supplement 0>>";
    std::vector<std::string> entries;
    for (const auto& [glyph, embedded] : subset.numbers)
        entries.push_back(fmt::format("<{:04X}>{}\n", glyph, embedded));
    return file.put_stream(
        "/Type/CMap/CMapName/Glyphs/CIDSystemInfo" + system,
        character_map("/CIDSystemInfo " + system + "def\n/CMapName/Glyphs def\n/CMapType 1 def\n", "cidchar", entries));
}

// Shows glyphs in strings between which the pen is moved.
class RunWriter {
  public:
    RunWriter(std::string& content, const ShapedRun& run, double size, DocumentFont& font)
        : content_(content), run_(run), size_(size), font_(font) {}

    void write() {
        auto first = run_.glyphs.begin();
        std::size_t byte = run_.right_to_left ? run_.text.size() : 0;
        const auto count = run_.clusters.size();
        for (std::size_t i = 0; i < count; ++i) {
            const Cluster& cluster = run_.clusters[run_.right_to_left ? count - 1 - i : i];
            const auto bytes = static_cast<std::size_t>(cluster.bytes);
            if (run_.right_to_left) byte -= bytes;
            const auto past = first + cluster.glyphs;
            show({first, past}, std::string_view{run_.text}.substr(byte, bytes));
            first = past;
            if (!run_.right_to_left) byte += bytes;
        }
        rise_to(0);
        close();
    }

  private:
    void show(std::span<const Glyph> glyphs, std::string_view text) {
        if (glyphs.size() == 1 && font_.use(glyphs.front().index, text)) return show(glyphs.front());
        close();
        content_ += "/Span <</ActualText<FEFF" + utf16_digits(text) + ">>> BDC\n";
        for (const Glyph& glyph : glyphs) {
            font_.use(glyph.index);
            show(glyph);
        }
        close();
        content_ += "EMC\n";
    }

    void show(const Glyph& glyph) {
        rise_to(-glyph.y * size_);
        const double shift = pen_ - glyph.x * 1000;
        if (std::abs(shift) > unseen) {
            end_string();
            open();
            append_number(content_, std::round(shift), 0);
            pen_ -= std::round(shift);
        }
        open();
        if (!in_string_) content_ += '(';
        in_string_ = true;
        for (const unsigned byte : {glyph.index >> 8U & 0xffU, glyph.index & 0xffU})
            append_byte(static_cast<char>(byte));
        pen_ += font_.width(glyph.index);
    }

    void append_byte(char byte) {
        if (byte == '\r') {
            content_ += "\\r";
            return;
        }
        if (byte == '(' || byte == ')' || byte == '\\') content_ += '\\';
        content_ += byte;
    }

    // Above the line, for marks that stand on letters.
    void rise_to(double height) {
        if (std::abs(height - rise_) < 0.0005) return;
        close();
        append_number(content_, height, 3);
        content_ += " Ts\n";
        rise_ = height;
    }

    void open() {
        if (!open_) content_ += '[';
        open_ = true;
    }
    void end_string() {
        if (in_string_) content_ += ')';
        in_string_ = false;
    }
    void close() {
        end_string();
        if (open_) content_ += "]TJ\n";
        open_ = false;
    }

    static constexpr double unseen = 1.5; // thousandths of the em

    std::string& content_;
    const ShapedRun& run_;
    double size_;
    DocumentFont& font_;
    double pen_ = 0; // in thousandths of the em
    double rise_ = 0;
    bool open_ = false, in_string_ = false;
};

} // namespace

double DocumentFont::width(std::uint32_t glyph) {
    const auto [known, is_new] = widths_.try_emplace(glyph);
    if (is_new) known->second = std::round(program_.advance(glyph) * 10) / 10;
    return known->second;
}

bool DocumentFont::use(std::uint32_t glyph, std::string_view text) {
    use(glyph);
    const auto [known, is_new] = texts_.try_emplace(glyph, text);
    return is_new || known->second == text;
}

// 9.7.4.3: from glyph 0 on, in the subset's numbers.
std::string DocumentFont::widths(const FontSubset& subset) const {
    std::map<std::uint32_t, double> by_number;
    for (const auto& [glyph, embedded] : subset.numbers)
        by_number[embedded] = widths_.at(glyph);
    std::string text = "[";
    std::uint32_t next = 0;
    for (const auto& [glyph, width] : by_number) {
        const bool follows = text.size() > 1 && glyph == next;
        if (!follows) text += (text.size() > 1 ? "]" : "") + std::to_string(glyph) + "[";
        text += (follows ? " " : "") + number(width);
        next = glyph + 1;
    }
    return text + (text.size() > 1 ? "]]" : "]");
}

std::string DocumentFont::text_map() const {
    std::vector<std::string> entries;
    for (const auto& [glyph, text] : texts_)
        entries.push_back(fmt::format("<{:04X}><{}>\n", glyph, utf16_digits(text)));
    return character_map("/CIDSystemInfo<</Registry(Adobe)/Ordering(UCS)/Supplement 0>>def\n"
                         "/CMapName/Adobe-Identity-UCS def\n/CMapType 2 def\n",
                         "bfchar", entries);
}

void DocumentFont::write(ObjectFile& file) const {
    const std::string name = "/" + subset_tag(used_) + "+" + program_.postscript_name();
    const bool cff = program_.is_cff();
    const FontSubset subset = program_.subset(used_);
    const int embedded = file.put_stream(
        cff ? "/Subtype/CIDFontType0C" : "/Length1 " + std::to_string(subset.bytes.size()), subset.bytes);
    const FontMeasures m = program_.measures();
    constexpr int symbolic = 4; // 9.8.2: not one of the Latin character sets that PDF names
    const int descriptor = file.put(fmt::format(
        "<</Type/FontDescriptor/FontName{}/Flags {}/FontBBox[{} {} {} {}]/ItalicAngle {}/Ascent {}/Descent {}"
        "/CapHeight {}/StemV 80/{} {}>>",
        name, symbolic, number(m.left), number(m.bottom), number(m.right), number(m.top), number(m.italic_angle),
        number(m.ascent), number(m.descent), number(m.cap_height), cff ? "FontFile3" : "FontFile2",
        reference(embedded)));
    const int glyphs = file.put(fmt::format(
        "<</Type/Font/Subtype{}/BaseFont{}/CIDSystemInfo<</Registry(Adobe)/Ordering(Identity)/Supplement 0>>"
        "/FontDescriptor {}/W{}{}>>",
        cff ? "/CIDFontType0" : "/CIDFontType2", name, reference(descriptor), widths(subset),
        cff ? "" : "/CIDToGIDMap/Identity"));
    const int encoding = put_encoding(subset, file);
    const int texts = file.put_stream("", text_map());
    file.put(object_,
             fmt::format("<</Type/Font/Subtype/Type0/BaseFont{}/Encoding {}/DescendantFonts[{}]/ToUnicode {}>>", name,
                         reference(encoding), reference(glyphs), reference(texts)));
}

DocumentFont& Fonts::font(const FontFace& face, ObjectFile& file) {
    const auto known = std::ranges::find(fonts_, face, [](const auto& font) { return font.first; });
    if (known != fonts_.end()) return known->second;
    return fonts_.emplace_back(face, DocumentFont{face, file.reserve()}).second;
}

void Fonts::write(ObjectFile& file) const {
    for (const auto& [face, font] : fonts_)
        font.write(file);
}

void append_run(std::string& content, const ShapedRun& run, double size, DocumentFont& font) {
    std::size_t glyphs = 0;
    std::size_t bytes = 0;
    for (const Cluster& cluster : run.clusters) {
        glyphs += static_cast<std::size_t>(cluster.glyphs);
        bytes += static_cast<std::size_t>(cluster.bytes);
    }
    if (glyphs != run.glyphs.size() || bytes != run.text.size())
        throw PaintError("the letters of a text do not belong to it");
    RunWriter{content, run, size, font}.write();
}

} // namespace dyeleaf
