// What other programs make of a file.
#pragma once

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <memory>
#include <stdexcept>
#include <string>

namespace dyeleaf::outside {

inline std::filesystem::path written(const std::string& name, const std::string& bytes) {
    const std::filesystem::path file = std::filesystem::temp_directory_path() / ("dyeleaf-test-" + name);
    std::ofstream{file, std::ios::binary} << bytes;
    return file;
}

inline std::string contents(const std::filesystem::path& file) {
    std::ifstream stream{file, std::ios::binary};
    return {std::istreambuf_iterator<char>{stream}, {}};
}

// What the command prints; a command that fails is an exception.
inline std::string output(const std::string& command) {
    FILE* pipe = popen((command + " 2>&1").c_str(), "r");
    if (pipe == nullptr) throw std::runtime_error("cannot run " + command);
    std::string text;
    for (int c = std::fgetc(pipe); c != EOF; c = std::fgetc(pipe))
        text += static_cast<char>(c);
    if (pclose(pipe) != 0) throw std::runtime_error(command + " failed: " + text);
    return text;
}

} // namespace dyeleaf::outside
