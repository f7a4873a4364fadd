#include "cli/printers.h"

#include "base/number.h"
#include "base/words.h"
#include "calibration/corrected_page.h"
#include "cli/two_sides.h"
#include "sheets/stock.h"

#include <array>
#include <cmath>

namespace dyeleaf {

namespace {

// "0.5 mm right and 0.2 mm up"; empty where nothing moves that could be seen.
std::string move_words(Point by) {
    std::vector<std::string> parts;
    const auto add = [&](Length way, const char* forth, const char* back) {
        const Length far = way < Length{} ? -way : way;
        if (far >= mm(0.05)) parts.push_back(decimal(far.in_mm(), 1) + " mm " + (way < Length{} ? back : forth));
    };
    add(by.x, "right", "left");
    add(by.y, "down", "up");
    return joined(parts, " and ");
}

std::string scale_words(const Misprint& misprint) {
    std::vector<std::string> parts;
    const auto add = [&](double scale, const char* more, const char* less) {
        const double percents = (1 / scale - 1) * 100;
        if (std::abs(percents) >= 0.05)
            parts.push_back(decimal(std::abs(percents), 1) + " % " + (percents > 0 ? more : less));
    };
    add(misprint.across, "wider", "narrower");
    add(misprint.down, "taller", "shorter");
    return joined(parts, " and ");
}

} // namespace

std::string name_of(const Printer& printer) {
    return printer.name.value + (printer.tray.empty() ? "" : ", " + printer.tray);
}

Measured measured_by(const Printer& printer, std::optional<Backs> backs) {
    Measured measured;
    measured.back_by_hand = is_by_hand(printer.backs ? printer.backs : backs);
    const auto of_side = [&](const Reading& reading) {
        Misprint found = misprint_of_readings(reading.across, reading.down);
        const auto paper = find_paper(printer.paper.value);
        if (!printer.lines || !paper) return found;
        const Size drawn = line_lengths(*paper);
        found.across = printer.lines->value.across / drawn.width;
        found.down = printer.lines->value.down / drawn.height;
        return found;
    };
    measured.front = of_side(printer.front);
    if (printer.back) measured.back = of_side(*printer.back);
    return measured;
}

Passage passage(Side side, std::optional<Backs> backs, Size paper) {
    if (side == Side::front) return Passage::front;
    if (is_by_hand(backs)) return Passage::by_hand;
    return turning(backs, paper).short_edge ? Passage::short_edge : Passage::long_edge;
}

Misprint misprint_of(const Measured& measured, Passage passage) {
    return misprint(measured, passage).value_or(Misprint{{}, measured.front.across, measured.front.down});
}

std::string correction_words(const Printer& printer, const Measured& measured, std::optional<Passage> back) {
    std::vector<std::string> parts;
    const auto add = [&](const std::string& side, const std::string& how) {
        if (!how.empty()) parts.push_back((side.empty() ? "" : side + " ") + how);
    };
    add(back ? "fronts" : "", move_words(measured.front.middle));
    std::string unknown;
    if (back) {
        // As whoever turns the sheet like a page sees it.
        const auto known = misprint(measured, *back == Passage::short_edge ? Passage::long_edge : *back);
        if (known) add("backs", move_words(known->middle));
        if (!known) unknown = "; its backs were not measured, and stay where it puts them";
    }
    add("", scale_words(measured.front));
    return "corrected for " + name_of(printer) + ": " + (parts.empty() ? "nothing to move" : joined(parts, ", ")) +
           unknown;
}

void check_reach(const Printer& printer, const Misprint& misprint, Rect labels, Size paper, Diagnostics& diagnostics) {
    constexpr Length white = mm(4.2); // an office laser's edge; common practice
    const Rect moved = correction(misprint, paper).bounds(labels);
    struct Edge {
        const char* name;
        Length before, after;
    };
    const std::array edges = {Edge{"left", labels.left(), moved.left()}, Edge{"top", labels.top(), moved.top()},
                              Edge{"right", paper.width - labels.right(), paper.width - moved.right()},
                              Edge{"bottom", paper.height - labels.bottom(), paper.height - moved.bottom()}};
    for (const Edge& edge : edges) {
        if (fits(white, edge.after) || fits(edge.before, edge.after)) continue;
        const bool off = edge.after < Length{};
        diagnostics.warning(
            {},
            "corrected for " + name_of(printer) + ", labels that were " + to_string(edge.before) + " from the " +
                edge.name + " edge of the page reach " +
                (off ? to_string(-edge.after) + " beyond it" : "to " + to_string(edge.after) + " from it") +
                "; many printers leave " + to_string(white) + " white",
            "look at that edge of the first sheet; if something is missing, choose a stock with a wider "
            "margin, or see to the guides of the printer's tray");
    }
}

} // namespace dyeleaf
