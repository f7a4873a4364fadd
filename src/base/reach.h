// How far files may lead.
#pragma once

#include <filesystem>
#include <utility>
#include <vector>

namespace dyeleaf {

// A folder with all that is below it, and others besides that the command line allows. Links count where they lead.
struct Reach {
    Reach(std::filesystem::path folder, std::vector<std::filesystem::path> others = {})
        : home(std::move(folder)), also(std::move(others)) {}

    // Whether this file, there or not, lies in one of them.
    [[nodiscard]] bool holds(const std::filesystem::path& file) const;

    std::filesystem::path home;
    std::vector<std::filesystem::path> also;
};

} // namespace dyeleaf
