#include "records/read_items.h"

#include "records/read_fields.h"
#include "records/read_hazards.h"
#include "records/read_values.h"

#include <algorithm>
#include <array>

namespace dyeleaf {

namespace {

// Small lengths seen on yarn: a speckle, a halo.
constexpr LengthRange on_yarn = {mm(0.1), mm(100)};

std::optional<Swatch> read_swatch(const Node& node, Diagnostics& diagnostics) {
    Fields fields{node, "swatch", diagnostics};
    Swatch swatch;
    swatch.spot = node.spot;
    const auto depth_range = within(read_percent, {percent(0.0001), percent(20)});
    const auto depth = needed_field(fields, "depth", "depth: 0.5 %", depth_range);
    const auto base = needed_field(fields, "base", "base: plain-sock", read_reference);
    swatch.colour = optional_field(fields, "colour", read_colour);
    swatch.colour_source = read_colour_source(fields, swatch.colour);
    swatch.dyed = optional_field(fields, "dyed", read_date);
    swatch.picture = optional_field(fields, "picture", read_picture_name);
    swatch.notes = optional_field(fields, "notes", read_notes);
    fields.ignore("private notes");
    fields.refuse_the_rest();
    if (!depth || !base) return std::nullopt;
    swatch.depth = *depth;
    swatch.base = *base;
    return swatch;
}

std::vector<Swatch> read_swatches(const Node& node, Diagnostics& diagnostics) {
    std::vector<Swatch> swatches;
    for (const Node& one : read_list(node, "swatches", "swatches: [{depth: 0.5 %, base: plain-sock}]", diagnostics)) {
        auto swatch = read_swatch(one, diagnostics);
        if (!swatch) continue;
        const auto twin = std::ranges::find_if(swatches, [&](const Swatch& other) {
            return other.base.value == swatch->base.value && other.depth == swatch->depth && other.dyed == swatch->dyed;
        });
        if (twin != swatches.end()) {
            diagnostics.warning(swatch->spot, "a second swatch of the same depth, base and day",
                                "the first stands on line " + std::to_string(twin->spot.line) +
                                    "; if both are right, tell them apart by their dates");
        }
        swatches.push_back(std::move(*swatch));
    }
    return swatches;
}

// Words that mean something else than the name of a colour.
bool says_none(const std::string& text) {
    constexpr std::array words = {"no", "none", "nothing", "never", "false", "unknown", "yes", "true", "?"};
    return std::ranges::find(words, lower_case(text)) != words.end();
}

const std::string how_it_breaks =
    "write breaks into: [rust, lilac]; [] when it is known not to break; leave the line out where nobody has tried";

std::optional<Component> read_component(const Node& node, Diagnostics& diagnostics) {
    if (node.kind != Node::Kind::map) {
        const auto name = read_text(node, "breaks into", diagnostics);
        if (!name) return std::nullopt;
        if (!says_none(*name)) return Component{*name, {}, {}};
        diagnostics.error(node.spot, in_quotes(*name) + " is not the name of a colour", how_it_breaks);
        return std::nullopt;
    }
    Fields fields{node, "colour that it breaks into", diagnostics};
    Component component;
    component.name = optional_field(fields, "name", read_name).value_or("");
    component.colour = optional_field(fields, "colour", read_colour);
    component.halo = optional_field(fields, "halo", within(read_length, on_yarn));
    if (!fields.has("name") && !fields.has("colour")) {
        diagnostics.error(node.spot, "this colour that it breaks into has neither name nor colour",
                          R"(write {name: rust} or {colour: "#a0522d"})");
    }
    fields.refuse_the_rest();
    return component;
}

std::optional<std::vector<Component>> read_breaks(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    if (node.kind == Node::Kind::scalar) {
        const bool none = says_none(std::string{trimmed(node.text)});
        diagnostics.error(node.spot, what + " is a list, and here stands text",
                          none ? how_it_breaks : "write breaks into: [" + std::string{trimmed(node.text)} + "]");
        return std::nullopt;
    }
    std::vector<Component> components;
    for (const Node& one : read_list(node, what, "breaks into: [rust, lilac]", diagnostics)) {
        if (auto component = read_component(one, diagnostics)) components.push_back(std::move(*component));
    }
    return components;
}

std::optional<Speckle> read_speckle(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    if (node.kind == Node::Kind::scalar) {
        diagnostics.error(node.spot, "the speckle is written as keys with a colon",
                          "write speckle: {grade: clean}; the grades are clean, soft, hazy and blotchy");
        return std::nullopt;
    }
    Fields fields{node, what, diagnostics};
    Speckle speckle;
    const auto grades = one_of<SpeckleGrade>({{"clean", SpeckleGrade::clean},
                                              {"soft", SpeckleGrade::soft},
                                              {"hazy", SpeckleGrade::hazy},
                                              {"blotchy", SpeckleGrade::blotchy}});
    const auto grade = needed_field(fields, "grade", "grade: clean", grades);
    speckle.spread = optional_field(fields, "spread", within(read_length, on_yarn));
    speckle.density = optional_field(
        fields, "density", within(read_areal_density, {per_square_centimetre(0.05), per_square_centimetre(50)}));
    speckle.tried_on = optional_field(fields, "tried on", read_date);
    fields.refuse_the_rest();
    if (!grade) return std::nullopt;
    speckle.grade = *grade;
    return speckle;
}

void read_behaviour(Fields& fields, Dye& dye) {
    dye.fluorescent = optional_field(fields, "fluorescent", read_yes_no);
    dye.bleeds = optional_field(fields, "bleeds", read_yes_no);
    dye.crocks = optional_field(fields, "crocks", read_yes_no);
    dye.rinses_clear = optional_field(fields, "rinses clear", read_yes_no);
    dye.light_fastness = optional_field(fields, "light fastness", read_name);
    dye.breaks_into = optional_field(fields, "breaks into", read_breaks);
    dye.speckle = optional_field(fields, "speckle", read_speckle);
}

// `yes`, `no`, or how much there is.
std::optional<InStock> read_stock(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    if (node.text.find_first_of("0123456789") != std::string::npos) {
        const auto mass = read_mass(node, what, {grams(0), grams(50000)}, diagnostics);
        return mass ? std::optional<InStock>{*mass} : std::nullopt;
    }
    const auto answer = read_yes_no(node, what, diagnostics);
    return answer ? std::optional<InStock>{*answer} : std::nullopt;
}

void read_supply(Fields& fields, Dye& dye) {
    dye.dye_class = optional_field(fields, "class", read_name);
    dye.product = optional_field(fields, "product", read_name);
    dye.batch = optional_field(fields, "batch", read_name);
    dye.opened = optional_field(fields, "opened", read_date);
    dye.form = optional_field(fields, "form", read_name);
    const auto status = one_of<DyeStatus>({{"current", DyeStatus::current},
                                           {"discontinued", DyeStatus::discontinued},
                                           {"reformulated", DyeStatus::reformulated}});
    dye.status = optional_field(fields, "status", status).value_or(dye.status);
    dye.replaced_by = optional_field(fields, "replaced by", read_reference);
    dye.status_note = optional_field(fields, "status note", read_notes);
    dye.in_stock = optional_field(fields, "in stock", read_stock);
    dye.hazards = optional_field(fields, "hazards", read_hazards);
    dye.precautions = optional_field(fields, "precautions", read_precautions);
    dye.bulk_density = optional_field(fields, "bulk density", read_bulk_density);
}

} // namespace

std::optional<Dye> read_dye(const Node& node, Diagnostics& diagnostics) {
    Fields fields{node, "dye", diagnostics};
    Dye dye;
    dye.spot = node.spot;
    const auto id = needed_field(fields, "id", "id: sloe", read_id);
    dye.name = needed_field(fields, "name", "name: Sloe", read_name).value_or("");
    dye.line = needed_field(fields, "line", "line: Fenlight acid", read_name).value_or("");
    const auto code = optional_field(fields, "code", read_name);
    read_supply(fields, dye);
    read_behaviour(fields, dye);
    if (const Node* swatches = fields.take("swatches")) dye.swatches = read_swatches(*swatches, diagnostics);
    dye.notes = optional_field(fields, "notes", read_notes);
    fields.ignore("private notes");
    fields.refuse_the_rest();
    if (!id) return std::nullopt;
    dye.id = *id;
    dye.code = code.value_or(id->value);
    return dye;
}

} // namespace dyeleaf
