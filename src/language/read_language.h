// A file of phrases becomes a Language.
#pragma once

#include "language/language.h"
#include "source/document.h"

#include <optional>
#include <string>

namespace dyeleaf {

// Nested headings make keys: `jar: {mixed: "mixed {date}"}` is "jar.mixed"; the items of a list are numbered from 1.
// What the file leaves out is taken from `beneath`, which for every language but English itself is English. Against
// that one each key and the holes of its phrase are checked: both unknown ones are errors, and so is a hole that is
// missing.
std::optional<Language> read_language(const Node& node, const std::string& code, const Language* beneath,
                                      Diagnostics& diagnostics);

} // namespace dyeleaf
