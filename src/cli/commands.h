// What each command does and says.
#pragma once

#include "cli/options.h"

#include <filesystem>
#include <iosfwd>
#include <optional>
#include <string>

namespace dyeleaf {

// The world outside the program, as far as it is asked.
struct Surroundings {
    std::filesystem::path data; // see data_folder.h
    std::optional<std::string> source_date_epoch;
    bool errors_on_terminal = false;
};

// Exit statuses.
constexpr int all_well = 0;
constexpr int problems_found = 1;
constexpr int wrong_usage = 2;

// Results go to `out`, complaints to `err`; returns the exit status.
int run(const Command& command, const Surroundings& surroundings, std::ostream& out, std::ostream& err);

} // namespace dyeleaf
