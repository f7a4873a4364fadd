#include "cli/printers.h"

#include "base/nearest.h"
#include "base/number.h"
#include "base/words.h"
#include "calibration/corrected_page.h"
#include "cli/report.h"
#include "cli/two_sides.h"
#include "sheets/stock.h"

#include <algorithm>
#include <array>
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

std::string name_of(const Printer& printer) {
    return printer.name.value + (printer.tray.empty() ? "" : ", " + printer.tray);
}

// "--printer workroom --tray rear".
std::string typed(const Printer& printer) {
    return "--printer " + as_typed(printer.name.value) +
           (printer.tray.empty() ? "" : " --tray " + as_typed(printer.tray));
}

bool same_paper(Size a, Size b) {
    const Size one = standing_size(a);
    const Size other = standing_size(b);
    return near(one.width, other.width) && near(one.height, other.height);
}

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

template <class Text> std::vector<std::string> each(const std::vector<const Printer*>& printers, const Text& text) {
    std::vector<std::string> texts;
    for (const Printer* printer : printers)
        add_once(texts, text(*printer));
    return texts;
}

// Those that the names leave, or an error and none.
std::vector<const Printer*> named(const std::vector<Printer>& printers, const WantedPrinter& wanted,
                                  Diagnostics& diagnostics) {
    std::vector<const Printer*> left;
    for (const Printer& printer : printers)
        left.push_back(&printer);
    const auto keep = [&](const std::optional<std::string>& name, const auto& of, const std::string& kind) {
        if (!name || left.empty()) return;
        const auto known = each(left, of);
        std::erase_if(left, [&](const Printer* one) { return lower_case(of(*one)) != lower_case(*name); });
        if (left.empty())
            diagnostics.error({}, "there is no " + kind + " called " + in_quotes(*name) + " in your records",
                              suggest(*name, known));
    };
    if (left.empty() && wanted.named()) {
        diagnostics.error({}, "no printer is in your records",
                          "measure it first: `dyeleaf measure` makes the sheet that tells how");
    }
    keep(
        wanted.printer, [](const Printer& one) { return one.name.value; }, "printer");
    keep(
        wanted.tray, [](const Printer& one) { return one.tray; }, "tray");
    return left;
}

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

bool is_none(const WantedPrinter& wanted) {
    return wanted.printer && lower_case(*wanted.printer) == "none";
}

ChosenPrinter choose_printer(const std::vector<Printer>& printers, const WantedPrinter& wanted, Size paper,
                             Diagnostics& diagnostics) {
    if (is_none(wanted)) return {};
    std::vector<const Printer*> left = named(printers, wanted, diagnostics);
    if (left.empty()) return {};
    const auto measured = each(left, [](const Printer& one) { return name_of(one) + " on " + one.paper.value; });
    std::erase_if(left, [&](const Printer* one) {
        const auto on = find_paper(one->paper.value);
        return !on || !same_paper(*on, paper);
    });
    if (left.empty()) {
        return {nullptr, "not corrected for a printer: measured are " + joined(measured, "; ") +
                             ", and this paper is " + measures(paper)};
    }
    if (left.size() == 1) return {left.front(), {}};
    const std::string which = "say which one prints: " + joined(each(left, typed), ", or ");
    if (wanted.named()) {
        diagnostics.error({}, "your records have more than one printer that could be meant", which);
        return {};
    }
    return {nullptr, "not corrected for a printer; " + which};
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
        const auto known = misprint(measured, *back);
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
