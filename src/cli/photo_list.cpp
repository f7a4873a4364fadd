#include "cli/photo_list.h"

#include "base/number.h"
#include "base/plain_figures.h"
#include "cli/report.h"
#include "facts/photo_rows.h"

#include <vector>

namespace dyeleaf {

namespace {

std::string lab_words(const Lab& colour) {
    return "lab(" + fixed(colour.lightness, 1) + " " + fixed(colour.a, 1) + " " + fixed(colour.b, 1) + ")";
}

class Listing {
  public:
    void add(const ColourOrNone& colour, const std::string& whose) {
        const PhotoColour* photo = photo_of(colour);
        if (photo == nullptr || !photo->reading) return;
        const PhotoReading& reading = *photo->reading;
        rows_.push_back({whose, photo->photo.name.value, lab_words(reading.colour), fixed(reading.spread, 1),
                         fixed(reading.reference_spread, 1), reading.read_as});
    }

    [[nodiscard]] std::string text() const {
        if (rows_.size() == 1) return {};
        return "Read from photographs, so compare them by eye in daylight:\n" + table(rows_) +
               "Half of a swatch's pixels differ from its colour by more than SPREAD (ΔE00); BESIDE is the same of the "
               "grey or white.\n";
    }

  private:
    std::vector<std::vector<std::string>> rows_ = {
        {"COLOUR OF", "PHOTO", "CIELAB, D50", "SPREAD", "BESIDE", "READ AS"}};
};

} // namespace

std::string list_photo_colours(const Records& records) {
    Listing listing;
    for (const Dye& dye : records.dyes) {
        for (const Swatch& swatch : dye.swatches)
            listing.add(swatch.colour,
                        dye.name + " at " + plain(swatch.depth) + " on " + records.base(swatch.base.value).name);
        if (!dye.breaks_into) continue;
        for (const Component& component : *dye.breaks_into)
            listing.add(component.colour, component.name + " in " + dye.name);
    }
    for (const Base& base : records.bases)
        listing.add(base.colour, base.name);
    for (const Lot& lot : records.lots)
        listing.add(lot.colour, "lot " + lot.id.value);
    return listing.text();
}

} // namespace dyeleaf
