// A recorded picture as a fact.
#pragma once

#include "facts/facts.h"
#include "records/records.h"

#include <optional>
#include <string>

namespace dyeleaf {

// Nothing where none is recorded, or its file has not been read.
std::optional<Illustration> illustration(const Boxed<RecordedPicture>& picture, std::string description,
                                         std::string owner);

} // namespace dyeleaf
