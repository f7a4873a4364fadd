// Layout files and what is said about them; and every bundled layout, which must read without a word.
#include "case_text.h"
#include "design/read_design.h"
#include "project_folder.h"
#include "source/files.h"

#include <catch2/catch.hpp>

#include <filesystem>

using namespace dyeleaf;

namespace {

struct Expected {
    std::vector<std::string> lines; // "error 4:16 message", "help …"
    std::string yaml;
};

Expected split(const std::string& body) {
    Expected expected;
    std::size_t at = 0;
    while (body.compare(at, 2, "# ") == 0) {
        const std::size_t end = body.find('\n', at);
        expected.lines.push_back(body.substr(at + 2, end - at - 2));
        at = end + 1;
    }
    expected.yaml = body.substr(at);
    return expected;
}

// As the cases write it; a help line only where the case expects one there.
std::vector<std::string> written(const Diagnostics& diagnostics, const std::vector<std::string>& expected) {
    std::vector<std::string> lines;
    for (const Diagnostic& one : diagnostics.sorted()) {
        lines.push_back((one.severity == Severity::error ? "error: " : "warning: ") + std::to_string(one.spot.line) +
                        ":" + std::to_string(one.spot.column) + " " + one.message);
        const bool wants_help = lines.size() < expected.size() && expected[lines.size()].starts_with("help: ");
        if (wants_help) lines.push_back("help: " + one.help);
    }
    return lines;
}

std::optional<Design> read(const std::shared_ptr<const SourceFile>& file, const Styles& styles,
                           Diagnostics& diagnostics) {
    const auto node = parse_document(file, diagnostics);
    if (!node) return std::nullopt;
    return read_design(*node, styles, {"Inter", "Vollkorn"}, diagnostics);
}

} // namespace

TEST_CASE("layout files say what is wrong and where", "[design]") {
    const auto cases = read_cases(project_folder() / "tests/cases/design/layouts.case");
    REQUIRE(cases.size() >= 20);
    for (const CaseText& one : cases) {
        DYNAMIC_SECTION(one.name) {
            Expected expected = split(one.body);
            Diagnostics diagnostics;
            const auto file = std::make_shared<const SourceFile>(SourceFile{"t.yaml", expected.yaml});
            const auto design = read(file, {}, diagnostics);
            CHECK(design.has_value() == expected.lines.empty());
            const auto lines = written(diagnostics, expected.lines);
            // Complaints are sorted by place; a case lists them in the order that reads best.
            auto sorted_lines = lines;
            std::ranges::sort(sorted_lines);
            std::ranges::sort(expected.lines);
            CHECK(sorted_lines == expected.lines);
        }
    }
}

TEST_CASE("the bundled layouts read without a word", "[design]") {
    Diagnostics diagnostics;
    const std::filesystem::path folder = project_folder() / "layouts";
    const auto house = read_file(folder / "styles/house.yaml", "house.yaml", 1U << 20U, diagnostics);
    REQUIRE(house);
    const auto house_node = parse_document(house, diagnostics);
    REQUIRE(house_node);
    const Styles styles = read_style_file(*house_node, {"Inter", "Vollkorn"}, diagnostics);
    int read_layouts = 0;
    for (const auto& entry : std::filesystem::directory_iterator{folder}) {
        if (entry.path().extension() != ".yaml") continue;
        const auto file = read_file(entry.path(), entry.path().filename().string(), 1U << 20U, diagnostics);
        REQUIRE(file);
        const auto design = read(file, styles, diagnostics);
        for (const Diagnostic& one : diagnostics.sorted())
            INFO(describe(one));
        CHECK(design.has_value());
        if (design) CHECK(design->name == entry.path().stem().string());
        ++read_layouts;
    }
    CHECK(diagnostics.sorted().empty());
    CHECK(read_layouts >= 10);
}
