#include "cli/commands.h"

#include "base/controls.h"
#include "base/overloaded.h"
#include "base/words.h"
#include "cli/charted_stocks.h"
#include "cli/check_folder.h"
#include "cli/compare.h"
#include "cli/gamut.h"
#include "cli/library.h"
#include "cli/measure.h"
#include "cli/new_folder.h"
#include "cli/next_lot.h"
#include "cli/overview.h"
#include "cli/photo_list.h"
#include "cli/pipeline.h"
#include "cli/printer_profile.h"
#include "cli/proof.h"
#include "cli/report.h"
#include "cli/studio.h"
#include "cli/substitutes.h"
#include "cli/today.h"
#include "cli/unprintable_list.h"
#include "finish/write_file.h"

#include <ostream>
#include <utility>

namespace dyeleaf {

namespace {

struct Session {
    const Surroundings& surroundings;
    std::ostream& out;
    std::ostream& err;
    Diagnostics diagnostics = {};

    [[nodiscard]] Library library(const std::optional<Reach>& folder) const { return {surroundings.data, folder}; }
    // Says what is wrong, if anything.
    int finish() {
        err << describe_all(diagnostics);
        return diagnostics.errors() > 0 ? problems_found : all_well;
    }
};

int run_new(const NewFolder& command, Session& session) {
    const auto made =
        make_folder(command.folder, session.surroundings.data / "examples" / "starter", session.diagnostics);
    if (session.diagnostics.errors() == 0) {
        const std::string folder = as_typed(command.folder.string());
        session.out << "Made:\n";
        for (const auto& file : made)
            session.out << "  " << with_controls_shown(file.string()) << "\n";
        session.out << "Open these files in a text editor and change them to your own records. Then:\n"
                    << "  dyeleaf check " << folder << "\n"
                    << "  dyeleaf render dye-card " << folder << " -o cards.pdf\n";
    }
    return session.finish();
}

int run_check(const CheckFolder& command, Session& session) {
    const auto records = read_studio(command.folder, session.diagnostics);
    const Library library = session.library(command.folder);
    const auto date = today(command.date, session.surroundings.source_date_epoch, session.diagnostics);
    if (records && date && session.diagnostics.errors() == 0)
        check_studio(*records, library, *date, session.diagnostics);
    check_own_files(library, session.diagnostics);
    const int status = session.finish();
    if (records) session.out << count_records(*records) << ": " << count_problems(session.diagnostics) << "\n";
    if (records && status == all_well)
        session.out << list_photo_colours(*records) << list_unprintable_colours(*records)
                    << "whether everything fits its label is checked when you render it\n";
    return status;
}

// Writes what was made and says so; nothing made: says that nothing was written.
int put_in_place(std::optional<Rendering> rendering, Session& session) {
    const Diagnostics& diagnostics = session.diagnostics;
    const int status = session.finish();
    if (!rendering) {
        session.err << count_problems(diagnostics) << ": nothing was written\n";
        return status;
    }
    session.out << rendering->summary;
    if (diagnostics.warnings() > 0) session.out << ", " << count_problems(diagnostics);
    session.out << "\n";
    for (const std::string& remark : rendering->remarks)
        session.out << remark << "\n";
    session.out << std::flush;

    Diagnostics writing;
    for (PendingFile& file : rendering->files) {
        if (!file.put_in_place(writing)) break;
        session.out << "wrote " << with_controls_shown(file.target().string()) << "\n";
    }
    // Only what is whole on the disk may be remembered as printed.
    const auto& note = rendering->note;
    if (note && writing.errors() == 0 && write_file(note->path, note->text, writing))
        session.out << "remembered in " << with_controls_shown(note->path.string()) << "\n";
    session.err << describe_all(writing);
    return writing.errors() > 0 ? problems_found : status;
}

int run_measure(const MeasurePrinter& command, Session& session) {
    return put_in_place(measure(command, session.library(command.folder), session.diagnostics), session);
}

int run_render(const Render& command, Session& session) {
    Diagnostics& diagnostics = session.diagnostics;
    const auto date = today(command.date, session.surroundings.source_date_epoch, diagnostics);
    std::optional<Rendering> rendering;
    if (date) {
        ProgressLine line{session.err, session.surroundings.errors_on_terminal};
        const auto progress = [&](std::size_t sheet, std::size_t sheets) {
            line.show("sheet " + std::to_string(sheet) + " of " + std::to_string(sheets));
        };
        rendering = render(command, session.library(command.folder), *date, progress, diagnostics);
    }
    return put_in_place(std::move(rendering), session);
}

int run_proof(const ShowProof& command, Session& session) {
    Diagnostics& diagnostics = session.diagnostics;
    const auto date = today(command.sheets.date, session.surroundings.source_date_epoch, diagnostics);
    std::optional<std::string> list;
    if (date) list = proof(command.sheets, session.library(command.sheets.folder), *date, diagnostics);
    const int status = session.finish();
    if (list) session.out << *list;
    return status;
}

int run_list(const ListFolder& command, Session& session) {
    const auto records = read_studio(command.folder, session.diagnostics);
    const auto english = find_english(session.library(command.folder), Statements::wanted, session.diagnostics);
    const int status = session.finish();
    // Records with errors may refer to others that are not there.
    if (records && status == all_well) session.out << list_records(*records, *english);
    if (records && status != all_well) session.err << "nothing is listed before the errors are put right\n";
    return status;
}

int run_compare(const CompareLots& command, Session& session) {
    const auto records = read_studio(command.folder, session.diagnostics);
    const int status = session.finish();
    if (records && status == all_well) session.out << compare_lots(*records);
    if (records && status != all_well) session.err << "nothing is compared before the errors are put right\n";
    return status;
}

int run_gamut(const ShowGamut& command, Session& session) {
    const auto records = read_studio(command.folder, session.diagnostics);
    const auto printer = read_printer_profile(command.profile, session.diagnostics);
    const int status = session.finish();
    if (records && printer && status == all_well) session.out << show_gamut(*records, *printer);
    return status;
}

int run_near(const FindSubstitutes& command, Session& session) {
    const auto records = read_studio(command.folder, session.diagnostics);
    const auto english = find_english(session.library(command.folder), Statements::wanted, session.diagnostics);
    std::optional<std::string> list;
    const bool sound = records && session.diagnostics.errors() == 0;
    if (sound) list = list_substitutes(command, *records, *english, session.diagnostics);
    const int status = session.finish();
    if (list) session.out << *list;
    if (records && !sound) session.err << "nothing is compared before the errors are put right\n";
    return status;
}

int run_lot(const NextLot& command, Session& session) {
    const auto day = today(command.date, session.surroundings.source_date_epoch, session.diagnostics);
    const auto records = read_studio(command.folder, session.diagnostics);
    // What could not be read may hold the highest number.
    const bool sound = records && day && session.diagnostics.errors() == 0;
    const std::string lot = sound ? next_lot(*records, *day, session.diagnostics) : std::string{};
    session.out << lot;
    const int status = session.finish();
    if (!sound) session.err << "no code is given out before the errors are put right\n";
    return status;
}

int run_facts(const ShowFacts& command, Session& session) {
    const auto date = today(command.date, session.surroundings.source_date_epoch, session.diagnostics);
    std::optional<std::string> facts;
    if (date) facts = show_facts(command, session.library(command.folder), *date, session.diagnostics);
    const int status = session.finish();
    if (facts && status == all_well) session.out << *facts;
    return status;
}

// A folder that was named must be there; none named means the bundled ones alone.
bool is_there(const std::optional<Reach>& folder, Diagnostics& diagnostics) {
    std::error_code ignored;
    if (!folder || std::filesystem::is_directory(folder->home, ignored)) return true;
    diagnostics.error({}, "there is no folder " + in_quotes(folder->home.string()), "check its name");
    return false;
}

int run_layouts(const ShowLayouts& command, Session& session) {
    if (!is_there(command.folder, session.diagnostics)) return session.finish();
    session.out << list_layouts(session.library(command.folder), session.diagnostics);
    return session.finish();
}

int run_stocks(const ShowStocks& command, Session& session) {
    if (!is_there(command.folder, session.diagnostics)) return session.finish();
    const Library library = session.library(command.folder);
    if (command.output) return put_in_place(chart_stocks(command, library, session.diagnostics), session);
    session.out << list_stocks(library, session.diagnostics);
    return session.finish();
}

const Reach* studio_of(const Command& command) {
    const auto given = [](const std::optional<Reach>& folder) { return folder ? &*folder : nullptr; };
    return std::visit(Overloaded{[](const auto& one) -> const Reach* { return &one.folder; },
                                 [](const NewFolder&) -> const Reach* { return nullptr; },
                                 [](const ShowProof& one) -> const Reach* { return &one.sheets.folder; },
                                 [&](const MeasurePrinter& one) -> const Reach* { return given(one.folder); },
                                 [&](const ShowLayouts& one) -> const Reach* { return given(one.folder); },
                                 [&](const ShowStocks& one) -> const Reach* { return given(one.folder); }},
                      command);
}

} // namespace

int run(const Command& command, const Surroundings& surroundings, std::ostream& out, std::ostream& err) {
    Session session{surroundings, out, err};
    // Nothing is read where something would be read that lies elsewhere.
    if (const Reach* studio = studio_of(command)) check_folder(*studio, session.diagnostics);
    if (session.diagnostics.errors() > 0) return session.finish();
    return std::visit(Overloaded{[&](const NewFolder& one) { return run_new(one, session); },
                                 [&](const CheckFolder& one) { return run_check(one, session); },
                                 [&](const Render& one) { return run_render(one, session); },
                                 [&](const MeasurePrinter& one) { return run_measure(one, session); },
                                 [&](const ShowProof& one) { return run_proof(one, session); },
                                 [&](const ListFolder& one) { return run_list(one, session); },
                                 [&](const NextLot& one) { return run_lot(one, session); },
                                 [&](const CompareLots& one) { return run_compare(one, session); },
                                 [&](const ShowGamut& one) { return run_gamut(one, session); },
                                 [&](const FindSubstitutes& one) { return run_near(one, session); },
                                 [&](const ShowFacts& one) { return run_facts(one, session); },
                                 [&](const ShowLayouts& one) { return run_layouts(one, session); },
                                 [&](const ShowStocks& one) { return run_stocks(one, session); }},
                      command);
}

} // namespace dyeleaf
