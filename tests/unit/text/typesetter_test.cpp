#include "project_folder.h"
#include "text/typesetter.h"

#include <catch2/catch.hpp>

#include <fstream>
#include <numeric>

using namespace dyeleaf;

namespace {

namespace fs = std::filesystem;

const Typesetter& typesetter() {
    static Diagnostics diagnostics;
    static const Typesetter bundled({fonts_folder()}, diagnostics);
    return bundled;
}

double width_of(const std::string& text, const Font& font) {
    return typesetter().set(text, font, std::nullopt, false)->width;
}

std::vector<std::string> lines_of(const Paragraph& paragraph) {
    std::vector<std::string> lines;
    for (const TextLine& line : paragraph.lines) {
        lines.emplace_back();
        for (const PlacedRun& placed : line.runs)
            lines.back() += placed.run->text;
    }
    return lines;
}

fs::path fresh_folder(const std::string& name) {
    const fs::path folder = fs::temp_directory_path() / ("dyeleaf-text-test-" + name);
    fs::remove_all(folder);
    fs::create_directories(folder);
    return folder;
}

const Font inter{"Inter"};
const Font vollkorn{"Vollkorn"};

} // namespace

TEST_CASE("the bundled fonts are found by family, weight and slant", "[text]") {
    CHECK(typesetter().families() == std::vector<std::string>{"Inter", "Vollkorn"});

    const auto file = [](const Font& font) {
        const auto paragraph = typesetter().set("Oak", font, std::nullopt, false);
        return fs::path{paragraph->lines.at(0).runs.at(0).run->face.file}.filename().string();
    };
    CHECK(file({"Inter", 400}) == "Inter-Regular.otf");
    CHECK(file({"Inter", 500}) == "Inter-Medium.otf");
    CHECK(file({"Inter", 600}) == "Inter-SemiBold.otf");
    CHECK(file({"Inter", 700}) == "Inter-Bold.otf");
    CHECK(file({"Inter", 400, true}) == "Inter-Italic.otf");
    CHECK(file({"Vollkorn", 600}) == "Vollkorn-SemiBold.ttf");
    // The nearest real face, not one bent into shape.
    CHECK(file({"Vollkorn", 400}) == "Vollkorn-SemiBold.ttf");
    CHECK(file({"Inter", 700, true}) == "Inter-Italic.otf");
}

TEST_CASE("metrics are the font files' own", "[text]") {
    // Inter: 2048 units to the em, hhea 1984 and -494, sCapHeight 1490. Vollkorn: 1000; 952, -441, 676.
    const FontMetrics sans = typesetter().metrics(inter);
    CHECK(sans.ascent == Approx(1984.0 / 2048).epsilon(1e-4));
    CHECK(sans.descent == Approx(494.0 / 2048).epsilon(2e-3));
    CHECK(sans.cap_height == Approx(1490.0 / 2048).epsilon(1e-3));
    const FontMetrics serif = typesetter().metrics(vollkorn);
    CHECK(serif.ascent == Approx(0.952).epsilon(1e-4));
    CHECK(serif.descent == Approx(0.441).epsilon(1e-3));
    CHECK(serif.cap_height == Approx(0.676).epsilon(1e-3));
}

TEST_CASE("advances are the font's, not rounded to pixels", "[text]") {
    // A hundred letters are a hundred times as wide as one.
    CHECK(width_of(std::string(100, 'n'), inter) == Approx(100 * width_of("n", inter)).epsilon(1e-6));
    CHECK(width_of(std::string(100, 'n'), vollkorn) == Approx(100 * width_of("n", vollkorn)).epsilon(1e-6));
}

TEST_CASE("letters are kerned", "[text]") {
    CHECK(width_of("AV", inter) < width_of("A", inter) + width_of("V", inter) - 0.02);
    CHECK(width_of("To", vollkorn) < width_of("T", vollkorn) + width_of("o", vollkorn) - 0.02);
}

TEST_CASE("tabular figures are equally wide", "[text]") {
    for (const std::string family : {"Inter", "Vollkorn"}) {
        const Font tabular{family, 400, false, 0, true};
        for (const char figure : std::string{"123456789"}) {
            CHECK(width_of(std::string(4, figure), tabular) == Approx(width_of("0000", tabular)).epsilon(1e-9));
        }
    }
    CHECK(width_of("1111", inter) < width_of("0000", inter) - 0.1);
}

TEST_CASE("tracking widens between letters and not around them", "[text]") {
    const Font tracked{"Inter", 400, false, 0.1};
    CHECK(width_of("n", tracked) == Approx(width_of("n", inter)).margin(1e-4));
    CHECK(width_of("nnnn", tracked) == Approx(width_of("nnnn", inter) + 0.3).margin(1e-4));

    const auto wrapped = typesetter().set("nnnn nnnn", tracked, 3.5, false);
    REQUIRE(wrapped->lines.size() == 2);
    CHECK(wrapped->lines[0].width == Approx(width_of("nnnn", tracked)).margin(1e-4));
    CHECK(wrapped->lines[1].width == Approx(width_of("nnnn", tracked)).margin(1e-4));
}

TEST_CASE("a code is set as it is recorded", "[text]") {
    // Inter's contextual alternates would turn x into × and -> into an arrow: fewer or other glyphs.
    const auto separate = width_of("3", inter) + width_of("x", inter) + width_of("9", inter);
    CHECK(width_of("3x9", inter) == Approx(separate).margin(0.03));
    const auto arrow = typesetter().set("->", inter, std::nullopt, false);
    CHECK(arrow->lines.at(0).runs.at(0).run->glyphs.size() == 2);
}

TEST_CASE("bytes and glyphs of the clusters add up to the run's", "[text]") {
    const std::string text = GENERATE(as<std::string>{}, "Hedge in October", "office ﬁne", "e\u0301 \u1EB9\u0300",
                                      "Ra\u200Du 26.00 €", "Дубовый Ωμ", "Indigo\u00ADkarmin dunkel\u00ADblau");
    const std::optional<double> width = GENERATE(std::optional<double>{}, std::optional<double>{5});
    const auto paragraph = typesetter().set(text, GENERATE(inter, vollkorn), width, false);
    CHECK(paragraph->missing.empty());
    for (const TextLine& line : paragraph->lines) {
        for (const PlacedRun& placed : line.runs) {
            const ShapedRun& run = *placed.run;
            const auto sum = [&](int Cluster::*part) {
                return std::accumulate(run.clusters.begin(), run.clusters.end(), 0,
                                       [&](int total, const Cluster& cluster) { return total + cluster.*part; });
            };
            CHECK(sum(&Cluster::bytes) == static_cast<int>(run.text.size()));
            CHECK(sum(&Cluster::glyphs) == static_cast<int>(run.glyphs.size()));
        }
    }
}

TEST_CASE("characters that no font has are named and not drawn", "[text]") {
    const auto paragraph = typesetter().set("Oak 漢 🌳漢 leaf", inter, std::nullopt, false);
    CHECK(paragraph->missing == std::vector<std::string>{"漢", "🌳"});
    CHECK(lines_of(*paragraph) == std::vector<std::string>{"Oak   leaf"});

    const auto nothing = typesetter().set("漢", inter, 5.0, true);
    CHECK(nothing->missing == std::vector<std::string>{"漢"});
    CHECK(nothing->lines.empty());

    const auto wrapped = typesetter().set("Oak 漢 leaf and bark", inter, 5.0, true);
    CHECK(wrapped->missing == std::vector<std::string>{"漢"});
    CHECK(wrapped->lines.size() == 2);
}

TEST_CASE("a character that one family lacks comes from another", "[text]") {
    Diagnostics diagnostics;
    const fs::path folder = fresh_folder("one-family");
    fs::copy(fonts_folder() / "Vollkorn-SemiBold.ttf", folder);
    const Typesetter alone({folder}, diagnostics);
    CHECK(alone.set("①", vollkorn, std::nullopt, false)->missing.size() == 1);
    CHECK(typesetter().set("①", vollkorn, std::nullopt, false)->missing.empty());
}

TEST_CASE("directional overrides cannot turn a text round", "[text]") {
    const auto paragraph = typesetter().set("26\u202E71\u202C1", inter, std::nullopt, false);
    CHECK(lines_of(*paragraph) == std::vector<std::string>{"26711"});
    CHECK_FALSE(paragraph->lines.at(0).runs.at(0).run->right_to_left);
}

TEST_CASE("lines break between words and leave the space behind", "[text]") {
    const auto paragraph = typesetter().set("Merino wool and polyamide", inter, 8.0, false);
    CHECK(lines_of(*paragraph) == std::vector<std::string>{"Merino wool and", "polyamide"});
    CHECK(paragraph->width == Approx(width_of("Merino wool and", inter)).margin(1e-4));
    CHECK_FALSE(paragraph->words_broken);
}

TEST_CASE("text set at its own width does not break", "[text]") {
    const std::string text = "75 % merino wool, 25 % polyamide";
    for (const Font& font : {inter, vollkorn, Font{"Inter", 700, false, 0.05, true}}) {
        CHECK(typesetter().set(text, font, width_of(text, font), false)->lines.size() == 1);
        CHECK(typesetter().set(text, font, width_of(text, font) - 0.01, false)->lines.size() == 2);
    }
}

TEST_CASE("a line end in the text is a line end on paper", "[text]") {
    const auto paragraph = typesetter().set("a\n\nb\n", inter, std::nullopt, false);
    CHECK(lines_of(*paragraph) == std::vector<std::string>{"a", "", "b"});
    CHECK(typesetter().set("", inter, 3.0, true)->lines.empty());
}

TEST_CASE("balanced lines are as even as their number allows", "[text]") {
    const std::string text = "Hedge in October and another leaf";
    const auto greedy = typesetter().set(text, inter, 12.0, false);
    const auto balanced = typesetter().set(text, inter, 12.0, true);
    CHECK(lines_of(*greedy) == std::vector<std::string>{"Hedge in October and", "another leaf"});
    CHECK(lines_of(*balanced) == std::vector<std::string>{"Hedge in October", "and another leaf"});
    CHECK(balanced->width < greedy->width);
}

TEST_CASE("a word wider than the line is broken, and says so", "[text]") {
    const auto paragraph = typesetter().set("FEN-0412-77120-LOT", inter, 4.0, true);
    CHECK(paragraph->words_broken);
    CHECK(paragraph->width <= 4.001);
    std::string together;
    for (const std::string& line : lines_of(*paragraph))
        together += line;
    CHECK(together == "FEN-0412-77120-LOT");
    for (const TextLine& line : paragraph->lines) {
        for (const PlacedRun& placed : line.runs) {
            CHECK(placed.run->glyphs.size() == placed.run->text.size()); // no hyphen that is not in the code
        }
    }
}

TEST_CASE("a soft hyphen shows where a line breaks at it", "[text]") {
    const auto paragraph = typesetter().set("Indigo\u00ADkarmin", inter, 4.0, false);
    REQUIRE(paragraph->lines.size() == 2);
    CHECK_FALSE(paragraph->words_broken);
    CHECK(paragraph->lines[0].width == Approx(width_of("Indigo\u2010", inter)).margin(0.02));
    CHECK(width_of("Indigo\u00ADkarmin", inter) == Approx(width_of("Indigokarmin", inter)).margin(0.02));
}

TEST_CASE("the same question gets the very same answer", "[text]") {
    const auto first = typesetter().set("Plain Sock", inter, 4.0, false);
    CHECK(typesetter().set("Plain Sock", inter, 4.0, false) == first);
    CHECK(typesetter().set("Plain Sock", inter, 30.0, false) == typesetter().set("Plain Sock", inter, 20.0, true));
}

TEST_CASE("an earlier folder's face counts before the same face in a later one", "[text]") {
    const fs::path folder = fresh_folder("later");
    fs::copy(fonts_folder() / "Inter-Bold.otf", folder / "A-bold.otf");
    Diagnostics diagnostics;
    const Typesetter both({fonts_folder(), folder}, diagnostics);
    const auto bold = both.set("Oak", {"Inter", 700}, std::nullopt, false);
    CHECK(fs::path{bold->lines.at(0).runs.at(0).run->face.file}.parent_path() == fonts_folder());
    CHECK(diagnostics.errors() + diagnostics.warnings() == 0);
}

TEST_CASE("a file that is not a font is a warning, no font at all an error", "[text]") {
    const fs::path folder = fresh_folder("broken");
    std::ofstream{folder / "letter.ttf"} << "Dear font";
    Diagnostics diagnostics;
    const Typesetter nothing({folder, folder / "not there"}, diagnostics);
    CHECK(diagnostics.warnings() == 1);
    CHECK(diagnostics.errors() == 1);
    CHECK(diagnostics.sorted().at(0).message.find("letter.ttf") != std::string::npos);
    CHECK(nothing.families().empty());
    CHECK(nothing.set("Oak", inter, 3.0, true)->lines.empty());
    CHECK(nothing.metrics(inter).cap_height > 0);
}

TEST_CASE("right-to-left text runs from the right", "[text]") {
    // No bundled font has Hebrew letters; a machine that has some lends them to this test.
    const fs::path lent = "/usr/share/fonts/truetype/dejavu";
    if (!fs::exists(lent / "DejaVuSans.ttf")) return;
    Diagnostics diagnostics;
    const Typesetter hebrew({fonts_folder(), lent}, diagnostics);
    const auto paragraph = hebrew.set("שלום abc", inter, std::nullopt, false);
    REQUIRE(paragraph->lines.size() == 1);
    const std::vector<PlacedRun>& runs = paragraph->lines[0].runs;
    CHECK(runs.front().run->text == "abc"); // leftmost
    CHECK(runs.back().run->text.starts_with("שלום"));
    CHECK(runs.back().run->right_to_left);
    double x = -1;
    for (const Glyph& glyph : runs.back().run->glyphs) {
        CHECK(glyph.x > x);
        x = glyph.x;
    }
}
