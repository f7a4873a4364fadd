// What is known of a colour that was read from a photograph.
#pragma once

#include "base/number.h"
#include "facts/rows.h"
#include "records/records.h"

#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

using ColourOrNone = std::optional<Sourced<RecordedColour>>;

// Null where the colour comes from elsewhere.
const PhotoColour* photo_of(const ColourOrNone& colour);
// "ΔE00 3.1".
std::string difference_words(const Language& language, double delta_e_2000);

// `find` takes the view and gives its colour.
template <class View, class Find> std::vector<FactRow> photo_rows(const std::string& name, Find find) {
    using Text = std::optional<std::string>;
    const auto of = [&](const std::string& ending, const std::string& meaning, auto say, const std::string& how,
                        const std::string& source) {
        return Rows<View>::text(name + ending, meaning,
                                [find, say](const View& view, const Manner& manner) -> Text {
                                    const PhotoColour* photo = photo_of(find(view));
                                    if (photo == nullptr || !photo->reading) return std::nullopt;
                                    return say(*photo, manner);
                                },
                                {"", how, source});
    };
    const std::string difference = "ISO/CIE 11664-6";
    return {
        of(
            ".photo", "the photograph its colour was read from",
            [](const PhotoColour& photo, const Manner&) { return photo.photo.name.value; },
            "the middle half of the swatch's pixels by lightness, averaged as light; grey or white beside it taken for "
            "neutral and as light as recorded, by Bradford's cone responses",
            "ICC.1:2022, annex E; the average is common practice"),
        of(
            ".photo.spread", "how much the swatch varies in it",
            [](const PhotoColour& photo, const Manner& m) {
                return difference_words(m.language, photo.reading->spread);
            },
            "half of its pixels differ more from the colour", difference),
        of(
            ".photo.reference_spread", "how much the grey or white beside it varies",
            [](const PhotoColour& photo, const Manner& m) {
                return difference_words(m.language, photo.reading->reference_spread);
            },
            "half of its pixels differ more from its mean", difference),
        of(
            ".photo.profile", "what the numbers in its file were taken for",
            [](const PhotoColour& photo, const Manner&) { return photo.reading->read_as; },
            "the profile in the file, else as PNG and Exif say, else sRGB", "ICC.1:2022"),
    };
}

} // namespace dyeleaf
