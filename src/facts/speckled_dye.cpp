#include "facts/speckled_dye.h"

#include "base/words.h"
#include "facts/dye_wording.h"
#include "facts/names.h"
#include "facts/swatches.h"
#include "facts/wording.h"

#include <algorithm>
#include <numbers>
#include <vector>

namespace dyeleaf {

namespace {

bool has_picture(const Dye& dye) {
    return dye.speckle && dye.speckle->spread;
}

std::vector<Component> components(const Dye& dye) {
    return dye.breaks_into.value_or(std::vector<Component>{});
}

bool is_drawn(const Component& component) {
    return component.colour && component.halo;
}

const Base* base_of(const Records& records, const Dye& dye) {
    const Swatch* swatch = deepest_swatch(dye);
    return swatch == nullptr ? nullptr : &records.base(swatch->base.value);
}

Length widest_halo(const Dye& dye) {
    Length widest;
    for (const Component& component : components(dye)) {
        if (is_drawn(component)) widest = larger(widest, *component.halo);
    }
    return widest;
}

std::string name_of(const Language& language, const Component& component) {
    return component.name.empty() ? language.say("dye.this colour") : component.name;
}

// "Thrift: hazy speckles, 5 mm, on Plain Sock, each in halos of coral (2 mm) and …"
std::string description(const Language& language, const Records& records, const Dye& dye) {
    const Base* base = base_of(records, dye);
    std::string words = language.say(
        "speckle.picture", {{"dye", distinct_name(records, dye)}, {"speckles", speckle_words(language, dye.speckle)}});
    if (base != nullptr) words = language.say("speckle.picture on", {{"picture", words}, {"base", base->name}});
    std::vector<std::string> halos;
    for (const Component& component : components(dye)) {
        if (is_drawn(component))
            halos.push_back(name_of(language, component) + " " + length_words(language, *component.halo));
    }
    if (!halos.empty()) words += "; " + language.say("speckle.halos", {{"halos", joined(halos, ", ")}});
    if (dye.fluorescent == true) words += "; " + language.say("dye.fluorescent patch");
    if (is_beyond_print(dye)) words += "; " + language.say("dye.beyond print patch");
    const auto note = speckled_note(language, records, dye);
    return note ? words + "; " + *note : words;
}

} // namespace

ArealDensity assumed_density(Length spread, Length widest_halo) {
    const double square = 1.7 * spread.in_mm();
    const double haloed = (spread + widest_halo * 2).in_mm();
    const double whole_in_half =
        0.5 / (std::numbers::pi / 4 * haloed * haloed); // to 1 mm²; one speck in three is whole
    return per_square_centimetre(100 * std::min(1 / (square * square), 3 * whole_in_half));
}

std::string density_words(const Language& language, ArealDensity density) {
    return unbroken(language.say("speckle.density", {{"number", language.number(density.number(), 2)}}));
}

std::optional<Speckled> speckled_dye(const Language& language, const Records& records, const Dye& dye) {
    if (!has_picture(dye)) return std::nullopt;
    Speckled speckled;
    speckled.dye_id = dye.id.value;
    speckled.grade = dye.speckle->grade;
    speckled.spread = *dye.speckle->spread;
    speckled.density = dye.speckle->density.value_or(assumed_density(speckled.spread, widest_halo(dye)));
    const Swatch* swatch = deepest_swatch(dye);
    if (swatch != nullptr && swatch->colour) {
        speckled.dye = Speckled::Dye::shown;
        speckled.colour = rgb_of(swatch->colour->value);
    }
    if (dye.fluorescent == true) speckled.dye = Speckled::Dye::not_printable;
    for (const Component& component : components(dye)) {
        if (is_drawn(component)) speckled.halos.push_back({rgb_of(component.colour->value), *component.halo});
    }
    if (const Base* base = base_of(records, dye); base != nullptr && base->colour)
        speckled.ground = rgb_of(base->colour->value);
    speckled.description = description(language, records, dye);
    return speckled;
}

std::optional<std::string> speckled_note(const Language& language, const Records& records, const Dye& dye) {
    if (!has_picture(dye)) return std::nullopt;
    const Base* base = base_of(records, dye);
    const bool has_ground = base != nullptr && base->colour;
    std::vector<std::string> notes{has_ground ? language.say("speckle.true size on", {{"base", base->name}})
                                              : language.say("speckle.true size")};
    if (!has_ground) notes.push_back(language.say("speckle.yarn not recorded"));
    if (!dye.speckle->density) notes.push_back(language.say("speckle.number assumed"));
    const Swatch* swatch = deepest_swatch(dye);
    if (swatch == nullptr || !swatch->colour) {
        notes.push_back(language.say("dye.no colour"));
    } else if (swatch->colour_source == ColourSource::photo) {
        notes.push_back(language.say("dye.from a photo"));
    }
    std::vector<std::string> left_out;
    for (const Component& component : components(dye)) {
        if (!is_drawn(component)) left_out.push_back(name_of(language, component));
    }
    if (!left_out.empty()) notes.push_back(language.say("speckle.without", {{"colours", joined(left_out, ", ")}}));
    return joined(notes, dot);
}

} // namespace dyeleaf
