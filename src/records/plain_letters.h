// Letters of ids.
#pragma once

#include <string>
#include <string_view>

namespace dyeleaf {

// UTF-8 text in small letters a to z, the marks on Latin letters dropped: "Crème brûlée" is "creme brulee". What is
// no such letter stays as it is.
std::string plain_letters(std::string_view text);

} // namespace dyeleaf
