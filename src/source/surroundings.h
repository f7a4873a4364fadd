// What stands open at a place of a YAML text, as far as it can be told without reading it: the reader's complaint
// often comes lines after the slip.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

namespace dyeleaf {

struct Surroundings {
    std::optional<std::size_t> bracket; // the innermost [ or { still open
    std::optional<std::size_t> remark;  // the # of a remark in an open bracket that took some of it along
    std::optional<std::size_t>
        quote; // the mark of a text in quotes that went on too far and ends just before, or never
};

Surroundings look_around(std::string_view text, std::size_t offset);

} // namespace dyeleaf
