#include "records/read_items.h"

#include "base/number.h"
#include "records/read_fields.h"
#include "records/read_girth.h"
#include "records/read_parts.h"
#include "records/read_values.h"

#include <algorithm>
#include <cmath>

namespace dyeleaf {

namespace {

std::optional<Basis> read_basis(Fields& fields) {
    if (!fields.has("by")) {
        if (fields.node().kind != Node::Kind::map) return std::nullopt;
        fields.take("by");
        fields.diagnostics().error(
            fields.node().spot, "this jar does not say whether it is mixed by weight or by volume",
            "add a line “by: weight” if you weighed the parts, “by: volume” if you used spoons; the "
            "same numbers give quite different strengths");
        return std::nullopt;
    }
    return optional_field(fields, "by", one_of<Basis>({{"weight", Basis::weight}, {"volume", Basis::volume}}));
}

Mass weight_of(const std::vector<Part>& parts) {
    Mass sum;
    for (const Part& part : parts)
        sum = sum + part.mass.value_or(Mass{});
    return sum;
}

// What a jar is named after is in it; salt alone may be added to it later.
void check_own_dye(Jar& jar, const std::optional<Id>& own, Diagnostics& diagnostics) {
    const bool is_in =
        own && std::ranges::any_of(jar.parts, [&](const Part& part) { return part.id.value == own->value; });
    if (!own || is_in || jar.parts.empty()) return;
    diagnostics.error(own->spot, in_quotes(own->value) + " is the jar's dye, but none of its parts",
                      "name it among the parts, as “dye” or by its id, or take this line out");
    jar.parts.clear();
}

// What was weighed in must be a mix by weight, and must be what the batch says.
void check_weighed(const Jar& jar, const Node& parts, const Node* batch, Diagnostics& diagnostics) {
    if (jar.parts.empty() || !jar.parts.front().mass) return;
    if (jar.basis == Basis::volume) {
        diagnostics.error(parts.spot, "parts given as weights make a mix by weight",
                          "write by: weight, or the parts as spoons: {dye: 1, salt: 4}");
    }
    if (!jar.batch) return;
    const Mass sum = weight_of(jar.parts);
    if (std::abs((sum - *jar.batch) / *jar.batch) <= 0.01) return;
    diagnostics.error(batch->spot,
                      "the batch is " + significant(jar.batch->number(), 4) + " g, but the parts weigh " +
                          significant(sum.number(), 4) + " g together",
                      "the two may differ by 1 % at most: look at the weights again, or leave the batch out");
}

// What was added in other proportions: the strength that comes of it rests on how much of each there was.
void read_another_mix(Fields& fields, const Node& node, const Jar& jar, const std::optional<Id>& own, TopUp& top_up) {
    Diagnostics& diagnostics = fields.diagnostics();
    const int errors_before = diagnostics.errors();
    top_up.parts = read_parts(node, own, true, diagnostics);
    for (const Part& part : top_up.parts) {
        const bool known =
            std::ranges::any_of(jar.parts, [&](const Part& one) { return one.id.value == part.id.value; });
        if (known || jar.parts.empty()) continue;
        diagnostics.error(part.id.spot, in_quotes(part.id.value) + " was not in this jar before",
                          "with something else in it, it is another jar: give it a record and a code of its own");
    }
    if (diagnostics.errors() > errors_before || top_up.parts.empty()) {
        top_up.parts.clear();
        return;
    }
    const bool weighed = top_up.parts.front().mass.has_value();
    if (weighed && top_up.added) {
        diagnostics.error(fields.take("added")->spot, "these parts are weights, which say already how much was added",
                          "leave “added” out");
    }
    if (weighed) {
        top_up.added = weight_of(top_up.parts);
    } else if (!fields.has("added")) {
        diagnostics.error(node.spot, "nothing says how much of this was added",
                          "add “added: 20 g”, or write the parts as weights: {dye: 4 g, salt: 16 g}");
    }
    if (!fields.has("left")) {
        diagnostics.error(node.spot, "nothing says how much was left in the jar",
                          "add “left: 12 g”: with what was added in other proportions, the strength depends on it");
    }
}

std::vector<TopUp> read_top_ups(const Node& node, const Jar& jar, const std::optional<Id>& own,
                                Diagnostics& diagnostics) {
    std::vector<TopUp> top_ups;
    for (const Node& one : read_list(node, "topped up", "topped up: [{on: 2026-11-20, added: 20 g}]", diagnostics)) {
        if (one.kind != Node::Kind::map) {
            diagnostics.error(one.spot, "a top-up has a day and what was added, each with its name",
                              "write topped up: [{on: 2026-11-20, added: 20 g}]");
            continue;
        }
        Fields fields{one, "top-up", diagnostics};
        TopUp top_up;
        const auto on = needed_field(fields, "on", "on: 2026-11-20", read_date);
        top_up.added = optional_field(fields, "added", within(read_mass, jar_mass));
        top_up.dye_lot = optional_field(fields, "dye lot", read_name);
        top_up.left = optional_field(fields, "left", within(read_mass, jar_mass));
        if (const Node* parts = fields.take("parts")) read_another_mix(fields, *parts, jar, own, top_up);
        fields.refuse_the_rest();
        if (!on) continue;
        top_up.on = *on;
        top_ups.push_back(std::move(top_up));
    }
    return top_ups;
}

void read_glass(Fields& fields, Jar& jar) {
    jar.holds = optional_field(fields, "holds", within(read_volume, {millilitres(1), millilitres(10000)}));
    const auto girth = read_girth(fields);
    jar.girth = girth.value_or(Girth{});
    const auto height = needed_field(fields, "height", "height: 70 mm", within(read_length, {mm(15), mm(200)}));
    jar.height = height.value_or(Length{});
    if (girth && height) check_lean(*girth, *height, fields.node().spot, fields.diagnostics());
    jar.lid = optional_field(fields, "lid", within(read_length, {mm(10), mm(120)}));
    jar.tare = optional_field(fields, "tare", within(read_mass, {grams(0.1), grams(10000)}));
}

bool ends_before(const RecordedDate& one, const RecordedDate& other) {
    const Date* first = std::get_if<Date>(&one);
    const Date* second = std::get_if<Date>(&other);
    return first != nullptr && second != nullptr && is_over(*first, *second);
}

std::optional<Weighing> read_weighing(const Node& node, const std::string&, Diagnostics& diagnostics) {
    if (node.kind != Node::Kind::map) {
        diagnostics.error(node.spot, "a weighing has a day and what the scale showed, each with its name",
                          "write weighed: {on: 2026-11-20, gross: 103 g}; gross is the jar with its lid and all");
        return std::nullopt;
    }
    Fields fields{node, "weighing", diagnostics};
    const auto on = needed_field(fields, "on", "on: 2026-11-20", read_date);
    const auto gross = needed_field(fields, "gross", "gross: 103 g", within(read_mass, jar_mass));
    fields.refuse_the_rest();
    if (!on || !gross) return std::nullopt;
    return Weighing{*on, *gross};
}

void check_weighing(Fields& fields, const Jar& jar) {
    if (!jar.weighed) return;
    const Spot& spot = fields.take("weighed")->spot;
    if (!fields.has("tare")) {
        fields.diagnostics().warning(spot, "this jar was weighed, but nothing says what it weighs empty",
                                     "add its empty weight with the lid, as in tare: 78.4 g");
    } else if (jar.tare && jar.weighed->gross < *jar.tare) {
        fields.diagnostics().error(spot, "this jar weighs less than it does empty",
                                   "look at “gross” and “tare” again; both are with the lid on");
    }
}

void read_history(Fields& fields, Jar& jar) {
    Diagnostics& diagnostics = fields.diagnostics();
    jar.mixed = optional_field(fields, "mixed", read_date);
    jar.mixed_by = optional_field(fields, "mixed by", read_name);
    jar.dye_lot = optional_field(fields, "dye lot", read_name);
    jar.use_by = optional_field(fields, "use by", read_date);
    jar.keeps = optional_field(fields, "keeps", read_period);
    if (fields.has("use by") && fields.has("keeps")) {
        diagnostics.error(fields.node().spot, "this jar says twice how long it is good: “use by” and “keeps”",
                          "keep one of the two");
    }
    if (jar.use_by && jar.mixed && ends_before(*jar.use_by, *jar.mixed)) {
        diagnostics.warning(fields.take("use by")->spot, "this jar was to be used before it was mixed",
                            "look at both dates again: “mixed” and “use by”");
    }
    jar.weighed = optional_field(fields, "weighed", read_weighing);
    check_weighing(fields, jar);
    jar.per_skein = optional_field(fields, "per skein", within(read_mass, jar_mass));
    jar.salt = optional_field(fields, "salt", read_name);
    jar.notes = optional_field(fields, "notes", read_notes);
    fields.ignore("private notes");
}

} // namespace

std::optional<Jar> read_jar(const Node& node, Diagnostics& diagnostics) {
    Fields fields{node, "jar", diagnostics};
    Jar jar;
    jar.spot = node.spot;
    const auto id = needed_field(fields, "id", "id: sloe-shaker", read_id);
    const auto code = optional_field(fields, "code", read_name);
    jar.name = optional_field(fields, "name", read_name);
    const auto own = optional_field(fields, "dye", read_reference);
    const Node* parts = fields.need("parts", "parts: {dye: 1, salt: 4}");
    if (parts != nullptr) jar.parts = read_parts(*parts, own, fields.has("dye"), diagnostics);
    check_own_dye(jar, own, diagnostics);
    const auto basis = read_basis(fields);
    jar.batch = optional_field(fields, "batch", within(read_mass, jar_mass));
    if (basis) {
        jar.basis = *basis;
        if (parts != nullptr) check_weighed(jar, *parts, fields.take("batch"), diagnostics);
    }
    if (const Node* top_ups = fields.take("topped up")) jar.topped_up = read_top_ups(*top_ups, jar, own, diagnostics);
    read_glass(fields, jar);
    read_history(fields, jar);
    fields.refuse_the_rest();
    if (!id) return std::nullopt;
    jar.id = *id;
    jar.code = code.value_or(id->value);
    return jar;
}

} // namespace dyeleaf
