#include "records/read_items.h"

#include "records/read_fields.h"
#include "records/read_values.h"

namespace dyeleaf {

namespace {

// "{across: 10.5 mm, down: 9.5 mm}", each within `range`.
std::optional<Reading> read_pair(const Node& node, const std::string& what, const std::string& example,
                                 LengthRange range, Diagnostics& diagnostics) {
    if (node.kind != Node::Kind::map) {
        diagnostics.error(node.spot, in_quotes(what) + " takes two readings, one across and one down",
                          "write " + what + ": " + example);
        return std::nullopt;
    }
    Fields fields{node, what, diagnostics};
    const auto across = needed_field(fields, "across", "across: 10 mm", within(read_length, range));
    const auto down = needed_field(fields, "down", "down: 10 mm", within(read_length, range));
    fields.refuse_the_rest();
    return across && down ? std::optional{Reading{*across, *down}} : std::nullopt;
}

// Where the creases cut the scales, which run from 0 to 20 mm.
std::optional<Reading> read_creases(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    return read_pair(node, what, "{across: 10.5 mm, down: 9.5 mm}", {mm(0), mm(20)}, diagnostics);
}

std::optional<Sourced<Reading>> read_line_lengths(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    const auto pair = read_pair(node, what, "{across: 149.5 mm, down: 200.5 mm}", {mm(50), mm(250)}, diagnostics);
    return pair ? std::optional{Sourced<Reading>{*pair, node.spot}} : std::nullopt;
}

std::optional<Sourced<std::string>> read_sourced(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    const auto text = read_word(node, what, diagnostics);
    return text ? std::optional{Sourced<std::string>{*text, node.spot}} : std::nullopt;
}

// A name that can be typed after --printer.
std::optional<Sourced<std::string>> read_printer_name(const Node& node, const std::string& what,
                                                      Diagnostics& diagnostics) {
    auto name = read_sourced(node, what, diagnostics);
    if (!name || lower_case(name->value) != "none") return name;
    diagnostics.error(node.spot, "a printer cannot be called “none”: --printer none is for no correction",
                      "give it another name");
    return std::nullopt;
}

} // namespace

std::optional<Printer> read_printer(const Node& node, Diagnostics& diagnostics) {
    const int errors_before = diagnostics.errors();
    Fields fields{node, "printer", diagnostics};
    Printer printer;
    printer.spot = node.spot;
    const auto name = needed_field(fields, "printer", "printer: workroom", read_printer_name);
    printer.tray = optional_field(fields, "tray", read_word).value_or("");
    const auto paper = needed_field(fields, "paper", "paper: A4", read_sourced);
    printer.backs = optional_field(fields, "backs", read_backs);
    const auto front = needed_field(fields, "front", "front: {across: 10.5 mm, down: 9.5 mm}", read_creases);
    printer.back = optional_field(fields, "back", read_creases);
    printer.lines = optional_field(fields, "lines", read_line_lengths);
    fields.refuse_the_rest();
    if (!name || !paper || !front || diagnostics.errors() > errors_before) return std::nullopt;
    printer.name = *name;
    printer.paper = *paper;
    printer.front = *front;
    return printer;
}

} // namespace dyeleaf
