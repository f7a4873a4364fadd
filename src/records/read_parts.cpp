#include "records/read_parts.h"

#include "base/words.h"
#include "source/values.h"

#include <algorithm>

namespace dyeleaf {

namespace {

const std::string how_to_mix =
    "write parts: {dye: 1, salt: 4}, each part by its name, or weights as in {dye: 10 g, salt: 40 g}";

// Text such as "1:4" says neither which part is the dye nor of what.
void refuse_ratio(const Node& node, Diagnostics& diagnostics) {
    const std::string text = in_quotes(shortened(trimmed(node.text), 40));
    const bool ratio =
        node.text.find_first_of(":/") != std::string::npos || node.text.find(" in ") != std::string::npos;
    if (node.kind != Node::Kind::scalar) {
        diagnostics.error(node.spot, "the parts of a mix have no names here", how_to_mix);
    } else if (ratio) {
        diagnostics.error(node.spot, text + " does not say which part is the dye", how_to_mix);
    } else {
        diagnostics.error(node.spot, text + " does not say what the mix is made of", how_to_mix);
    }
}

// A number of parts, or a mass as weighed in; both leave `parts` set.
std::optional<Part> read_part(const Entry& entry, const std::string& what, Diagnostics& diagnostics) {
    const Node& node = entry.value;
    if (node.kind == Node::Kind::nothing) {
        diagnostics.error(entry.key_spot, "nothing stands after " + in_quotes(entry.key), how_to_mix);
        return std::nullopt;
    }
    Part part;
    part.id = {entry.key, entry.key_spot};
    const std::string_view text = trimmed(node.text);
    if (text.ends_with('%')) {
        diagnostics.error(node.spot, in_quotes(shortened(text, 40)) + " is a share, and parts are plain numbers",
                          "write " + std::string{trimmed(text.substr(0, text.size() - 1))} +
                              " without the %, and the same for the other parts");
        return std::nullopt;
    }
    if (lower_case(text).ends_with("ml")) {
        diagnostics.error(node.spot,
                          in_quotes(shortened(text, 40)) + " is a volume, and parts are plain numbers or weights",
                          "for a mix by volume write how many spoons of each: {dye: 1, salt: 4}");
        return std::nullopt;
    }
    const bool has_digits = text.find_first_of("0123456789") != std::string_view::npos;
    const bool has_unit = has_digits && text.find_first_not_of("0123456789.,+-") != std::string_view::npos;
    if (has_unit) {
        part.mass = read_mass(node, what, jar_mass, diagnostics);
        if (!part.mass) return std::nullopt;
        part.parts = part.mass->number();
        return part;
    }
    const auto parts = read_decimal(node, what, {0.001, 10000}, diagnostics);
    if (!parts) return std::nullopt;
    part.parts = *parts;
    return part;
}

// The word `dye` among the parts means the jar's own dye.
bool resolve_own_dye(Part& part, const std::optional<Id>& own, bool own_was_written, Diagnostics& diagnostics) {
    if (part.id.value != "dye" && lower_case(part.id.value) == "dye") {
        diagnostics.error(part.id.spot, "the jar's own dye is “dye” among its parts, in small letters", "write dye: 1");
        return false;
    }
    if (part.id.value != "dye") return true;
    if (own) {
        part.id = *own;
        return true;
    }
    if (!own_was_written) {
        diagnostics.error(part.id.spot, "the part “dye” does not say which dye",
                          "add a line to the jar such as “dye: sloe”, or write the dye's id in place of “dye”");
    }
    return false;
}

} // namespace

std::vector<Part> read_parts(const Node& node, const std::optional<Id>& own, bool own_was_written,
                             Diagnostics& diagnostics) {
    if (node.kind != Node::Kind::map) {
        refuse_ratio(node, diagnostics);
        return {};
    }
    if (node.entries().empty() && node.refused().empty()) {
        diagnostics.error(node.spot, "this mix has no parts", how_to_mix);
        return {};
    }
    const int errors_before = diagnostics.errors();
    std::vector<Part> parts;
    for (const Entry& entry : node.entries()) {
        auto part = read_part(entry, "part " + in_quotes(entry.key), diagnostics);
        if (!part || !resolve_own_dye(*part, own, own_was_written, diagnostics)) continue;
        if (std::ranges::any_of(parts, [&](const Part& other) { return other.id.value == part->id.value; })) {
            diagnostics.error(entry.key_spot, in_quotes(part->id.value) + " is in this mix twice",
                              "add the two together, or take one out");
        }
        parts.push_back(std::move(*part));
    }
    const bool all_read = diagnostics.errors() == errors_before && node.refused().empty();
    if (!all_read || parts.size() != node.entries().size()) return {};
    const auto weighed = std::ranges::count_if(parts, [](const Part& part) { return part.mass.has_value(); });
    if (weighed != 0 && weighed != std::ssize(parts)) {
        diagnostics.error(node.spot, "some parts are weights and some are plain numbers",
                          "write all of them as weights, {dye: 10 g, salt: 40 g}, or none, {dye: 1, salt: 4}");
        return {};
    }
    return parts;
}

} // namespace dyeleaf
