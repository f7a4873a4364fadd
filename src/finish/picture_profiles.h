// Photographs keep the colours that their camera meant.
#pragma once

#include "finish/qpdf_objects.h"

namespace dyeleaf {

// A JPEG that brings an ICC profile of its own, as those of many telephones do, is no longer taken for sRGB
// (ISO 32000-1, 8.6.5.5).
void keep_picture_profiles(QPDF& document);

} // namespace dyeleaf
