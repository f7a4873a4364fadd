// A file in memory, for readers that want its path.
#pragma once

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>

#include <sys/mman.h>
#include <unistd.h>

namespace dyeleaf {

class ScratchFile {
  public:
    ScratchFile(const std::uint8_t* data, std::size_t size) : file_(memfd_create("input", 0)) {
        if (file_ < 0 || write(file_, data, size) != static_cast<ssize_t>(size)) std::abort();
    }
    ~ScratchFile() { (void)close(file_); }
    ScratchFile(const ScratchFile&) = delete;
    ScratchFile& operator=(const ScratchFile&) = delete;

    [[nodiscard]] std::string path() const { return "/proc/self/fd/" + std::to_string(file_); }

  private:
    int file_;
};

} // namespace dyeleaf
