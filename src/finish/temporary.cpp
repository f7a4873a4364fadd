#include "finish/temporary.h"

#include <signal.h>
#include <unistd.h>

#include <cerrno>
#include <charconv>
#include <string>
#include <string_view>
#include <system_error>
#include <vector>

namespace dyeleaf {

namespace fs = std::filesystem;

namespace {

// ".cards.pdf.dyeleaf-tmp-"; the number of the process follows.
std::string temporary_prefix(const fs::path& target) {
    constexpr std::size_t most_bytes = 200; // of the 255 that a name may have
    return "." + target.filename().string().substr(0, most_bytes) + ".dyeleaf-tmp-";
}

bool is_running(std::string_view process) {
    pid_t id = 0;
    const auto [end, error] = std::from_chars(process.data(), process.data() + process.size(), id);
    if (error != std::errc{} || end != process.data() + process.size() || id <= 0) return true; // not one of ours
    return ::kill(id, 0) == 0 || errno != ESRCH;
}

void remove_stale(const fs::path& target) {
    const std::string prefix = temporary_prefix(target);
    std::error_code problem;
    std::vector<fs::path> stale;
    for (fs::directory_iterator entry{folder_of(target), problem}; !problem && entry != fs::directory_iterator{};
         entry.increment(problem)) {
        const std::string name = entry->path().filename().string();
        if (name.starts_with(prefix) && !is_running(std::string_view{name}.substr(prefix.size()))) {
            stale.push_back(entry->path());
        }
    }
    for (const fs::path& one : stale)
        fs::remove_all(one, problem);
}

} // namespace

fs::path folder_of(const fs::path& target) {
    return target.has_parent_path() ? target.parent_path() : fs::path{"."};
}

fs::path temporary_beside(const fs::path& target) {
    remove_stale(target);
    fs::path temporary = folder_of(target) / (temporary_prefix(target) + std::to_string(::getpid()));
    std::error_code problem;
    fs::remove_all(temporary, problem);
    return temporary;
}

} // namespace dyeleaf
