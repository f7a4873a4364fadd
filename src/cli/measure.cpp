#include "cli/measure.h"

#include "base/nearest.h"
#include "base/words.h"
#include "calibration/corrected_page.h"
#include "calibration/measuring_sheet.h"
#include "cli/choose_printer.h"
#include "cli/pdf_file.h"
#include "cli/printers.h"
#include "cli/studio.h"
#include "cli/two_sides.h"
#include "sheets/stock.h"
#include "text/typesetter.h"

#include <algorithm>
#include <array>
#include <utility>

namespace dyeleaf {

namespace {

std::optional<Size> paper_for(const std::string& name, Diagnostics& diagnostics) {
    const auto paper = find_paper(name);
    if (!paper) {
        diagnostics.error({}, "there is no paper called " + in_quotes(name), suggest(name, paper_names()));
        return std::nullopt;
    }
    const Size size = standing_size(*paper);
    if (fits(least_measuring_paper.width, size.width) && fits(least_measuring_paper.height, size.height)) return size;
    diagnostics.error({}, "the measuring sheet does not fit on " + in_quotes(name) + ", which is " + measures(size),
                      "measure the tray with A5 paper or larger");
    return std::nullopt;
}

// "a4" as the papers' list has it: "A4".
std::string as_named(const std::string& typed) {
    for (const std::string& name : paper_names()) {
        if (lower_case(name) == lower_case(typed)) return name;
    }
    return typed;
}

// The record that a correction is to prove.
ChosenPrinter printer_to_prove(const MeasurePrinter& request, const Records& records, Size paper,
                               Diagnostics& diagnostics) {
    ChosenPrinter chosen = choose_printer(records.printers, request.printer, paper, diagnostics);
    if (chosen.printer == nullptr && diagnostics.errors() == 0) {
        diagnostics.error({}, chosen.remark.empty() ? "no printer is in your records" : chosen.remark,
                          "print the sheet without --corrected, and write its readings into your records");
    }
    return chosen;
}

// One that is measured once more turns paper as it did before.
const Printer* find_printer(const Records& records, const std::optional<std::string>& name) {
    const auto has_name = [&](const Printer& one) { return name && lower_case(one.name.value) == lower_case(*name); };
    const auto found = std::ranges::find_if(records.printers, has_name);
    return found == records.printers.end() ? nullptr : &*found;
}

Backs backs_for(const MeasurePrinter& request, const Printer* known, const Studio& studio) {
    if (request.backs) return *request.backs;
    if (known != nullptr && known->backs) return *known->backs;
    return studio.backs.value_or(Backs::long_edge);
}

MeasuringSheet describe(const MeasurePrinter& request, const Printer* known, Size size, Backs backs) {
    MeasuringSheet sheet{as_named(request.paper), size};
    sheet.passage = passage(turning(backs, size).back, backs, size);
    sheet.backs = name_of(backs);
    sheet.printer = known == nullptr ? request.printer.printer.value_or("") : known->name.value;
    sheet.tray = request.printer.tray.value_or("");
    sheet.proof = request.corrected;
    return sheet;
}

PendingFile as_pdf(const std::filesystem::path& target, const std::array<DisplayList, 2>& pages,
                   const Language& language, const std::string& author) {
    PdfFile pdf{target};
    for (std::size_t i = 0; i < pages.size(); ++i) {
        const std::string label = language.say(i == 0 ? "sheet.front page" : "sheet.back page", {{"number", "1"}});
        pdf.page(pages.at(i), [&](TaggedPage tagged) {
            return PdfPage{{{}, pages.at(i).size}, {}, label, {}, std::move(tagged)};
        });
    }
    return pdf.finish({language.say("measuring.title"), author, language.code()});
}

} // namespace

std::optional<Rendering> measure(const MeasurePrinter& request, const Library& library, Diagnostics& diagnostics) {
    std::optional<Records> records = Records{};
    if (request.folder) records = read_studio(*request.folder, diagnostics);
    const Typesetter typesetter{font_folders(library), diagnostics};
    const auto size = paper_for(request.paper, diagnostics);
    if (!records || !size || diagnostics.errors() > 0) return std::nullopt;
    const auto languages = languages_of(*records, library, diagnostics);
    ChosenPrinter proved;
    if (request.corrected) proved = printer_to_prove(request, *records, *size, diagnostics);
    if (!languages || diagnostics.errors() > 0) return std::nullopt;

    const Printer* known = request.corrected ? proved.printer : find_printer(*records, request.printer.printer);
    const Backs backs = backs_for(request, known, records->studio);
    const MeasuringSheet sheet = describe(request, known, *size, backs);
    std::array pages = {draw_measuring_front(sheet, languages->first, typesetter),
                        draw_measuring_back(sheet, languages->first, typesetter)};
    Rendering rendering;
    rendering.summary = "a measuring sheet for " + sheet.paper + ", front and back, " + turning_words(backs, *size, 1);
    if (proved.printer != nullptr) {
        const Measured measured = measured_by(*proved.printer, records->studio.backs);
        pages[0] = corrected(std::move(pages[0]), misprint_of(measured, Passage::front));
        pages[1] = corrected(std::move(pages[1]), misprint_of(measured, sheet.passage));
        rendering.remarks.push_back(correction_words(*proved.printer, measured, sheet.passage));
    }
    rendering.files.push_back(as_pdf(request.output, pages, languages->first, records->studio.name));
    return rendering;
}

} // namespace dyeleaf
