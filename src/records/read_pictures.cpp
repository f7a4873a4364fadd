#include "records/read_pictures.h"

#include "base/words.h"
#include "pictures/find_picture.h"

#include <map>
#include <string>
#include <utility>
#include <vector>

namespace dyeleaf {

namespace {

using Colour = std::optional<Sourced<RecordedColour>>;

// Those that are to be read from photographs, by the name of the file: each is unpacked once.
std::map<std::string, std::vector<Colour*>> photographed(Records& records) {
    std::map<std::string, std::vector<Colour*>> found;
    const auto add = [&](Colour& colour) {
        if (const auto* photo = colour ? photo_of(colour->value) : nullptr)
            found[photo->photo.name.value].push_back(&colour);
    };
    for (Base& base : records.bases)
        add(base.colour);
    for (Lot& lot : records.lots)
        add(lot.colour);
    for (Dye& dye : records.dyes) {
        for (Swatch& swatch : dye.swatches)
            add(swatch.colour);
        if (!dye.breaks_into) continue;
        for (Component& component : *dye.breaks_into)
            add(component.colour);
    }
    return found;
}

void report(const PhotoFault& fault, const PhotoColour& photo, Diagnostics& diagnostics) {
    switch (fault.about) {
    case PhotoFault::About::picture:
        diagnostics.error(photo.photo.name.spot,
                          "the picture " + in_quotes(photo.photo.name.value) + " " + fault.message, fault.help);
        break;
    case PhotoFault::About::swatch: diagnostics.error(photo.swatch_spot, fault.message, fault.help); break;
    case PhotoFault::About::reference: diagnostics.error(photo.reference_spot, fault.message, fault.help); break;
    }
}

// A colour that cannot be read is as one that is not recorded, once it has been complained of.
void read_colours(const std::vector<Colour*>& colours, const Reach& reach, Diagnostics& diagnostics) {
    const auto photo_in = [](Colour* colour) -> PhotoColour& {
        return *std::get<Boxed<PhotoColour>>((*colour)->value);
    };
    std::optional<PictureFile> picture;
    std::vector<PhotoQuestion> questions;
    for (Colour* colour : colours) {
        const auto& name = photo_in(colour).photo.name;
        if (questions.empty() || !picture) picture = find_picture(name.value, reach, name.spot, diagnostics);
        questions.push_back(photo_in(colour).question);
    }
    const auto answers = picture ? read_photograph(*picture, questions) : std::vector<PhotoAnswer>{};
    for (std::size_t i = 0; i < colours.size(); ++i) {
        const auto* reading = picture ? std::get_if<PhotoReading>(&answers[i]) : nullptr;
        if (picture && reading == nullptr) report(std::get<PhotoFault>(answers[i]), photo_in(colours[i]), diagnostics);
        if (reading == nullptr) {
            colours[i]->reset();
        } else {
            photo_in(colours[i]).photo.file = picture;
            photo_in(colours[i]).reading = *reading;
        }
    }
}

} // namespace

void read_pictures(Records& records, const Reach& reach, Diagnostics& diagnostics) {
    const auto read = [&](Boxed<RecordedPicture>& picture) {
        if (picture) picture->file = find_picture(picture->name.value, reach, picture->name.spot, diagnostics);
    };
    read(records.studio.logo);
    for (Lot& lot : records.lots)
        read(lot.picture);
    for (Dye& dye : records.dyes) {
        for (Swatch& swatch : dye.swatches)
            read(swatch.picture);
    }
    for (const auto& [name, colours] : photographed(records))
        read_colours(colours, reach, diagnostics);
}

} // namespace dyeleaf
