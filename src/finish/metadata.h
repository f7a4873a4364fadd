// What a file says of itself, twice: in the old information dictionary and in XMP, with the same words.
#pragma once

#include "finish/finish_pdf.h"
#include "finish/qpdf_objects.h"

#include <string>

namespace dyeleaf {

void add_metadata(QPDF& document, const PdfDetails& details);

// The XMP packet (ISO 16684-1): title, author, language, producer, not trapped. No dates: the same records must make
// the same bytes on another day.
std::string xmp_packet(const PdfDetails& details);

} // namespace dyeleaf
