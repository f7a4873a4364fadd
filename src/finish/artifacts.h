// Ink that is not read aloud is said to be so, as a tagged PDF must (ISO 32000-1, 14.8.2.2).
#pragma once

#include "finish/qpdf_objects.h"

namespace dyeleaf {

// Marks what the page draws outside every tagged part as an artifact.
void mark_artifacts(PdfObject page);

} // namespace dyeleaf
