#include "cli/page_details.h"

#include "sheets/sheet_geometry.h"

#include <algorithm>
#include <utility>

namespace dyeleaf {

namespace {

std::string page_label(const PrintRun& run, std::size_t sheet, Side side) {
    std::string number = std::to_string(sheet + 1);
    if (!run.two_sided) return number;
    return run.language.say(side == Side::front ? "sheet.front page" : "sheet.back page", {{"number", number}});
}

std::string entry(const PrintRun& run, std::size_t sheet, Side side) {
    const std::vector<Slot>& slots = run.plans[sheet].slots;
    if (side != Side::front || slots.empty()) return {};
    const std::string first = run.items[slots.front().label].id;
    if (run.stock.page_per_label) {
        const bool copy = sheet > 0 && run.plans[sheet - 1].slots.front().label == slots.front().label;
        return copy ? std::string{} : first;
    }
    const std::string last = run.items[slots.back().label].id;
    const std::string place = run.language.say(
        "sheet.place", {{"number", std::to_string(sheet + 1)}, {"count", std::to_string(run.plans.size())}});
    return place + ": " + (first == last ? first : first + " – " + last);
}

void forget_links(TaggedPage& page) {
    for (TaggedLabel& label : page) {
        for (Tag& part : label.parts)
            part.target.clear();
    }
}

} // namespace

PdfPage page_details(const PrintRun& run, std::size_t sheet, Side side, Size size, TaggedPage tagged) {
    const SheetPlan& plan = run.plans[sheet];
    const std::size_t titled = std::min(tagged.size(), plan.slots.size());
    for (std::size_t i = 0; i < titled; ++i)
        tagged[i].title = run.items[plan.slots[i].label].id;
    // An imposed sheet is cut by its marks; what the printer delivers is the whole of it.
    PdfPage page{{{}, size}, {}, page_label(run, sheet, side), entry(run, sheet, side), std::move(tagged)};
    if (run.stock.page_per_label && !plan.slots.empty()) {
        const Slot& slot = plan.slots.front();
        const Trim& trim = run.trims[slot.label];
        page.trim = seen_on(side, place_of(slot, trim), plan.paper);
        page.bleed = bleed_on(run.stock, trim);
        if (run.stock.page_marks) forget_links(page.tagged); // a press takes none on its pages (ISO 15930-7)
    }
    return page;
}

} // namespace dyeleaf
