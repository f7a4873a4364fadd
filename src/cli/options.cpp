#include "cli/options.h"

#include "base/nearest.h"
#include "base/number.h"
#include "base/words.h"
#include "sheets/used_cells.h"

#include <CLI/CLI.hpp>

namespace dyeleaf {

namespace {

// Everything as it was typed; `CLI` sorts it, the checks below say what is wrong in the dyer's words.
struct Typed {
    std::string layout, folder, output, stock, date, id, profile, printed_by;
    std::vector<std::string> also_read, only, copies;
    std::string used, backs, printer, tray;
    std::string paper = "A4";
    bool corrected = false;
    std::string dye, depth, base, speckles, most = "5";
    Wishes wishes;
    std::string skip = "0", dpi = "300";
    bool mono = false, save_ink = false, piles = false, changed = false, remember = false;
};

constexpr std::string_view examples = R"(Examples:
  dyeleaf new my-studio                                      copy an example to start from
  dyeleaf check my-studio                                    look for mistakes in your records
  dyeleaf render dye-card my-studio -o cards.pdf             a reference card for each dye
  dyeleaf render hang-tag my-studio -o tags.pdf --only 26-117
  dyeleaf proof hang-tag my-studio                           what would be printed where, before paper is spent
  dyeleaf measure my-studio -o measure.pdf                   a sheet to measure your printer by
  dyeleaf facts my-studio sloe                               all that follows from one record
  dyeleaf lot my-studio                                      the next free lot code, with lines to fill in
  dyeleaf compare my-studio                                  how far lots of one colourway differ
  dyeleaf gamut my-studio --profile my-printer.icc           which colours your printer cannot print
  dyeleaf near my-studio sloe                                which dyes come nearest to one
  dyeleaf layouts                                            the layouts there are
  dyeleaf stocks my-studio -o stocks.pdf                     the papers there are, and yours, drawn small

`dyeleaf render --help` tells all that render can do.)";

constexpr std::string_view render_examples = R"(Examples:
  dyeleaf render dye-card my-studio -o cards.pdf
  dyeleaf render hang-tag my-studio -o tags.pdf --only 26-117:3-5
  dyeleaf render jar-lid my-studio -o lids.pdf --stock letter-card
  dyeleaf render jar-lid my-studio -o lids.pdf --copies 2 --copies sloe-shaker=4
  dyeleaf render hang-tag my-studio -o tags.pdf --stock a4-3x3-54x86 --used 1-4,7
  dyeleaf render dye-card my-studio -o cards.pdf --changed --remember

--only takes what `dyeleaf list` shows: an id, a dye's code or line (for jars too), a lot's colourway or base, or some
skeins of a lot (26-117:3-5). Several --only add up.

Cells are counted row by row from the top left, on the first sheet. --remember notes in printed.txt beside your records
how each label on these sheets looks; --changed leaves out those that still look so. `dyeleaf proof` takes the same
options and shows what would be printed where, with every warning.)";

CLI::App& add_command(CLI::App& program, const std::string& name, const std::string& about) {
    CLI::App& command = *program.add_subcommand(name, about);
    command.allow_extras();
    return command;
}

void add_folder(CLI::App& command, Typed& typed, const std::string& about) {
    command.add_option("FOLDER", typed.folder, about)->option_text(" ");
}

// The folder of a studio, and how far what lies in it may lead.
void add_studio(CLI::App& command, Typed& typed, const std::string& about) {
    add_folder(command, typed, about);
    command
        .add_option("--also-read", typed.also_read,
                    "let pictures and links of these records lead into this folder too; may be given several times")
        ->option_text("FOLDER")
        ->allow_extra_args(false);
}

void add_date(CLI::App& command, std::string& date) {
    command.add_option("--date", date, "the day to take for today")->option_text("YYYY-MM-DD");
}

void add_layout(CLI::App& command, Typed& typed, const std::string& records) {
    command.add_option("LAYOUT", typed.layout, "the name of a layout (see `dyeleaf layouts`), or a layout file")
        ->option_text(" ");
    add_studio(command, typed, records);
}

void add_backs(CLI::App& command, Typed& typed) {
    command.add_option("--backs", typed.backs, "how the paper is turned for its back, instead of what the studio says")
        ->option_text("long-edge|short-edge|by-hand|by-hand-reversed");
}

void add_printer(CLI::App& command, Typed& typed, const std::string& about) {
    command.add_option("--printer", typed.printer, about)->option_text("NAME");
    command.add_option("--tray", typed.tray, "and this tray of it")->option_text("NAME");
}

// Which labels go where on which sheets.
void add_sheets(CLI::App& command, Typed& typed) {
    command.add_option("--only", typed.only, "print these only; may be given several times")
        ->option_text("ID")
        ->allow_extra_args(false);
    command.add_flag("--changed", typed.changed, "print only what looks otherwise than when last remembered");
    command.add_option("--copies", typed.copies, "print each label N times, or this one; may be given several times")
        ->option_text("N|ID=N")
        ->allow_extra_args(false);
    command.add_option("--stock", typed.stock, "the paper to print on (see `dyeleaf stocks`)")->option_text("NAME");
    command.add_option("--used", typed.used, "cells of a part-used sheet to leave free")->option_text("1-4,7");
    command.add_option("--skip", typed.skip, "leave the first N cells free: short for --used 1-N")->option_text("N");
    command.add_flag("--piles", typed.piles,
                     "in order down through the sheets: cut all at once, lay the small piles on one another");
    add_backs(command, typed);
    add_printer(command, typed, "correct for this printer of your records; none: for none");
    add_date(command, typed.date);
    command.add_flag("--mono", typed.mono, "in black and greys, for a printer without colour");
    command.add_flag("--save-ink", typed.save_ink, "outlines and patterns in place of solid colour");
}

constexpr std::string_view measure_examples = R"(Examples:
  dyeleaf measure my-studio -o measure.pdf
  dyeleaf measure my-studio -o measure.pdf --printer workroom --tray rear --paper Letter
  dyeleaf measure my-studio -o proof.pdf --printer workroom --corrected

The sheet itself says what to do with it. Its readings go into your records, and from then on render corrects what it
prints for that printer; --corrected prints the sheet so, to see whether all is well now.)";

void add_measure(CLI::App& program, Typed& typed, const std::string& records) {
    CLI::App& measure = add_command(program, "measure", "Make the sheet by which you measure your printer");
    add_studio(measure, typed, records);
    measure.add_option("-o,--output", typed.output, "the file to write")->option_text("FILE.pdf");
    measure.add_option("--paper", typed.paper, "the paper to print it on; A4 if not given")->option_text("NAME");
    add_printer(measure, typed, "the printer to measure, as you call it");
    add_backs(measure, typed);
    measure.add_flag("--corrected", typed.corrected, "corrected for that printer, as a proof");
    measure.footer(std::string{measure_examples});
}

constexpr std::string_view near_examples = R"(Examples:
  dyeleaf near my-studio sloe
  dyeleaf near my-studio F-412 --depth 1% --base plain-sock
  dyeleaf near my-studio sloe --holds-together --speckles soft --in-stock
  dyeleaf near my-studio "Saffron Milk Cap" --line "Fenlight acid" --most 3

Swatches are compared on the same base only, and at like depths: the deeper one no more than a quarter above the paler.
What nobody has tried or recorded passes no --holds-together, --speckles, --in-stock or --class; how many dyes were left
out so is said. “in stock: yes”, “no” or “40 g” stands in a dye's record.)";

void add_near(CLI::App& program, Typed& typed, const std::string& records) {
    CLI::App& find = add_command(program, "near", "Show which dyes come nearest to one, and what speaks for each");
    add_studio(find, typed, records);
    find.add_option("DYE", typed.dye, "the dye to stand in for: its id, code or name")->option_text(" ");
    find.add_option("--depth", typed.depth, "compare at this depth of it; at all if not given")->option_text("2%");
    find.add_option("--base", typed.base, "compare on this base; on all if not given")->option_text("NAME");
    find.add_flag("--holds-together", typed.wishes.holds_together, "only dyes that are known not to break");
    find.add_option("--speckles", typed.speckles, "only dyes that speckle so or better")
        ->option_text("clean|soft|hazy|blotchy");
    find.add_flag("--in-stock", typed.wishes.in_stock, "only dyes that are in stock and not discontinued");
    find.add_option("--line", typed.wishes.line, "only dyes of this line")->option_text("NAME");
    find.add_option("--class", typed.wishes.dye_class, "only dyes of this class")->option_text("NAME");
    find.add_option("--most", typed.most, "show so many; 5 if not given")->option_text("N");
    find.footer(std::string{near_examples});
}

void add_commands(CLI::App& program, Typed& typed) {
    const std::string records = "the folder that holds your records";
    add_folder(add_command(program, "new", "Start a folder of records from an example"), typed, "the folder to make");
    CLI::App& check = add_command(program, "check", "Look for mistakes in your records and layouts");
    add_studio(check, typed, records);
    add_date(check, typed.date);

    CLI::App& render = add_command(program, "render", "Make cards, labels or tags: a file to print");
    add_layout(render, typed, records);
    render.add_option("-o,--output", typed.output, "the file to write; its ending says what it becomes")
        ->option_text("FILE.pdf|.png|.svg");
    add_sheets(render, typed);
    render.add_flag("--remember", typed.remember, "note these labels as printed, for --changed");
    render
        .add_option("--as-printed-by", typed.printed_by,
                    "in the colours that this printer makes: a proof for the screen")
        ->option_text("FILE.icc");
    render.add_option("--dpi", typed.dpi, "dots to the inch of a PNG picture; 300 if not given")->option_text("N");
    render.footer(std::string{render_examples});

    CLI::App& proof =
        add_command(program, "proof", "Show what render would print where, and every warning; writes nothing");
    add_layout(proof, typed, records);
    add_sheets(proof, typed);

    add_measure(program, typed, records);
    add_studio(add_command(program, "list", "Show what your records hold"), typed, records);
    CLI::App& facts = add_command(program, "facts", "Show all that is known and worked out of one record");
    add_studio(facts, typed, records);
    facts.add_option("ID", typed.id, "the record's id (see `dyeleaf list`), or one skein: 26-117:3")->option_text(" ");
    add_date(facts, typed.date);

    CLI::App& lot = add_command(program, "lot", "Show the next free lot code, with lines to copy into your records");
    add_studio(lot, typed, records);
    add_date(lot, typed.date);

    add_studio(add_command(program, "compare", "Show how far lots of one colourway differ"), typed, records);
    CLI::App& gamut = add_command(program, "gamut", "Show what your printer will make of every recorded colour");
    add_studio(gamut, typed, records);
    gamut.add_option("--profile", typed.profile, "the ICC profile of your printer with its paper")
        ->option_text("FILE.icc");
    add_near(program, typed, records);
    add_studio(add_command(program, "layouts", "Show the layouts there are"), typed,
               "also show those in this folder of records");
    CLI::App& stocks = add_command(program, "stocks", "Show the papers and label sheets there are");
    add_studio(stocks, typed, "also show those in this folder of records");
    stocks.add_option("-o,--output", typed.output, "draw them all, small and with their measures")
        ->option_text("FILE.pdf");
}

std::string shown_help(const std::string& command) {
    return "  `dyeleaf " + (command.empty() ? "" : command + " ") + "--help` shows how\n";
}

Misuse misuse(const std::string& command, const std::string& what) {
    return {"dyeleaf: " + what + "\n" + shown_help(command)};
}

// An option without its value, or given twice. `CLI` says "--name: details".
std::string wrong_count(const CLI::ArgumentMismatch& error) {
    const std::string text = error.what();
    const std::string option = text.substr(0, text.find(':'));
    const bool missing = text.find("missing") != std::string::npos;
    return option + (missing ? " needs something after it" : " can be given only once");
}

// What was typed and fits nowhere.
Misuse left_over(const CLI::App& program, const CLI::App* command, const std::string& word) {
    if (command == nullptr) {
        std::vector<std::string> known;
        for (const CLI::App* one : program.get_subcommands([](const CLI::App*) { return true; }))
            known.push_back(one->get_name());
        const std::string kind = word.starts_with('-') ? "option " : "command ";
        return misuse({}, "there is no " + kind + in_quotes(word) +
                              (word.starts_with('-') ? "" : "; " + suggest(word.substr(0, word.find('=')), known)));
    }
    if (!word.starts_with('-')) {
        return misuse(command->get_name(), in_quotes(word) + " is one word too many; a name with spaces in it goes in "
                                                             "quotation marks: \"my studio\"");
    }
    std::vector<std::string> known;
    for (const CLI::Option* option : command->get_options()) {
        if (!option->nonpositional()) continue;
        const std::string& name = option->get_single_name();
        known.push_back((name.size() == 1 ? "-" : "--") + name);
    }
    return misuse(command->get_name(), "there is no option " + in_quotes(word) + " for " + command->get_name() + "; " +
                                           suggest(word.substr(0, word.find('=')), known));
}

struct Range {
    int least, most;
};

std::optional<int> whole(const std::string& text, Range range) {
    const auto value = parse_whole(text);
    if (!value || *value < range.least || *value > range.most) return std::nullopt;
    return value;
}

std::string not_whole(const std::string& option, const std::string& text, Range range) {
    return option + " takes a whole number from " + std::to_string(range.least) + " to " + std::to_string(range.most) +
           ", not " + in_quotes(text);
}

std::optional<Format> format_of(const std::filesystem::path& file) {
    const std::string ending = lower_case(file.extension().string());
    if (ending == ".pdf") return Format::pdf;
    if (ending == ".png") return Format::png;
    if (ending == ".svg") return Format::svg;
    return std::nullopt;
}

std::optional<Date> date_of(const Typed& typed) {
    const auto date = parse_iso_date(typed.date);
    return date && date->day != 0 ? date : std::nullopt;
}

std::string not_a_day(const std::string& text) {
    return "--date takes a day as year-month-day, such as 2026-11-02, not " + in_quotes(text);
}

constexpr Range copies_range = {1, 1000};

// Every --copies into `render`; the complaint, if there is one.
std::optional<std::string> take_copies(const std::vector<std::string>& all, Render& render) {
    bool for_all = false;
    for (const std::string& text : all) {
        const auto equals = text.rfind('=');
        const bool of_one = equals != std::string::npos;
        const std::string number = of_one ? text.substr(equals + 1) : text;
        const auto count = whole(number, copies_range);
        if (!count) return not_whole("--copies", number, copies_range);
        if (of_one && equals == 0) return "--copies needs an id before the =: --copies sloe-shaker=" + number;
        if (of_one) {
            render.copies_of.push_back({text.substr(0, equals), *count});
            continue;
        }
        if (for_all) return "--copies can be given only once without an id; for one label write --copies sloe-shaker=4";
        for_all = true;
        render.copies = *count;
    }
    return std::nullopt;
}

// --skip and --used into `render`; the complaint, if there is one.
std::optional<std::string> take_used(const Typed& typed, Render& render) {
    constexpr Range skip_range = {0, most_cells};
    const auto skip = whole(typed.skip, skip_range);
    if (!skip) return not_whole("--skip", typed.skip, skip_range);
    if (!typed.used.empty()) {
        const auto used = parse_cells(typed.used);
        if (!used) {
            return "--used takes the cells that are used up, counted row by row from 1, such as 1-4,7,12, not " +
                   in_quotes(typed.used);
        }
        render.used = *used;
    }
    for (int cell = 1; cell <= *skip; ++cell)
        render.used.insert(cell);
    return std::nullopt;
}

std::optional<std::string> take_backs(const std::string& text, std::optional<Backs>& wanted) {
    if (text.empty()) return std::nullopt;
    constexpr std::array known = {std::pair{"long-edge", Backs::long_edge}, std::pair{"short-edge", Backs::short_edge},
                                  std::pair{"by-hand", Backs::by_hand},
                                  std::pair{"by-hand-reversed", Backs::by_hand_reversed}};
    std::string word = lower_case(text);
    std::ranges::replace(word, ' ', '-');
    for (const auto& [name, backs] : known) {
        if (word == name) wanted = backs;
    }
    if (wanted) return std::nullopt;
    return "--backs takes long-edge, short-edge, by-hand or by-hand-reversed, not " + in_quotes(text);
}

Reach studio_of(const Typed& typed) {
    return {typed.folder, {typed.also_read.begin(), typed.also_read.end()}};
}

WantedPrinter printer_of(const Typed& typed) {
    const auto name = [](const std::string& text) { return text.empty() ? std::nullopt : std::optional{text}; };
    return {name(typed.printer), name(typed.tray)};
}

// What render and proof have in common.
std::variant<Render, Misuse> read_sheets(const std::string& name, const Typed& typed) {
    Render render{typed.layout, studio_of(typed), typed.output, Format::pdf, typed.only};
    for (const auto& complaint :
         {take_copies(typed.copies, render), take_used(typed, render), take_backs(typed.backs, render.backs)}) {
        if (complaint) return misuse(name, *complaint);
    }
    render.printer = printer_of(typed);
    render.piles = typed.piles;
    render.changed = typed.changed;
    render.remember = typed.remember;
    if (!typed.stock.empty()) render.stock = typed.stock;
    render.date = date_of(typed);
    render.ink = {typed.mono, typed.save_ink};
    return render;
}

std::variant<Command, Answer, Misuse> read_render(const Typed& typed) {
    const std::string name = "render";
    if (typed.layout.empty() || typed.folder.empty()) {
        return misuse(name, "render needs the name of a layout, your folder and a file to write: dyeleaf render "
                            "hang-tag my-studio -o tags.pdf");
    }
    if (typed.output.empty()) return misuse(name, "render needs the file to write: -o tags.pdf");
    const auto format = format_of(typed.output);
    if (!format) {
        return misuse(name, "the file to write ends in .pdf, .png or .svg, and " + in_quotes(typed.output) +
                                " does not: -o tags.pdf");
    }
    constexpr Range dpi_range = {30, 1200};
    const auto dpi = whole(typed.dpi, dpi_range);
    if (!dpi) return misuse(name, not_whole("--dpi", typed.dpi, dpi_range));
    auto read = read_sheets(name, typed);
    if (const auto* wrong = std::get_if<Misuse>(&read)) return *wrong;
    auto& render = std::get<Render>(read);
    render.format = *format;
    if (!typed.printed_by.empty()) render.printed_by = typed.printed_by;
    if (render.printed_by && render.remember)
        return misuse(name, "--remember notes what is printed, and a proof is not printed: leave out one of the two");
    render.dpi = *dpi;
    return Command{std::move(render)};
}

std::variant<Command, Answer, Misuse> read_proof(const Typed& typed) {
    const std::string name = "proof";
    if (typed.layout.empty() || typed.folder.empty())
        return misuse(name, "proof needs the name of a layout and your folder: dyeleaf proof hang-tag my-studio");
    auto read = read_sheets(name, typed);
    if (const auto* wrong = std::get_if<Misuse>(&read)) return *wrong;
    return Command{ShowProof{std::move(std::get<Render>(read))}};
}

std::variant<Command, Answer, Misuse> read_measure(const Typed& typed) {
    const std::string name = "measure";
    if (format_of(typed.output) != Format::pdf)
        return misuse(name,
                      "measure needs the file to write, which ends in .pdf: dyeleaf measure my-studio -o measure.pdf");
    MeasurePrinter measure;
    if (!typed.folder.empty()) measure.folder = studio_of(typed);
    measure.output = typed.output;
    measure.paper = typed.paper;
    measure.printer = printer_of(typed);
    if (measure.printer.is_none())
        return misuse(name, "--printer none means no printer, so none can be called that: --printer workroom");
    measure.corrected = typed.corrected;
    if (const auto complaint = take_backs(typed.backs, measure.backs)) return misuse(name, *complaint);
    if (measure.corrected && !measure.folder)
        return misuse(name,
                      "--corrected needs the folder that holds your records: dyeleaf measure my-studio -o proof.pdf "
                      "--corrected");
    return Command{measure};
}

std::variant<Command, Answer, Misuse> read_facts(const Typed& typed) {
    const std::string name = "facts";
    if (typed.folder.empty() || typed.id.empty())
        return misuse(name, "facts needs your folder and the id of a record: dyeleaf facts my-studio sloe");
    const ShowFacts facts{studio_of(typed), typed.id, date_of(typed)};
    return Command{facts};
}

std::variant<Command, Answer, Misuse> read_gamut(const Typed& typed) {
    if (typed.folder.empty() || typed.profile.empty())
        return misuse("gamut",
                      "gamut needs your folder and the profile of your printer: dyeleaf gamut my-studio --profile "
                      "my-printer.icc");
    return Command{ShowGamut{studio_of(typed), typed.profile}};
}

// "2%" or "2 %".
std::optional<Percent> depth_of(const std::string& text) {
    const std::string_view whole = trimmed(text);
    if (!whole.ends_with('%')) return std::nullopt;
    const auto number = parse_decimal(trimmed(whole.substr(0, whole.size() - 1)));
    return number && *number > 0 ? std::optional{percent(*number)} : std::nullopt;
}

std::optional<std::string> take_speckles(const std::string& text, Wishes& wishes) {
    if (text.empty()) return std::nullopt;
    constexpr std::array known = {std::pair{"clean", SpeckleGrade::clean}, std::pair{"soft", SpeckleGrade::soft},
                                  std::pair{"hazy", SpeckleGrade::hazy}, std::pair{"blotchy", SpeckleGrade::blotchy}};
    for (const auto& [name, grade] : known) {
        if (lower_case(text) == name) wishes.speckles = grade;
    }
    if (wishes.speckles) return std::nullopt;
    return "--speckles takes clean, soft, hazy or blotchy, not " + in_quotes(text);
}

std::variant<Command, Answer, Misuse> read_near(const Typed& typed) {
    const std::string name = "near";
    if (typed.folder.empty() || typed.dye.empty())
        return misuse(name, "near needs your folder and a dye: dyeleaf near my-studio sloe");
    FindSubstitutes find{studio_of(typed), typed.dye};
    if (!typed.depth.empty()) {
        find.depth = depth_of(typed.depth);
        if (!find.depth)
            return misuse(name, "--depth takes a depth with its %, such as 0.5%, not " + in_quotes(typed.depth));
    }
    if (!typed.base.empty()) find.base = typed.base;
    find.wishes = typed.wishes;
    if (const auto complaint = take_speckles(typed.speckles, find.wishes)) return misuse(name, *complaint);
    constexpr Range most_range = {1, 1000};
    const auto most = whole(typed.most, most_range);
    if (!most) return misuse(name, not_whole("--most", typed.most, most_range));
    find.most = *most;
    return Command{std::move(find)};
}

std::variant<Command, Answer, Misuse> read_stocks(const Typed& typed) {
    ShowStocks stocks;
    if (!typed.folder.empty()) stocks.folder = studio_of(typed);
    if (!typed.output.empty()) stocks.output = typed.output;
    if (stocks.output && format_of(*stocks.output) != Format::pdf)
        return misuse("stocks", "stocks draws a PDF, and " + in_quotes(typed.output) + " is none: -o stocks.pdf");
    return Command{std::move(stocks)};
}

std::variant<Command, Answer, Misuse> read_command(const std::string& name, const Typed& typed) {
    if (!typed.date.empty() && !date_of(typed)) return misuse(name, not_a_day(typed.date));
    if (name == "render") return read_render(typed);
    if (name == "proof") return read_proof(typed);
    if (name == "measure") return read_measure(typed);
    if (name == "facts") return read_facts(typed);
    if (name == "gamut") return read_gamut(typed);
    if (name == "near") return read_near(typed);
    const std::optional<Reach> folder = typed.folder.empty() ? std::nullopt : std::optional{studio_of(typed)};
    if (name == "layouts") return Command{ShowLayouts{folder}};
    if (name == "stocks") return read_stocks(typed);
    if (!folder) return misuse(name, name + " needs the name of a folder: dyeleaf " + name + " my-studio");
    if (name == "new") return Command{NewFolder{folder->home}};
    if (name == "check") return Command{CheckFolder{*folder, date_of(typed)}};
    if (name == "lot") return Command{NextLot{*folder, date_of(typed)}};
    if (name == "compare") return Command{CompareLots{*folder}};
    return Command{ListFolder{*folder}};
}

} // namespace

bool WantedPrinter::is_none() const {
    return printer && lower_case(*printer) == "none";
}

std::variant<Command, Answer, Misuse> read_command_line(const std::vector<std::string>& arguments,
                                                        std::string_view version) {
    Typed typed;
    CLI::App program{"Reference cards, shaker-jar labels and skein tags from a dyer's own records.", "dyeleaf"};
    program.set_help_flag("-h,--help", "show this text");
    program.set_version_flag("--version", "dyeleaf " + std::string{version}, "show which dyeleaf this is");
    program.footer(std::string{examples});
    program.allow_extras();
    add_commands(program, typed);
    const auto chosen = [&]() -> const CLI::App* {
        const auto commands = program.get_subcommands();
        return commands.empty() ? nullptr : commands.back();
    };
    try {
        program.parse(std::vector<std::string>(arguments.rbegin(), arguments.rend())); // it pops from the back
    } catch (const CLI::CallForHelp&) {
        return Answer{program.help()};
    } catch (const CLI::CallForVersion& call) {
        return Answer{std::string{call.what()} + "\n"};
    } catch (const CLI::ArgumentMismatch& error) {
        return misuse(chosen() == nullptr ? std::string{} : chosen()->get_name(), wrong_count(error));
    } catch (const CLI::ParseError& error) {
        return misuse(chosen() == nullptr ? std::string{} : chosen()->get_name(), error.what());
    }
    const auto left = program.remaining(true);
    if (!left.empty()) return left_over(program, chosen(), left.front());
    if (chosen() == nullptr) return Misuse{program.help()};
    return read_command(chosen()->get_name(), typed);
}

} // namespace dyeleaf
