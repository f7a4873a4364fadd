#include "cli/job.h"

#include "base/words.h"
#include "calibration/corrected_page.h"
#include "cli/changes.h"
#include "cli/printer_profile.h"
#include "cli/printers.h"
#include "cli/two_sides.h"
#include "layout/check_play.h"
#include "layout/layout.h"
#include "sheets/pouch.h"
#include "sheets/sheet_geometry.h"
#include "sheets/used_cells.h"

#include <algorithm>
#include <numeric>
#include <utility>

namespace dyeleaf {

namespace {

struct Noun {
    std::string_view one, many;
};

// What the dyer calls the thing that is made.
Noun product_of(ItemKind kind) {
    switch (kind) {
    case ItemKind::jars: return {"label", "labels"};
    case ItemKind::skeins: return {"tag", "tags"};
    case ItemKind::lots: return {"lot sheet", "lot sheets"};
    case ItemKind::bases: return {"sign", "signs"};
    case ItemKind::dyes: break;
    }
    return {"card", "cards"};
}

std::string_view record_of(ItemKind kind) {
    switch (kind) {
    case ItemKind::dyes: return "dyes";
    case ItemKind::jars: return "jars";
    case ItemKind::skeins: return "skeins";
    case ItemKind::lots: return "lots";
    case ItemKind::bases: break;
    }
    return "bases";
}

std::optional<Stock> stock_for(const Render& request, const Design& design, const Library& library,
                               Diagnostics& diagnostics) {
    if (request.stock) return find_stock(*request.stock, {}, library, diagnostics);
    if (!design.stock.empty()) return find_stock(design.stock, design.stock_spot, library, diagnostics);
    diagnostics.error(design.spot, "the layout " + in_quotes(design.name) + " does not say which stock it is for",
                      "write a line such as stock: a4-card, or choose one with --stock");
    return std::nullopt;
}

Trims trims_of(const Design& design, const Items& items, Diagnostics& diagnostics) {
    Trims trims;
    for (const Item& item : items) {
        if (const auto size = label_size(design, item, diagnostics))
            trims.push_back({size->size, design.shape.round, design.shape.corner, design.shape.bleed,
                             design.shape.clipped, size->sector});
    }
    return trims;
}

// The stocks that would take these labels, for a dyer whose stock does not.
std::vector<std::string> stocks_that_take(const Job& job, const Library& library) {
    std::vector<std::string> names;
    for (const LibraryFile& file : find_stocks(library)) {
        Diagnostics unheard;
        const auto stock = read_stock_file(file, unheard);
        if (!stock || (stock->roll && job.design.back) || (stock->laminate && !job.stock.laminate)) continue;
        if (!plan_sheets(job.trims, *stock, {}, {}, unheard).empty()) names.push_back(file.name);
    }
    return names;
}

std::vector<SheetPlan> plan(const Job& job, const Render& request, const Library& library, Diagnostics& diagnostics) {
    Diagnostics planning;
    const Spot at = request.stock ? Spot{} : job.design.spot;
    const auto name = [&](std::size_t label) { return job.items[label].id; };
    auto sheets = plan_sheets(job.trims, job.stock, {job.copies, request.used, request.piles, name}, at, planning);
    std::string others;
    if (planning.errors() > 0 && request.used.empty() && !request.piles) {
        const auto names = stocks_that_take(job, library);
        if (!names.empty()) others = "; these take it: " + joined(names, ", ");
    }
    for (Diagnostic diagnostic : planning.sorted()) {
        if (diagnostic.severity == Severity::error) diagnostic.help += others;
        diagnostics.add(std::move(diagnostic));
    }
    return sheets;
}

// The ids of what one --copies ID=N names.
std::vector<std::string> named(const CopiesOf& some, const Job& job, const Printing& printing,
                               Diagnostics& diagnostics) {
    Diagnostics naming;
    const auto items =
        make_items(job.records, job.design.items, job.design.grouping, Selection{{some.selector}}, printing, naming);
    for (const Diagnostic& diagnostic : naming.sorted()) {
        if (diagnostic.severity == Severity::error) diagnostics.add(diagnostic);
    }
    std::vector<std::string> ids;
    for (const Item& item : items)
        ids.push_back(item.id);
    return ids;
}

std::vector<int> copies_of(const Job& job, const Render& request, const Printing& printing, Diagnostics& diagnostics) {
    std::vector<int> copies(job.items.size(), request.copies);
    for (const CopiesOf& some : request.copies_of) {
        const std::string typed = "--copies " + some.selector + "=" + std::to_string(some.count);
        if (job.design.grouping) {
            diagnostics.error(
                {}, typed + " cannot be told apart: " + in_quotes(job.design.name) + " puts several dyes on one card",
                "write --copies " + std::to_string(some.count) + ", and choose the dyes with --only");
            continue;
        }
        const auto ids = named(some, job, printing, diagnostics);
        bool found = ids.empty(); // then it has been said what is wrong
        for (std::size_t i = 0; i < job.items.size(); ++i) {
            if (std::ranges::find(ids, job.items[i].id) == ids.end()) continue;
            copies[i] = some.count;
            found = true;
        }
        if (!found && !request.changed) {
            diagnostics.error({}, in_quotes(some.selector) + " is not among what --only chooses",
                              "choose it with another --only, or leave " + typed + " away");
        }
    }
    return copies;
}

// A print shop's files and pictures are for no printer of hers.
void note_printer(Job& job, const Render& request, Diagnostics& diagnostics) {
    if (!job.stock.page_per_label && request.format == Format::pdf) {
        job.chosen = choose_printer(job.records.printers, request.printer, job.stock.paper, diagnostics);
        if (job.chosen.printer != nullptr) job.measured = measured_by(*job.chosen.printer, job.records.studio.backs);
    } else if (request.printer.named() && !request.printer.is_none()) {
        const std::string_view what = request.format != Format::pdf ? "a picture"
                                      : job.stock.roll              ? "a roll, and sheets were measured"
                                                                    : "a file for a print shop";
        diagnostics.warning({}, "nothing is corrected for a printer: this is " + std::string{what},
                            "render a PDF on the paper that goes into the printer, or leave --printer away");
    }
}

// The rectangle around all labels of a sheet.
Rect around_labels(const SheetPlan& plan, const Trims& trims) {
    Point least = plan.slots.front().origin;
    Point most = least;
    for (const Slot& slot : plan.slots) {
        const Rect label = place_of(slot, trims[slot.label]);
        least = {smaller(least.x, label.left()), smaller(least.y, label.top())};
        most = {larger(most.x, label.right()), larger(most.y, label.bottom())};
    }
    return {least, {most.x - least.x, most.y - least.y}};
}

// Labels moved towards an edge that the printer leaves white.
void check_reach(const Job& job, Diagnostics& diagnostics) {
    if (job.chosen.printer == nullptr) return;
    for (const SheetPlan& plan : job.plans) {
        const Rect labels = around_labels(plan, job.trims);
        for (const Side side : {Side::front, turning(job.backs, plan.paper).back}) {
            if (side != Side::front && !job.design.back) continue;
            const Misprint misprint = misprint_of(job.measured, passage(side, job.backs, plan.paper));
            check_reach(*job.chosen.printer, misprint, standing(plan.paper).bounds(seen_on(side, labels, plan.paper)),
                        standing_size(plan.paper), diagnostics);
        }
    }
}

void note_backs(Job& job, const Render& request, Diagnostics& diagnostics) {
    if (request.backs && !job.design.back) {
        diagnostics.warning({},
                            "--backs has nothing to turn: the layout " + in_quotes(job.design.name) + " has no back");
    }
    // Whoever takes labels page by page arranges the sheets, and turns them, otherwise than her own printer.
    job.backs = request.backs;
    if (request.backs || job.stock.page_per_label) return;
    const Printer* printer = job.chosen.printer;
    job.backs = printer != nullptr && printer->backs ? printer->backs : job.records.studio.backs;
}

// A back that runs past the edge needs paper there to run on to.
void check_bleed(const Job& job, Diagnostics& diagnostics) {
    if (!job.design.back || job.stock.page_per_label) return;
    for (const Trim& trim : job.trims.kinds()) {
        const Length bleed = bleed_on(job.stock, trim);
        if (!fits(back_play, trim.bleed) || fits(back_play, bleed)) continue;
        diagnostics.warning({},
                            "a back can land " + to_string(back_play) + " off its front, and " +
                                in_quotes(job.stock.name) + " leaves " + to_string(bleed) +
                                " for colours that run past the edge: some backs may show a white rim",
                            "choose a stock with a gap of " + to_string(back_play * 2) + " or more between labels");
        return;
    }
}

int total(const std::vector<int>& copies) {
    return std::accumulate(copies.begin(), copies.end(), 0);
}

// The cells of the last sheet that are used up once it is printed; empty where none is left, or there are no cells.
std::set<int> part_used(const Job& job, const Render& request) {
    if (!job.stock.cells || job.plans.empty()) return {};
    std::set<int> used = job.plans.size() == 1 ? request.used : std::set<int>{};
    for (const Slot& slot : job.plans.back().slots)
        used.insert(slot.number);
    return used.size() < cell_rects(*job.stock.cells).size() ? used : std::set<int>{};
}

// What follows printing where cards are laminated.
std::string laminate_words(const Job& job) {
    const Laminate& laminate = *job.stock.laminate;
    const std::string trim = to_string(laminate.film) + " of film round each";
    if (laminate.one_each) return "cut the cards out, then laminate each in its pouch: " + trim;
    const int sheets = static_cast<int>(laying_sheets(job).size());
    return "cut the cards out, lay them in the pouch on the outlines of the last " +
           (sheets > 1 ? std::to_string(sheets) + " pages" : std::string{"page"}) +
           " (plain paper will do), laminate, trim to " + trim;
}

} // namespace

std::unique_ptr<const Job> prepare(const Render& request, const Library& library, const Date& today,
                                   Diagnostics& diagnostics) {
    const auto sound = [&] { return diagnostics.errors() == 0; };
    auto records = read_studio(request.folder, diagnostics);
    Typesetter typesetter{font_folders(library), diagnostics};
    if (!records || typesetter.families().empty()) return nullptr;
    auto design = find_layout(request.layout, library, typesetter.families(), diagnostics);
    if (!design) return nullptr;
    auto stock = stock_for(request, *design, library, diagnostics);
    auto languages = languages_of(*records, library, diagnostics);
    if (stock && stock->roll && design->back) {
        diagnostics.error({},
                          "the layout " + in_quotes(design->name) + " has a front and a back, and the roll " +
                              in_quotes(stock->name) + " is printed on one side",
                          "choose a layout without a back, or sheets to print it on (`dyeleaf stocks` lists them)");
    }
    if (!stock || !languages || !sound()) return nullptr;

    auto job = std::make_unique<Job>(
        Job{std::move(*records), std::move(typesetter), std::move(*design), std::move(*stock), std::move(*languages)});
    const Printing printing = job->languages.printing(today, request.ink);
    if (request.printed_by) job->printed_by = read_printer_profile(*request.printed_by, diagnostics);
    note_printer(*job, request, diagnostics);
    note_backs(*job, request, diagnostics);
    job->items = make_items(job->records, job->design.items, job->design.grouping, Selection{request.only}, printing,
                            diagnostics);
    if (job->items.empty() && sound()) {
        const std::string kind{record_of(job->design.items)};
        diagnostics.error({}, "there are no " + kind + " in " + in_quotes(request.folder.home.string()) + " to print",
                          "the layout " + in_quotes(job->design.name) + " is made for " + kind);
    }
    job->trims = trims_of(job->design, job->items, diagnostics);
    // A picture for the screen shows the label as it will be cut.
    if (request.format != Format::pdf && job->stock.page_per_label && !job->stock.page_marks) {
        for (Trim& trim : job->trims.kinds())
            trim.bleed = {};
    }
    if (!sound()) return nullptr;
    if (request.changed || request.remember) compare_with_note(*job, request, today, diagnostics);
    job->copies = copies_of(*job, request, printing, diagnostics);
    if (!sound()) return nullptr;
    job->plans = plan(*job, request, library, diagnostics);
    if (!sound()) return nullptr;
    check_bleed(*job, diagnostics);
    check_reach(*job, diagnostics);
    if (!request.used.empty()) {
        diagnostics.warning({},
                            "a sheet that has been through a laser printer once should not go through again: labels "
                            "can come off inside it; use an inkjet for a part-used sheet");
    }
    return job;
}

std::vector<std::size_t> laying_sheets(const Job& job) {
    if (!job.stock.laminate || job.stock.laminate->one_each) return {};
    return sheets_to_lay(job.plans, job.trims);
}

std::string count_labels(const Job& job, int labels) {
    const Noun noun = product_of(job.design.items);
    return counted(labels, noun.one, noun.many);
}

std::string count_labels(const Job& job) {
    return count_labels(job, total(job.copies));
}

std::string summary(const Job& job) {
    if (job.plans.empty()) return "nothing to print";
    std::string text = count_labels(job) + " on " + counted(static_cast<int>(job.plans.size()), "sheet", "sheets");
    if (job.design.back && !job.stock.page_per_label) {
        text += ", front and back";
        if (!is_by_hand(job.backs)) text += ", " + turning_words(job.backs, job.plans.front().paper, job.plans.size());
    }
    return text + " (" + job.stock.name + ")";
}

std::vector<std::string> remarks(const Job& job, const Render& request) {
    std::vector<std::string> lines;
    if (job.printed_by) {
        lines.push_back("in the colours that " + in_quotes(request.printed_by->filename().string()) +
                        " makes of them, sent with relative colorimetric and black point compensation: a proof for the "
                        "screen, not for printing");
    }
    if (job.design.back && is_by_hand(job.backs) && !job.plans.empty())
        lines.push_back(turning_words(job.backs, job.plans.front().paper, job.plans.size()));
    if (job.stock.laminate && !job.plans.empty()) lines.push_back(laminate_words(job));
    if (!job.chosen.remark.empty()) lines.push_back(job.chosen.remark);
    if (job.chosen.printer != nullptr && !job.plans.empty()) {
        const Size paper = job.plans.front().paper;
        std::optional<Passage> back;
        if (job.design.back) back = passage(turning(job.backs, paper).back, job.backs, paper);
        lines.push_back(correction_words(*job.chosen.printer, job.measured, back));
    }
    if (const auto used = part_used(job, request); !used.empty()) {
        const auto left = cell_rects(*job.stock.cells).size() - used.size();
        lines.push_back("the last sheet then has " + counted(static_cast<int>(left), "free cell", "free cells") +
                        ": use it next time with --used " + cell_list(used));
    }
    if (request.changed) {
        lines.push_back(count_labels(job, job.unchanged) + " left out: unchanged since last remembered" +
                        (request.remember || job.plans.empty()
                             ? ""
                             : "; once these are printed, give the same command with --remember"));
    }
    return lines;
}

} // namespace dyeleaf
