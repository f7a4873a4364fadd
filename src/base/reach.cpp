#include "base/reach.h"

#include <algorithm>
#include <system_error>

namespace dyeleaf {

namespace {

bool lies_in(const std::filesystem::path& folder, const std::filesystem::path& real) {
    std::error_code problem;
    const auto whole = std::filesystem::canonical(folder.empty() ? "." : folder, problem);
    return !problem && std::ranges::mismatch(whole, real).in1 == whole.end();
}

} // namespace

bool Reach::holds(const std::filesystem::path& file) const {
    std::error_code problem;
    const auto real = std::filesystem::weakly_canonical(std::filesystem::absolute(file, problem), problem);
    if (problem) return false;
    return lies_in(home, real) || std::ranges::any_of(also, [&](const auto& one) { return lies_in(one, real); });
}

} // namespace dyeleaf
