// The tree by which a tagged PDF is read aloud: the document holds labels, which hold paragraphs, figures and links.
#pragma once

#include "display/tag.h"
#include "finish/qpdf_objects.h"

#include <vector>

namespace dyeleaf {

// Replaces the flat list of parts that the drawing library leaves. `tagged[i]` tells of `pages[i]`, whose n-th marked
// content is the n-th of its parts. Parts that lead somewhere become links that can be followed.
void add_structure(QPDF& document, const std::vector<PdfObject>& pages, const std::vector<TaggedPage>& tagged);

} // namespace dyeleaf
