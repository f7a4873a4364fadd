// Title, studio and language as a PDF holds them.
#pragma once

#include "pdf/pdf_details.h"

#include <string>

namespace dyeleaf {

// XMP (ISO 16684-1), without a date: the same input makes the same bytes.
std::string xmp_packet(const PdfDetails& details);

// The document information dictionary (ISO 32000-1, 14.3.3).
std::string information_dictionary(const PdfDetails& details);

} // namespace dyeleaf
