// From the one to the other.
#pragma once

#include <optional>

namespace dyeleaf {

// An end that is open is nothing.
template <class T> struct Span { std::optional<T> least, most; };

} // namespace dyeleaf
