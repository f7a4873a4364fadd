#include "records/read_girth.h"

#include "base/number.h"
#include "base/words.h"
#include "source/values.h"

#include <cmath>
#include <numbers>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace dyeleaf {

namespace {

constexpr std::pair<std::string_view, Girth::By> ways[] = {
    {"diameter", Girth::By::diameter}, {"circumference", Girth::By::circumference}, {"strip", Girth::By::strip}};
// Of the jars that labels are made for (common practice).
constexpr LengthRange jar_diameter{mm(20), mm(120)};

bool is_a_jar(Length diameter) {
    return fits(jar_diameter.least, diameter) && fits(diameter, jar_diameter.most);
}

std::string rounded(Length length) {
    return decimal(length.in_mm(), 1) + " mm";
}

std::string what_it_means(Girth::By by, Length measured) {
    const Length across = diameter_from(by, measured);
    const std::string verdict = across < jar_diameter.least ? "too small" : "too large";
    switch (by) {
    case Girth::By::diameter: break;
    case Girth::By::circumference:
        return to_string(measured) + " round means a jar " + rounded(across) + " across, which is " + verdict;
    case Girth::By::strip:
        return "a strip of " + to_string(measured) + " means a jar " + rounded(across) + " across, which is " + verdict;
    }
    return to_string(measured) + " across is " + verdict + " for a jar";
}

// What was probably measured instead; empty where nothing fits.
std::string likely_slip(Girth::By by, Length measured) {
    if (by != Girth::By::diameter)
        return is_a_jar(measured) ? "if it was measured straight across, write diameter: " + to_string(measured) : "";
    if (is_a_jar(diameter_from(Girth::By::circumference, measured)))
        return "if it was measured round the jar, write circumference: " + to_string(measured) + ", which is " +
               rounded(measured / std::numbers::pi) + " across";
    if (is_a_jar(measured * 2)) return "if it is only half of that, write diameter: " + to_string(measured * 2);
    const double number = measured.in_mm();
    if (is_a_jar(inches(number))) return "if these are inches, write diameter: " + significant(number, 4) + " in";
    const Length millimetres = mm(measured / inches(1));
    return is_a_jar(millimetres) ? "if these are millimetres, write diameter: " + to_string(millimetres) : "";
}

std::optional<Length> read_measure(const Node& node, const std::string& what, Girth::By by, Diagnostics& diagnostics) {
    const auto measured = read_length(node, what, {mm(0), metres(2)}, diagnostics);
    if (!measured || is_a_jar(diameter_from(by, *measured))) return measured;
    const std::string slip = likely_slip(by, *measured);
    diagnostics.error(node.spot, what_it_means(by, *measured),
                      slip + (slip.empty() ? "" : "; ") + "jars with labels are " + to_string(jar_diameter.least) +
                          " to " + to_string(jar_diameter.most) + " across");
    return std::nullopt;
}

} // namespace

std::optional<Girth> read_girth(Fields& jar) {
    std::vector<std::string> written;
    for (const auto& [key, by] : ways) {
        if (jar.has(key)) written.emplace_back(key);
    }
    Diagnostics& diagnostics = jar.diagnostics();
    if (written.size() > 1) {
        diagnostics.error(jar.node().spot, "this jar says more than once how thick it is: " + joined(written, " and "),
                          "keep one of them; a strip of paper round the wall is the surest");
    }
    std::optional<Girth> girth;
    for (const auto& [key, by] : ways) {
        const bool is_asked = written.empty() && by == Girth::By::diameter;
        const Node* node = is_asked ? jar.need(key, "diameter: 42 mm") : jar.take(key);
        if (node == nullptr) continue;
        const std::string what{key};
        if (node->kind != Node::Kind::map) {
            if (const auto measured = read_measure(*node, what, by, diagnostics)) girth = {by, *measured, *measured};
            continue;
        }
        Fields fields{*node, what, diagnostics};
        const Node* top = fields.need("top", "top: 60 mm");
        const Node* bottom = fields.need("bottom", "bottom: 50 mm");
        const auto above = top == nullptr ? std::nullopt : read_measure(*top, "top", by, diagnostics);
        const auto below = bottom == nullptr ? std::nullopt : read_measure(*bottom, "bottom", by, diagnostics);
        fields.refuse_the_rest();
        if (above && below) girth = {by, *above, *below};
    }
    return girth;
}

void check_lean(const Girth& girth, Length height, const Spot& spot, Diagnostics& diagnostics) {
    constexpr double most = 30;
    const Length out = (diameter_from(girth.by, girth.top) - diameter_from(girth.by, girth.bottom)) / 2;
    const double lean = std::abs(std::atan2(out.in_mm(), height.in_mm())) * 180 / std::numbers::pi;
    if (lean <= most) return;
    diagnostics.error(spot,
                      "this wall would lean by " + decimal(lean, 0) + "°: it goes " + rounded(larger(out, -out)) +
                          (out < Length{} ? " inwards" : " outwards") + " on a height of " + rounded(height),
                      "measure at the top and bottom edge of the label, and the height between the bends; labels are "
                      "made for walls that lean 30° at most");
}

} // namespace dyeleaf
