// Tells whether two labels would print the same, without keeping them.
#pragma once

#include "display/display_list.h"

#include <cstdint>
#include <functional>
#include <string>
#include <string_view>

namespace dyeleaf {

// 64-bit FNV-1a (IETF draft-eastlake-fnv): not for secrets.
class Digest {
  public:
    void add(std::string_view bytes);
    void add(std::uint64_t number); // eight bytes, the lowest first
    [[nodiscard]] std::uint64_t value() const { return value_; }

  private:
    std::uint64_t value_ = 0xcbf29ce484222325; // the draft's offset basis for 64 bits
};

// Of everything that leaves ink: lengths to a hundredth of a millimetre, colours to a thousandth, fonts by the names of
// their files, pictures by what `picture` says of the file with this name.
std::uint64_t digest(const DisplayList& list, const std::function<std::uint64_t(const std::string&)>& picture);

} // namespace dyeleaf
