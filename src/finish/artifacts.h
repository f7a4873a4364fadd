// What a page says of its ink: some of it is not read aloud, as a tagged PDF must say (ISO 32000-1, 14.8.2.2), and some
// letters stand so that their words are written beside them (14.9.4).
#pragma once

#include "display/tag.h"
#include "finish/qpdf_objects.h"

namespace dyeleaf {

// Marks what the page draws outside every tagged part as an artifact, and writes the words of spelled parts beside
// their letters. The page's n-th marked content is the n-th of the parts.
void mark_content(PdfObject page, const TaggedPage& tagged);

} // namespace dyeleaf
