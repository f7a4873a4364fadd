// The numbers under the bars: read with their check digit, and each of one article only.
#pragma once

#include "records/records.h"
#include "source/fields.h"

namespace dyeleaf {

// `ean` and `upc`.
ArticleNumbers read_article_numbers(Fields& fields);

// Warns of a number that two bases have, or two lots that differ in colourway or base: a till takes one for the other.
void warn_of_shared_numbers(const Records& records, Diagnostics& diagnostics);

} // namespace dyeleaf
