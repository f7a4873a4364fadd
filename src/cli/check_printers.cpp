#include "cli/check_printers.h"

#include "base/nearest.h"
#include "base/words.h"
#include "calibration/misprint.h"
#include "cli/printers.h"
#include "sheets/stock.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace dyeleaf {

namespace {

constexpr double least_scale = 0.95;
constexpr double most_scale = 1.05;
// Common practice: sound printers stay within a hundredth and a few millimetres; what exceeds these is rather a wrong
// setting or a slip.
constexpr double suspect_scale = 0.02;
constexpr Length suspect_move = mm(5);

void check_line(const Sourced<Reading>& lines, Length read, Length drawn, const std::string& which,
                Diagnostics& diagnostics) {
    const double scale = read / drawn;
    const std::string what = "the line " + which + " of the measuring sheet is " + to_string(drawn) +
                             " long, and came out " + to_string(read) + " long";
    constexpr auto help =
        "print the sheet again at actual size (100 %), without “fit to page”, and measure the line from end to end";
    if (scale < least_scale || scale > most_scale) {
        diagnostics.error(lines.spot, what + ": more than 5 % off cannot be put right", help);
    } else if (std::abs(scale - 1) > suspect_scale) {
        diagnostics.warning(lines.spot, what + ": that looks like “fit to page”", help);
    }
}

void check_reading(const Printer& printer, const Reading& reading, const std::string& side, Diagnostics& diagnostics) {
    const Misprint found = misprint_of_readings(reading.across, reading.down);
    for (const auto& [which, moved, read] :
         {std::tuple{"across", found.middle.x, reading.across}, std::tuple{"down", found.middle.y, reading.down}}) {
        if (moved <= suspect_move && -moved <= suspect_move) continue;
        diagnostics.warning(printer.spot,
                            in_quotes(name_of(printer)) + " prints " + to_string(moved < Length{} ? -moved : moved) +
                                " beside the middle of the paper: " + side + ", " + which + " " + to_string(read),
                            "see that the printer knows its paper is " + printer.paper.value +
                                ", print the measuring sheet again, and read it where the crease cuts the scale");
    }
}

} // namespace

void check_printers(const std::vector<Printer>& printers, Diagnostics& diagnostics) {
    for (auto printer = printers.begin(); printer != printers.end(); ++printer) {
        const auto is_same = [&](const Printer& other) {
            return lower_case(name_of(other)) == lower_case(name_of(*printer)) &&
                   lower_case(other.paper.value) == lower_case(printer->paper.value);
        };
        if (const auto first = std::find_if(printers.begin(), printer, is_same); first != printer) {
            diagnostics.error(printer->name.spot,
                              in_quotes(name_of(*printer)) + " is recorded twice on " + printer->paper.value,
                              "keep the latest readings, or name the trays: tray: rear");
        }
        const auto paper = find_paper(printer->paper.value);
        if (!paper) {
            diagnostics.error(printer->paper.spot, "there is no paper called " + in_quotes(printer->paper.value),
                              suggest(printer->paper.value, paper_names()));
            continue;
        }
        check_reading(*printer, printer->front, "front", diagnostics);
        if (printer->back) check_reading(*printer, *printer->back, "back", diagnostics);
        if (!printer->lines) continue;
        const Size drawn = line_lengths(*paper);
        check_line(*printer->lines, printer->lines->value.across, drawn.width, "across", diagnostics);
        check_line(*printer->lines, printer->lines->value.down, drawn.height, "down", diagnostics);
    }
}

} // namespace dyeleaf
