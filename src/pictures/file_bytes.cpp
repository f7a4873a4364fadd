#include "pictures/file_bytes.h"

#include <algorithm>
#include <filesystem>
#include <fstream>

namespace dyeleaf {

std::optional<std::string> file_bytes(const std::string& file) {
    std::error_code error;
    if (!std::filesystem::is_regular_file(file, error)) return std::nullopt;
    const std::size_t size = std::min<std::size_t>(std::filesystem::file_size(file, error), most_file_bytes + 1);
    std::ifstream stream{file, std::ios::binary};
    std::string bytes(error ? 0 : size, '\0');
    if (error || !stream.read(bytes.data(), static_cast<std::streamsize>(size))) return std::nullopt;
    return bytes;
}

} // namespace dyeleaf
