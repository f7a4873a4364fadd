#include "cli/choose_printer.h"

#include "base/nearest.h"
#include "base/words.h"
#include "calibration/corrected_page.h"
#include "cli/printers.h"
#include "cli/report.h"
#include "sheets/stock.h"

#include <algorithm>

namespace dyeleaf {

namespace {

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

} // namespace

ChosenPrinter choose_printer(const std::vector<Printer>& printers, const WantedPrinter& wanted, Size paper,
                             Diagnostics& diagnostics) {
    if (wanted.is_none()) return {};
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

} // namespace dyeleaf
