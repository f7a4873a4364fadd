#include "cli/photo_list.h"

#include "base/number.h"
#include "cli/report.h"
#include "facts/recorded_colours.h"

#include <variant>
#include <vector>

namespace dyeleaf {

namespace {

std::string lab_words(const Lab& colour) {
    return "lab(" + fixed(colour.lightness, 1) + " " + fixed(colour.a, 1) + " " + fixed(colour.b, 1) + ")";
}

} // namespace

std::string list_photo_colours(const Records& records) {
    std::vector<std::vector<std::string>> rows{{"COLOUR OF", "PHOTO", "CIELAB, D50", "SPREAD", "BESIDE", "READ AS"}};
    for (const ColourOfRecord& record : recorded_colours(records)) {
        const auto* photo = photo_of(record.colour);
        if (photo == nullptr || !photo->reading) continue;
        const PhotoReading& reading = *photo->reading;
        rows.push_back({record.whose, photo->photo.name.value, lab_words(reading.colour), fixed(reading.spread, 1),
                        fixed(reading.reference_spread, 1), reading.read_as});
    }
    if (rows.size() == 1) return {};
    return "Read from photographs, so compare them by eye in daylight:\n" + table(rows) +
           "Half of a swatch's pixels differ from its colour by more than SPREAD (ΔE00); BESIDE is the same of the "
           "grey or white.\n";
}

} // namespace dyeleaf
