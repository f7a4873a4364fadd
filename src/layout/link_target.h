// A line that is a web or mail address leads there in a PDF.
#pragma once

#include <string>
#include <string_view>

namespace dyeleaf {

// "wool@quillmoor.example" gives "mailto:wool@quillmoor.example", "quillmoor.example/shop" and "www.quillmoor.example"
// give "https://…", a whole URL itself. Empty for every other text: one with a space, or without a dot and letters
// after it, or with a dot that may be a number's.
std::string link_target(std::string_view text);

} // namespace dyeleaf
