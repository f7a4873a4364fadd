#include "cli/overview.h"

#include "base/number.h"
#include "base/words.h"
#include "cli/report.h"
#include "facts/jar_wording.h"
#include "facts/mix.h"
#include "facts/wording.h"
#include "text/typesetter.h"

namespace dyeleaf {

namespace {

using Rows = std::vector<std::vector<std::string>>;

int count(const auto& list) {
    return static_cast<int>(list.size());
}

std::string section(const std::string& heading, const Rows& rows) {
    return rows.empty() ? std::string{} : heading + "\n" + table(rows) + "\n";
}

// "Sloe : salt, 1 : 2 by weight".
std::string mix(const Jar& jar, const Records& records, const Language& language) {
    std::vector<std::string> names;
    std::vector<std::string> parts;
    for (const MixPart& part : mix_of(records, jar).parts) {
        names.push_back(part.name);
        parts.push_back(decimal(part.parts, 2));
    }
    return joined(names, " : ") + ", " + joined(parts, " : ") + " " + words(language, jar.basis);
}

std::string fibres(const Base& base, const Language& language) {
    std::vector<std::string> all;
    for (const Fibre& fibre : base.fibres)
        all.push_back(percent_words(language, fibre.share) + " " + fibre.name);
    return joined(all, ", ");
}

std::string size_words(const Shape& shape) {
    const auto* width = std::get_if<Length>(&shape.width.value);
    const auto* height = std::get_if<Length>(&shape.height.value);
    if (width == nullptr || height == nullptr) return "by its record";
    if (!shape.round) return measures({*width, *height});
    return near(*width, *height) ? to_string(*width) + " round" : measures({*width, *height}) + " oval";
}

// In inches where the stock's file speaks of them.
std::string length_words(Length length, const Stock& stock) {
    return stock.in_inches ? decimal(length / inches(1), 4) + " in" : to_string(length);
}

std::string size_words(Size size, const Stock& stock) {
    if (!stock.in_inches) return measures(size);
    return decimal(size.width / inches(1), 4) + " × " + length_words(size.height, stock);
}

std::string cell_words(const Stock& stock) {
    const CellGrid& grid = *stock.cells;
    if (grid.round && near(grid.cell.width, grid.cell.height)) return "round, " + length_words(grid.cell.width, stock);
    if (grid.round) return "oval, " + size_words(grid.cell, stock);
    return "of " + size_words(grid.cell, stock) + (grid.corner > Length{} ? ", rounded" : "");
}

std::string cut_words(const Stock& stock) {
    std::string cut = stock.cut == Cut::full_lines    ? "cut along full lines"
                      : stock.cut == Cut::single_cuts ? "single cuts between them"
                                                      : "cut along marks";
    if (!stock.laminate) return cut;
    return cut + (stock.laminate->one_each ? ", each in a pouch" : ", laminated in one pouch");
}

std::string labels_words(const Stock& stock) {
    if (stock.roll) return stock.roll->length ? "ready cut along the roll" : "one after the other";
    if (stock.page_per_label) return "one label a page";
    if (!stock.cells) return cut_words(stock);
    const CellGrid& grid = *stock.cells;
    return std::to_string(grid.columns) + " × " + std::to_string(grid.rows) + " " + cell_words(stock);
}

std::string paper_words(const Stock& stock) {
    if (!stock.roll) return stock.page_per_label ? "" : size_words(stock.paper, stock);
    const Roll& roll = *stock.roll;
    return "roll, " + (roll.length ? size_words({roll.width, *roll.length}, stock) : length_words(roll.width, stock));
}

std::string purpose(const Design& design) {
    switch (design.items) {
    case ItemKind::dyes: return design.grouping ? "dyes, several on one" : "dyes";
    case ItemKind::jars: return "jars";
    case ItemKind::skeins: return "skeins";
    case ItemKind::lots: return "lots";
    case ItemKind::bases: break;
    }
    return "bases";
}

std::string name_words(const LibraryFile& file) {
    return file.own ? file.name + " (yours)" : file.name;
}

} // namespace

std::string count_records(const Records& records) {
    std::vector<std::string> counts;
    const auto add = [&](int number, std::string_view one, std::string_view many) {
        if (number > 0) counts.push_back(counted(number, one, many));
    };
    add(count(records.dyes), "dye", "dyes");
    add(count(records.jars), "jar", "jars");
    add(count(records.bases), "base", "bases");
    add(count(records.lots), "lot", "lots");
    return counts.empty() ? "no records yet" : joined(counts, ", ");
}

std::string list_records(const Records& records, const Language& language) {
    Rows dyes;
    for (const Dye& dye : records.dyes)
        dyes.push_back({dye.id.value, dye.name, dye.line, counted(count(dye.swatches), "swatch", "swatches")});
    Rows jars;
    for (const Jar& jar : records.jars)
        jars.push_back({jar.id.value, mix(jar, records, language), jar.name.value_or("")});
    Rows bases;
    for (const Base& base : records.bases)
        bases.push_back({base.id.value, base.name, fibres(base, language)});
    Rows lots;
    for (const Lot& lot : records.lots) {
        lots.push_back({lot.id.value, lot.colourway, records.base(lot.base.value).name,
                        counted(lot.skeins, "skein", "skeins"), short_date(language, lot.dyed).value_or("")});
    }
    const std::string all =
        section("Dyes", dyes) + section("Jars", jars) + section("Bases", bases) + section("Lots", lots);
    return all.empty() ? "There are no records yet.\n"
                       : all + "The first column is the id, which --only takes; so are codes, lines and colourways.\n";
}

std::string list_layouts(const Library& library, Diagnostics& diagnostics) {
    const Typesetter typesetter{font_folders(library), diagnostics};
    Rows rows = {{"LAYOUT", "FOR", "SIZE", "STOCK", "ABOUT"}};
    for (const LibraryFile& file : find_layouts(library)) {
        const auto design = read_layout_file(file, library, typesetter.families(), diagnostics);
        if (!design) continue;
        rows.push_back({name_words(file), purpose(*design), size_words(design->shape), design->stock, design->about});
    }
    return table(rows);
}

std::string list_stocks(const Library& library, Diagnostics& diagnostics) {
    Rows rows = {{"STOCK", "PAPER", "LABELS", "ABOUT"}};
    for (const LibraryFile& file : find_stocks(library)) {
        const auto stock = read_stock_file(file, diagnostics);
        if (!stock) continue;
        rows.push_back({name_words(file), paper_words(*stock), labels_words(*stock), stock->about});
    }
    return table(rows);
}

} // namespace dyeleaf
