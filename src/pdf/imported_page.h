// A page of another PDF as a form. The only room that includes qpdf.
#pragma once

#include "pdf/object_file.h"

#include <string>

namespace dyeleaf {

// The first page of `pdf`, with all that it refers to; the form's number. A PDF that cannot be read is a
// std::runtime_error.
int import_page(const std::string& pdf, ObjectFile& file);

} // namespace dyeleaf
