// Values that several records share: ids, dates, colours.
#pragma once

#include "records/records.h"
#include "source/document.h"
#include "source/fields.h"

#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

// A short word, at most 40 characters: letters a to z, digits, dot, dash, underscore. A colon stays free for
// `LOT:3-7` on the command line.
std::optional<Id> read_id(const Node& node, const std::string& what, Diagnostics& diagnostics);
// What names another record by its id. Any text: check_records looks it up, and knows the names that may stand in its
// place.
std::optional<Id> read_reference(const Node& node, const std::string& what, Diagnostics& diagnostics);
// One line of text that may be printed; a warning where curly quotation marks would be printed with it.
std::optional<std::string> read_name(const Node& node, const std::string& what, Diagnostics& diagnostics);
// ISO 8601 to the day, the month or the year, 1900 to 2199, or `unknown`.
std::optional<RecordedDate> read_date(const Node& node, const std::string& what, Diagnostics& diagnostics);
// "6 months", "2 years"; at most 20 years.
std::optional<Months> read_period(const Node& node, const std::string& what, Diagnostics& diagnostics);
// A text as in colour_notation.h, {reflectance: …} as in read_spectrum.h, or {photo: …} as in read_photo_colour.h.
std::optional<Sourced<RecordedColour>> read_colour(const Node& node, const std::string& what, Diagnostics& diagnostics);
// How it was taken, by “colour from”. Where nobody says: by instrument if it is a curve; a photograph is nothing else.
ColourSource read_colour_source(Fields& fields, const std::optional<Sourced<RecordedColour>>& colour);
// How the paper is turned for its back.
std::optional<Backs> read_backs(const Node& node, const std::string& what, Diagnostics& diagnostics);
// The name of a file beside the records.
std::optional<RecordedPicture> read_picture_name(const Node& node, const std::string& what, Diagnostics& diagnostics);
// The weight of a mL of loose powder.
std::optional<Density> read_bulk_density(const Node& node, const std::string& what, Diagnostics& diagnostics);

} // namespace dyeleaf
