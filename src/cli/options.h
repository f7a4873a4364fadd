// What was asked for on the command line.
#pragma once

#include "base/date.h"
#include "base/ink.h"
#include "base/reach.h"
#include "facts/substitutes.h"
#include "records/records.h"

#include <filesystem>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace dyeleaf {

enum class Format { pdf, png, svg };

struct NewFolder {
    std::filesystem::path folder;
};
struct CheckFolder {
    Reach folder;
    std::optional<Date> date; // to the day
};
// --copies ID=N.
struct CopiesOf {
    std::string selector; // as --only takes it
    int count = 1;        // 1 to 1000
};
// As typed after --printer and --tray.
struct WantedPrinter {
    std::optional<std::string> printer, tray;
    [[nodiscard]] bool named() const { return printer || tray; }
    [[nodiscard]] bool is_none() const; // no correction is wanted: --printer none
};
struct Render {
    std::string layout; // a name, or a path that ends in .yaml
    Reach folder;
    std::filesystem::path output;
    Format format = Format::pdf;
    std::vector<std::string> only;        // empty: all
    int copies = 1;                       // of each label, 1 to 1000
    std::vector<CopiesOf> copies_of = {}; // of some of them; later ones count
    std::set<int> used = {};              // cells of the first sheet, row by row from 1
    bool piles = false;                   // in order down through the sheets
    std::optional<Backs> backs = {};      // none: what the studio says
    WantedPrinter printer = {};           // whose misprint is corrected
    bool changed = false;                 // only what looks otherwise than when it was last remembered
    bool remember = false;                // note what is printed
    std::optional<std::string> stock = {};
    std::optional<Date> date = {}; // to the day
    int dpi = 300;                 // 30 to 1200
    Ink ink = {};
    std::optional<std::filesystem::path> printed_by = {}; // a printer's profile: a proof of its colours
};
// The sheet by which a printer is measured.
struct MeasurePrinter {
    std::optional<Reach> folder; // none: in English, for a studio without records
    std::filesystem::path output;
    std::string paper = "A4"; // as typed
    WantedPrinter printer = {};
    std::optional<Backs> backs = {};
    bool corrected = false; // with what is recorded, as a proof of it
};
// What would be printed; nothing is written.
struct ShowProof {
    Render sheets; // without an output
};
struct ListFolder {
    Reach folder;
};
struct ShowFacts {
    Reach folder;
    std::string id;           // of a record, or LOT:NUMBER
    std::optional<Date> date; // to the day
};
struct NextLot {
    Reach folder;
    std::optional<Date> date; // to the day
};
struct CompareLots {
    Reach folder;
};
// What a printer will make of the recorded colours.
struct ShowGamut {
    Reach folder;
    std::filesystem::path profile;
};
struct FindSubstitutes {
    Reach folder;
    std::string dye;                      // its id, code or name
    std::optional<Percent> depth = {};    // none: all that it was swatched at
    std::optional<std::string> base = {}; // its id, code or name; none: all
    Wishes wishes = {};
    int most = 5; // 1 to 1000
};
struct ShowLayouts {
    std::optional<Reach> folder;
};
struct ShowStocks {
    std::optional<Reach> folder;
    std::optional<std::filesystem::path> output = {}; // a PDF that draws them; none: a list
};
using Command = std::variant<NewFolder, CheckFolder, Render, MeasurePrinter, ShowProof, ListFolder, ShowFacts, NextLot,
                             CompareLots, FindSubstitutes, ShowGamut, ShowLayouts, ShowStocks>;

// Help or version: text that was asked for.
struct Answer {
    std::string text;
};
// What is wrong with the command line, and what to type instead.
struct Misuse {
    std::string text;
};

// `arguments` without the program's own name.
std::variant<Command, Answer, Misuse> read_command_line(const std::vector<std::string>& arguments,
                                                        std::string_view version);

} // namespace dyeleaf
