#include "cli/pipeline.h"

#include "base/words.h"
#include "calibration/corrected_page.h"
#include "cli/caption.h"
#include "cli/fact_list.h"
#include "cli/job.h"
#include "cli/page_details.h"
#include "cli/pdf_file.h"
#include "cli/printed_note.h"
#include "cli/printers.h"
#include "cli/studio.h"
#include "cli/two_sides.h"
#include "colour/spaces.h"
#include "display/recolour.h"
#include "facts/checks.h"
#include "facts/wording.h"
#include "layout/layout.h"
#include "paint/painter.h"
#include "sheets/impose.h"
#include "sheets/pouch.h"
#include "text/typesetter.h"

#include <map>
#include <memory>
#include <stdexcept>
#include <utility>

namespace dyeleaf {

namespace {

// Turns pages into files of one format.
class Press {
  public:
    Press(const Render& request, std::size_t pages) : request_(request), pages_(pages) {
        if (request.format == Format::pdf) pdf_ = std::make_unique<PdfFile>(request.output);
    }

    // `describe` tells of a page whose tagged parts it is given.
    void page(const DisplayList& list, const std::function<PdfPage(TaggedPage)>& describe) {
        if (pdf_) return pdf_->page(list, describe);
        PendingFile& file = files_.emplace_back(numbered(files_.size() + 1));
        file.write(request_.format == Format::png ? paint_png(list, request_.dpi) : paint_svg(list));
        file.complete();
    }

    std::vector<PendingFile> finish(const PdfDetails& details) {
        if (pdf_) files_.push_back(pdf_->finish(details));
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
    std::unique_ptr<PdfFile> pdf_;
    std::vector<PendingFile> files_;
};

// What stands under the test line, short enough to stay within it.
std::string caption_text(const Job& job, std::size_t sheet, Side side, bool short_edge, const Printing& printing) {
    const Design& design = job.design;
    const Language& language = printing.manner.language;
    const std::string place =
        language.say("sheet.place", {{"number", std::to_string(sheet)}, {"count", std::to_string(job.plans.size())}});
    const std::string date = short_date(language, printing.today);
    if (side == Side::front)
        return joined({language.say(job.printed_by ? "sheet.colour proof" : "sheet.actual size"),
                       shortened(design.name, 30), place, date},
                      dot);
    const std::string edge = language.say(short_edge ? "sheet.short edge" : "sheet.long edge");
    return joined({language.say("sheet.line"), shortened(design.name, 16),
                   language.say("sheet.back", {{"place", place}, {"edge", edge}}), date},
                  dot);
}

// A label as the ink there is makes it, or for a proof as a printer's inks do.
PlacedLabel as_inked(PlacedLabel label, const Job& job, bool mono) {
    const auto printed = [&](Rgb sent) { return to_rgb(job.printed_by->printed(to_lab(sent))).colour; };
    for (auto* side : {&label.front, &label.back}) {
        if (!*side) continue;
        if (mono) *side = std::make_shared<const DisplayList>(in_grey(**side));
        if (job.printed_by) *side = std::make_shared<const DisplayList>(recoloured(**side, printed));
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

// Labels as they are needed, each laid out once and kept until its last copy is printed.
class LabelMaker {
  public:
    LabelMaker(const Job& job, bool mono, Diagnostics& diagnostics)
        : job_(job), mono_(mono), diagnostics_(diagnostics), to_come_(job.copies) {}

    PlacedLabel take(std::size_t index) {
        const auto [found, is_new] = made_.try_emplace(index);
        if (is_new) {
            const Trim& trim = job_.trims[index];
            found->second = as_inked(
                place_label(job_.design, job_.items[index], {trim.size, trim.sector}, job_.typesetter, diagnostics_),
                job_, mono_);
        }
        PlacedLabel label = found->second;
        if (--to_come_[index] == 0) made_.erase(found);
        return label;
    }

  private:
    const Job& job_;
    bool mono_;
    Diagnostics& diagnostics_;
    std::vector<int> to_come_; // copies of each
    std::map<std::size_t, PlacedLabel> made_;
};

// A page of this sheet as the chosen printer is to get it.
DisplayList for_printer(const Job& job, DisplayList page, std::size_t sheet, Side side) {
    if (job.chosen.printer == nullptr) return page;
    const Passage how = passage(side, job.backs, job.plans[sheet].paper);
    return corrected(std::move(page), misprint_of(job.measured, how));
}

// Lays out, arranges and paints sheet by sheet, so that memory does not grow with the number of labels. After the
// first error it only goes on looking for more.
void print_sheets(const Job& job, const Printing& printing, const Progress& progress, Press& press,
                  Diagnostics& diagnostics) {
    LabelMaker labels{job, printing.manner.ink.mono, diagnostics};
    const PrintRun run{
        job.plans, job.items, job.trims, job.stock, printing.manner.language, job.design.back.has_value()};
    const auto print = [&](DisplayList composed, std::size_t sheet, Side side) {
        const DisplayList page = for_printer(job, std::move(composed), sheet, side);
        press.page(page,
                   [&](TaggedPage tagged) { return page_details(run, sheet, side, page.size, std::move(tagged)); });
    };
    std::vector<DisplayList> backs; // that wait until all fronts are printed
    for (std::size_t i = 0; i < job.plans.size(); ++i) {
        progress(i + 1, job.plans.size());
        const SheetPlan& plan = job.plans[i];
        const Turning turn = turning(job.backs, plan.paper);
        std::vector<std::shared_ptr<const DisplayList>> fronts;
        std::vector<std::shared_ptr<const DisplayList>> behind;
        std::vector<Trim> trims;
        for (const Slot& slot : plan.slots) {
            const PlacedLabel label = labels.take(slot.label);
            fronts.push_back(label.front);
            behind.push_back(label.back);
            trims.push_back(job.trims[slot.label]);
        }
        if (diagnostics.errors() > 0) continue;
        const auto composed = [&](const auto& lists, Side side) {
            const std::string text = caption_text(job, i + 1, side, turn.short_edge, printing);
            return compose_sheet(plan, lists, trims, job.stock, side, set_caption(text, job.typesetter));
        };
        print(composed(fronts, Side::front), i, Side::front);
        if (!job.design.back) continue;
        DisplayList back = composed(behind, turn.back);
        if (is_by_hand(job.backs)) {
            backs.push_back(std::move(back));
        } else {
            print(std::move(back), i, turn.back);
        }
    }
    for (std::size_t i = 0; i < backs.size(); ++i) {
        const std::size_t sheet = job.backs == Backs::by_hand_reversed ? backs.size() - 1 - i : i;
        print(std::move(backs[sheet]), sheet, turning(job.backs, job.plans[sheet].paper).back);
    }
}

// A sheet of its own, after all others, for every way in which cards lie in their pouches.
void print_laying_sheets(const Job& job, const Language& language, Press& press) {
    for (const std::size_t sheet : laying_sheets(job)) {
        const SheetPlan& plan = job.plans[sheet];
        std::vector<DisplayList> numbers;
        std::vector<Trim> trims;
        for (const Slot& slot : plan.slots) {
            numbers.push_back(set_caption(std::to_string(slot.number), job.typesetter, pt(20)));
            trims.push_back(job.trims[slot.label]);
        }
        const std::string words = joined({language.say("sheet.line"), language.say("sheet.lay")}, dot);
        const DisplayList page =
            for_printer(job, compose_laying_sheet(plan, numbers, trims, job.stock, set_caption(words, job.typesetter)),
                        sheet, Side::front);
        press.page(page, [&](TaggedPage tagged) {
            return PdfPage{{{}, page.size}, {}, language.say("sheet.lay page"), {}, std::move(tagged)};
        });
    }
}

} // namespace

void check_studio(const Records& records, const Library& library, const Date& today, Diagnostics& diagnostics) {
    languages_of(records, library, diagnostics);
    check_facts(records, today, diagnostics);
}

std::optional<std::string> show_facts(const ShowFacts& request, const Library& library, const Date& today,
                                      Diagnostics& diagnostics) {
    const auto records = read_studio(request.folder, diagnostics);
    if (!records || diagnostics.errors() > 0) return std::nullopt;
    const auto languages = languages_of(*records, library, diagnostics);
    if (!languages) return std::nullopt;
    return list_facts(*records, request.id, languages->printing(today, {}), diagnostics);
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
    const auto job = prepare(request, library, today, diagnostics);
    if (!job) return std::nullopt;
    Rendering rendering;
    rendering.summary = summary(*job);
    rendering.remarks = remarks(*job, request);
    if (job->plans.empty()) return rendering;
    try {
        Press press{request, job->plans.size() * (job->design.back ? 2 : 1) + laying_sheets(*job).size()};
        print_sheets(*job, job->languages.printing(today, request.ink), progress, press, diagnostics);
        if (diagnostics.errors() > 0) return std::nullopt;
        print_laying_sheets(*job, job->languages.first, press);
        warn_of_older_pages(press, diagnostics);
        rendering.files = press.finish(
            {job->design.name + ": " + count_labels(*job), job->records.studio.name, job->languages.first.code()});
    } catch (const std::runtime_error& error) { // of painting and finishing, which do not know the file's name
        diagnostics.error({}, in_quotes(request.output.string()) + " could not be made: " + error.what());
        return std::nullopt;
    }
    if (!job->note.empty()) rendering.note = PrintedNoteFile{note_file(request.folder.home), job->note};
    return rendering;
}

} // namespace dyeleaf
