// Web addresses by RFC 3986.
#pragma once

#include <string>
#include <string_view>

namespace dyeleaf {

// The letters, digits and signs that an address is written with (2.2 and 2.3), less the brackets and quotation marks
// that prose puts around one.
bool is_address_character(char c);

// At least two labels of letters, digits and hyphens, the last of letters alone (RFC 1123, 2.1).
bool is_host(std::string_view text);

// "https://quillmoor.example/shop": a scheme of the web, a host and what may follow it.
bool is_web_address(std::string_view text);

// As a part of an address: every byte but letters, digits and -._~ becomes % and two hexadecimal digits (2.1, 2.4).
std::string percent_encoded(std::string_view text);

} // namespace dyeleaf
