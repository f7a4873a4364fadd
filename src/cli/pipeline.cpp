#include "cli/pipeline.h"

#include "base/words.h"
#include "cli/caption.h"
#include "cli/fact_list.h"
#include "cli/page_details.h"
#include "facts/checks.h"
#include "facts/items.h"
#include "facts/wording.h"
#include "finish/finish_pdf.h"
#include "layout/layout.h"
#include "paint/painter.h"
#include "records/read_records.h"
#include "sheets/impose.h"
#include "source/files.h"
#include "text/typesetter.h"

#include <stdexcept>
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
    case ItemKind::dyes:
    case ItemKind::bases: break;
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

std::vector<Trim> trims_of(const Design& design, const std::vector<Item>& items, Diagnostics& diagnostics) {
    std::vector<Trim> trims;
    for (const Item& item : items) {
        if (const auto size = label_size(design, item, diagnostics))
            trims.push_back({*size, design.shape.round, design.shape.corner, design.shape.bleed});
    }
    return trims;
}

// The stocks that would take these labels, for a dyer whose stock does not.
std::vector<std::string> stocks_that_take(const std::vector<Trim>& trims, const Library& library) {
    std::vector<std::string> names;
    for (const LibraryFile& file : find_stocks(library)) {
        Diagnostics unheard;
        const auto stock = read_stock_file(file, unheard);
        if (stock && !plan_sheets(trims, *stock, {}, {}, unheard).empty()) names.push_back(file.name);
    }
    return names;
}

std::vector<SheetPlan> plan(const std::vector<Trim>& trims, const Stock& stock, const Render& request,
                            const Design& design, const Library& library, Diagnostics& diagnostics) {
    Diagnostics planning;
    const Spot at = request.stock ? Spot{} : design.spot;
    auto sheets = plan_sheets(trims, stock, {request.copies, request.skip}, at, planning);
    std::string others;
    if (planning.errors() > 0 && request.skip == 0) {
        const auto names = stocks_that_take(trims, library);
        if (!names.empty()) others = "; these take it: " + joined(names, ", ");
    }
    for (Diagnostic diagnostic : planning.sorted()) {
        if (diagnostic.severity == Severity::error) diagnostic.help += others;
        diagnostics.add(std::move(diagnostic));
    }
    return sheets;
}

// Turns pages into files of one format.
class Press {
  public:
    Press(const Render& request, std::size_t pages) : request_(request), pages_(pages) {
        if (request.format == Format::pdf) pdf_.emplace();
    }

    // `details` tells of a page whose tagged parts it is given.
    void page(const DisplayList& list, const std::function<PdfPage(TaggedPage)>& details) {
        if (pdf_) {
            described_.push_back(details(pdf_->page(list)));
            return;
        }
        files_.push_back({numbered(files_.size() + 1),
                          request_.format == Format::png ? paint_png(list, request_.dpi) : paint_svg(list)});
    }

    std::vector<OutputFile> finish(PdfDetails details) {
        details.pages = std::move(described_);
        if (pdf_) files_.push_back({request_.output, finish_pdf(pdf_->finish(), details)});
        return std::move(files_);
    }

    // The file that would come after the last page; nothing where all pages share one file.
    [[nodiscard]] std::optional<std::filesystem::path> page_after_last() const {
        if (pdf_ || pages_ < 2) return std::nullopt;
        return numbered(pages_ + 1);
    }

  private:
    [[nodiscard]] std::filesystem::path numbered(std::size_t page) const {
        if (pages_ == 1) return request_.output;
        std::filesystem::path path = request_.output;
        path.replace_filename(path.stem().string() + "-" + std::to_string(page) + path.extension().string());
        return path;
    }

    const Render& request_;
    std::size_t pages_;
    std::optional<PdfPainter> pdf_;
    std::vector<PdfPage> described_;
    std::vector<OutputFile> files_;
};

// What a studio's labels are printed in.
struct Languages {
    Language first;
    std::optional<Language> second;

    [[nodiscard]] Printing printing(const Date& today, bool mono) const {
        return {{first, mono}, second ? &*second : nullptr, today};
    }
};

std::optional<Languages> languages_of(const Studio& studio, const Library& library, Diagnostics& diagnostics) {
    auto first =
        studio.language ? find_language(*studio.language, library, diagnostics) : find_english(library, diagnostics);
    std::optional<Language> second;
    if (studio.second_language) second = find_language(*studio.second_language, library, diagnostics);
    if (!first || (studio.second_language && !second)) return std::nullopt;
    return Languages{std::move(*first), std::move(second)};
}

// Backs are mirrored left to right, so the sheet turns about its upright axis: the long edge of one that stands, the
// short edge of one that lies.
bool turns_on_the_short_edge(const SheetPlan& plan) {
    return plan.paper.width > plan.paper.height;
}

// What stands under the test line, short enough to stay within it.
std::string caption_text(const Design& design, std::size_t sheet, std::size_t sheets, Side side, bool short_edge,
                         const Printing& printing) {
    const Language& language = printing.manner.language;
    const std::string place =
        language.say("sheet.place", {{"number", std::to_string(sheet)}, {"count", std::to_string(sheets)}});
    const std::string date = short_date(language, printing.today);
    if (side == Side::front)
        return joined({language.say("sheet.actual size"), shortened(design.name, 30), place, date}, dot);
    const std::string edge = language.say(short_edge ? "sheet.short edge" : "sheet.long edge");
    return joined({language.say("sheet.line"), shortened(design.name, 16),
                   language.say("sheet.back", {{"place", place}, {"edge", edge}}), date},
                  dot);
}

PlacedLabel in_grey(PlacedLabel label) {
    for (auto* side : {&label.front, &label.back}) {
        if (*side) *side = std::make_shared<const DisplayList>(in_grey(**side));
    }
    return label;
}

void warn_of_older_pages(const Press& press, Diagnostics& diagnostics) {
    std::error_code ignored;
    const auto next = press.page_after_last();
    if (!next || !std::filesystem::exists(*next, ignored)) return;
    diagnostics.warning({}, in_quotes(next->string()) + " was there before and is no page of this run",
                        "delete it, and those numbered after it, so that they are not printed by mistake");
}

// Lays out, arranges and paints sheet by sheet, so that memory does not grow with the number of labels. After the
// first error it only goes on looking for more.
void print_sheets(const std::vector<SheetPlan>& plans, const Design& design, const std::vector<Item>& items,
                  const std::vector<Trim>& trims, const Stock& stock, const Typesetter& typesetter,
                  const Printing& printing, const Progress& progress, Press& press, Diagnostics& diagnostics) {
    PlacedLabel label;
    const PrintRun run{plans, items, trims, stock, printing.manner.language, design.back.has_value()};
    std::optional<std::size_t> placed; // which label that is: copies follow one another
    for (std::size_t i = 0; i < plans.size(); ++i) {
        progress(i + 1, plans.size());
        std::vector<std::shared_ptr<const DisplayList>> fronts;
        std::vector<std::shared_ptr<const DisplayList>> backs;
        std::vector<Trim> sheet_trims;
        for (const Slot& slot : plans[i].slots) {
            if (placed != slot.label) {
                const Size size = trims[slot.label].size;
                label = place_label(design, items[slot.label], size, typesetter, diagnostics);
                if (printing.manner.mono) label = in_grey(label);
                placed = slot.label;
            }
            fronts.push_back(label.front);
            backs.push_back(label.back);
            sheet_trims.push_back(trims[slot.label]);
        }
        if (diagnostics.errors() > 0) continue;
        const auto print = [&](const auto& lists, Side side) {
            const std::string text =
                caption_text(design, i + 1, plans.size(), side, turns_on_the_short_edge(plans[i]), printing);
            press.page(compose_sheet(plans[i], lists, sheet_trims, stock, side, set_caption(text, typesetter)),
                       [&](TaggedPage tagged) { return page_details(run, i, side, std::move(tagged)); });
        };
        print(fronts, Side::front);
        if (design.back) print(backs, Side::back);
    }
}

} // namespace

std::optional<Records> read_studio(const std::filesystem::path& folder, Diagnostics& diagnostics) {
    const auto files = read_folder(folder, diagnostics);
    if (files.empty()) return std::nullopt;
    return read_records(files, diagnostics);
}

void check_studio(const Records& records, const Library& library, const Date& today, Diagnostics& diagnostics) {
    languages_of(records.studio, library, diagnostics);
    check_facts(records, today, diagnostics);
}

std::optional<std::string> show_facts(const ShowFacts& request, const Library& library, const Date& today,
                                      Diagnostics& diagnostics) {
    const auto records = read_studio(request.folder, diagnostics);
    if (!records || diagnostics.errors() > 0) return std::nullopt;
    const auto languages = languages_of(records->studio, library, diagnostics);
    if (!languages) return std::nullopt;
    return list_facts(*records, request.id, languages->printing(today, false), diagnostics);
}

void check_own_files(const Library& library, Diagnostics& diagnostics) {
    const Typesetter typesetter{font_folders(library), diagnostics};
    for (const LibraryFile& file : find_stocks(library)) {
        if (file.own) read_stock_file(file, diagnostics);
    }
    for (const LibraryFile& file : find_layouts(library)) {
        if (!file.own) continue;
        const auto design = read_layout_file(file, library, typesetter.families(), diagnostics);
        if (design && !design->stock.empty()) find_stock(design->stock, design->stock_spot, library, diagnostics);
    }
}

std::optional<Rendering> render(const Render& request, const Library& library, const Date& today,
                                const Progress& progress, Diagnostics& diagnostics) {
    const auto sound = [&] { return diagnostics.errors() == 0; };
    const auto records = read_studio(request.folder, diagnostics);
    const Typesetter typesetter{font_folders(library), diagnostics};
    if (!records || typesetter.families().empty()) return std::nullopt;
    const auto design = find_layout(request.layout, library, typesetter.families(), diagnostics);
    if (!design) return std::nullopt;
    const auto stock = stock_for(request, *design, library, diagnostics);
    const auto languages = languages_of(records->studio, library, diagnostics);
    if (!stock || !languages || !sound()) return std::nullopt;

    const Printing printing = languages->printing(today, request.mono);
    const auto items =
        make_items(*records, design->items, design->grouping, Selection{request.only}, printing, diagnostics);
    if (items.empty() && sound()) {
        const std::string kind{record_of(design->items)};
        diagnostics.error({}, "there are no " + kind + " in " + in_quotes(request.folder.string()) + " to print",
                          "the layout " + in_quotes(design->name) + " is made for " + kind);
    }
    auto trims = trims_of(*design, items, diagnostics);
    // A picture for the screen shows the label as it will be cut.
    if (request.format != Format::pdf && stock->page_per_label && !stock->page_marks) {
        for (Trim& trim : trims)
            trim.bleed = {};
    }
    if (!sound()) return std::nullopt;
    const auto plans = plan(trims, *stock, request, *design, library, diagnostics);
    if (!sound()) return std::nullopt;
    if (request.skip > 0) {
        diagnostics.warning({},
                            "a sheet that has been through a laser printer once should not go through again: labels "
                            "can come off inside it; use an inkjet for a part-used sheet");
    }

    const Noun noun = product_of(design->items);
    const std::string labels = counted(static_cast<int>(items.size()) * request.copies, noun.one, noun.many);
    const std::string sheets = counted(static_cast<int>(plans.size()), "sheet", "sheets");
    Rendering rendering;
    rendering.summary = labels + " on " + sheets +
                        (design->back && !stock->page_per_label
                             ? std::string{", front and back, flip on the "} +
                                   (turns_on_the_short_edge(plans.front()) ? "short edge" : "long edge")
                             : "") +
                        " (" + stock->name + ")";
    try {
        Press press{request, plans.size() * (design->back ? 2 : 1)};
        print_sheets(plans, *design, items, trims, *stock, typesetter, printing, progress, press, diagnostics);
        if (!sound()) return std::nullopt;
        warn_of_older_pages(press, diagnostics);
        rendering.files =
            press.finish({design->name + ": " + labels, records->studio.name, languages->first.code(), {}});
    } catch (const std::runtime_error& error) { // of painting and finishing, which do not know the file's name
        diagnostics.error({}, in_quotes(request.output.string()) + " could not be made: " + error.what());
        return std::nullopt;
    }
    return rendering;
}

} // namespace dyeleaf
