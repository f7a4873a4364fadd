// What is in a jar: shares, grams and strength, as far as the record lets them be known.
#pragma once

#include "base/quantity.h"
#include "records/records.h"

#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

struct MixPart {
    std::string name; // distinct from those of other dyes
    bool is_dye = false;
    double parts = 0;             // as stated, in the mix's basis
    std::optional<Mass> weighed;  // as recorded
    std::optional<Density> bulk;  // of the loose powder
    std::optional<Percent> share; // of the whole by weight
    std::optional<Mass> mass;     // as weighed, or worked out and rounded to what the scale shows
    std::optional<Volume> volume; // of the loose powder, always an estimate
};

struct Mix {
    std::vector<MixPart> parts; // in stated order
    Basis basis = Basis::weight;
    // Dye in the whole by weight; nothing for a mix by volume of powders whose bulk densities are not recorded.
    std::optional<Percent> strength;
    // The same before the masses were rounded to the scale's step.
    std::optional<Percent> intended_strength;
    std::optional<Mass> total;
    bool shares_estimated = false; // measured by volume, so they rest on bulk densities
    bool masses_estimated = false; // they rest on bulk densities or on how full the jar is taken to be
    bool total_estimated = false;
};

// How much there is, where the parts were not weighed in one by one.
struct MixAmount {
    std::optional<Mass> batch;
    std::optional<Volume> holds; // to the brim
    Mass scale_step;
};

// Works out share and mass of the parts, which come with the rest filled in.
Mix work_out(std::vector<MixPart> parts, Basis basis, const MixAmount& amount);

// What is in a jar once `added` is mixed into what was `left` of `in_jar`; its parts are among those of `in_jar`, by
// name. Without either strength there is none, and no grams but those of the whole.
Mix topped_up(const Mix& in_jar, Mass left, const Mix& added, Mass added_mass, Mass scale_step);

// As the jar was first filled.
Mix first_filling(const Records& records, const Jar& jar);
// As it is now: a top-up that is mixed like what it meets changes no share.
Mix mix_of(const Records& records, const Jar& jar);
// Each mix that the jar has held: the first filling, then one for each top-up.
std::vector<Mix> mixes_of(const Records& records, const Jar& jar);
// What a top-up added, without its grams.
Mix mix_added(const Records& records, const Jar& jar, const TopUp& top_up);

// How much of a jar the mix takes up, where the volume of every part is known; may pass 100 %.
std::optional<Percent> fill_of(const Mix& mix, Volume holds);
// The share that may be filled for the contents to mix: 30 to 40 % stay empty (common practice).
inline constexpr Percent most_fill = percent(70);

// Whether rounding to the scale's step changes the strength by more than a fiftieth of itself.
bool rounding_shows(const Mix& mix);

} // namespace dyeleaf
