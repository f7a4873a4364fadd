#include "cli/gamut.h"

#include "base/number.h"
#include "base/words.h"
#include "cli/report.h"
#include "colour/difference.h"
#include "colour/spaces.h"
#include "facts/recorded_colours.h"
#include "facts/swatches.h"

#include <algorithm>

namespace dyeleaf {

namespace {

// ΔE00. What comes back nearer than that was within the inks, give or take a profile's own rounding (common practice).
constexpr double within_inks = 2;

struct Line {
    ColourOfRecord record;
    Lab recorded, printed, on_paper;
    double difference = 0;
    bool beyond = false;
};

Line look_at(ColourOfRecord record, const PrinterColours& printer) {
    Line line{std::move(record), {}, {}, {}};
    line.recorded = lab_of(line.record.colour);
    // Pages are sRGB: what lies beyond it is not even sent.
    const Lab sent = to_lab(rgb_of(line.record.colour));
    line.printed = printer.printed(sent);
    line.on_paper = printer.on_paper(sent);
    line.difference = delta_e_2000(line.recorded, line.printed);
    line.beyond = delta_e_2000(line.recorded, printer.nearest(sent)) > within_inks;
    return line;
}

std::string figures(Lab lab) {
    const auto whole = [](double value) { return decimal(value, 0) == "-0" ? "0" : decimal(value, 0); };
    return whole(lab.lightness) + " " + whole(lab.a) + " " + whole(lab.b);
}

std::string name(const Line& line) {
    if (line.record.glows) return line.record.whose + " (glows, which no ink does)";
    return line.record.whose + (line.beyond ? " (beyond its inks)" : "");
}

} // namespace

std::string show_gamut(const Records& records, const PrinterColours& printer) {
    std::vector<Line> lines;
    for (ColourOfRecord& record : recorded_colours(records))
        lines.push_back(look_at(std::move(record), printer));
    if (lines.empty()) return "No colour is recorded yet.\n";
    std::ranges::stable_sort(lines, std::ranges::greater{}, &Line::difference);

    std::vector<std::vector<std::string>> rows{{"ΔE00", "RECORDED", "PRINTED", "ON THE PAPER", "COLOUR"}};
    for (const Line& line : lines) {
        rows.push_back({fixed(line.difference, 1), figures(line.recorded), figures(line.printed),
                        figures(line.on_paper), name(line)});
    }
    const auto beyond = std::ranges::count_if(lines, [](const Line& line) { return line.beyond || line.record.glows; });
    const std::string paper = figures(printer.on_paper({100, 0, 0}));
    return table(rows) + "\n" + std::to_string(beyond) + " of " +
           counted(static_cast<int>(lines.size()), "colour lies", "colours lie") + " beyond this printer's inks" +
           (beyond > 0 ? ": tie real yarn to those cards.\n" : ".\n") +
           "L, a and b for daylight D50. PRINTED is what the eye sees beside the bare paper (Lab " + paper +
           "); ON THE PAPER is what an\ninstrument would measure. Sent with relative colorimetric and black point "
           "compensation: set the printer to that.\n";
}

} // namespace dyeleaf
