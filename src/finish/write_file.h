// Files are put in place whole or not at all: written beside the target, synced, renamed.
#pragma once

#include "base/diagnostic.h"

#include <filesystem>
#include <memory>
#include <string>
#include <string_view>

namespace dyeleaf {

// A file on its way. Until it is put in place, nobody sees it; what never is, leaves nothing behind.
class PendingFile {
  public:
    // `target` may be there; a symbolic link to it stays one. What goes wrong is told by `put_in_place`.
    explicit PendingFile(std::filesystem::path target);
    ~PendingFile();
    PendingFile(PendingFile&&) noexcept;
    PendingFile& operator=(PendingFile&&) noexcept;

    [[nodiscard]] const std::filesystem::path& target() const { return target_; }
    // Once something has gone wrong, it does nothing more.
    void write(std::string_view bytes);
    // Nothing comes after this: what was written is made safe on the disk, and no longer held open. `put_in_place` does
    // it by itself; a run of many files does it for each.
    void complete();
    // False, with an error that names the file, where it could not be written: then the old one is still whole, or the
    // new one already, where all that failed was to make its name safe.
    bool put_in_place(Diagnostics& diagnostics);

  private:
    class Writing;
    std::filesystem::path target_;
    std::unique_ptr<Writing> writing_;
};

// A whole file at once.
bool write_file(const std::filesystem::path& target, std::string_view bytes, Diagnostics& diagnostics);

} // namespace dyeleaf
