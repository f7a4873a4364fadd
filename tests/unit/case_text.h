// Case files: many small cases in one text, each opened by a line `=== name`.
#pragma once

#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

namespace dyeleaf {

struct CaseText {
    std::string name;
    std::string body; // all lines up to the next case
};

inline std::vector<CaseText> read_cases(const std::filesystem::path& path) {
    std::ifstream file{path};
    std::vector<CaseText> cases;
    for (std::string line; std::getline(file, line);) {
        if (line.starts_with("=== ")) {
            cases.push_back({line.substr(4), {}});
        } else if (!cases.empty()) {
            cases.back().body += line + "\n";
        }
    }
    return cases;
}

} // namespace dyeleaf
