// A page that Cairo made as a form in another file.
#pragma once

#include "pdf/object_file.h"

#include <string>

namespace dyeleaf {

// The one page of `pdf`, with all that it refers to; the form's number. Reads PDF 1.4 as Cairo writes it: a table of
// objects, none of them inside another. Anything else is a std::runtime_error.
int import_page(const std::string& pdf, ObjectFile& file);

} // namespace dyeleaf
