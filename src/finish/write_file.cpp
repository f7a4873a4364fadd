#include "finish/write_file.h"

#include "base/words.h"
#include "finish/descriptor.h"
#include "finish/sync_folder.h"
#include "finish/temporary.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <optional>
#include <system_error>
#include <utility>

namespace dyeleaf {

namespace {

namespace fs = std::filesystem;

struct Problem {
    std::string message; // goes on after "cannot write “cards.pdf”: "
    std::string help;
};
using Outcome = std::optional<Problem>; // nothing: it worked

Problem problem_of(int error, const fs::path& folder) {
    switch (error) {
    case EACCES:
    case EPERM:
        return {"you may not write into the folder " + in_quotes(folder.string()),
                "choose another folder, or ask whoever looks after this computer for the right to write there"};
    case EROFS: return {"the folder is on a disk that can only be read", "choose a folder on another disk"};
    case ENOSPC:
    case EDQUOT: return {"the disk is full", "make room on the disk, then run this again"};
    case EFBIG: return {"the file would be larger than this computer allows", "print fewer labels at a time"};
    case ENAMETOOLONG: return {"the name is too long", "choose a shorter name"};
    default: return {std::generic_category().message(error), "try again, or choose another folder"};
    }
}

// The file that a symbolic link stands for, so that the link stays one.
fs::path behind_links(const fs::path& target) {
    std::error_code problem;
    if (!fs::is_symlink(target, problem)) return target;
    const fs::path real = fs::weakly_canonical(target, problem);
    return problem ? target : real;
}

Outcome check_place(const fs::path& target) {
    std::error_code ignored;
    const fs::path folder = folder_of(target);
    if (!target.has_filename()) return Problem{"a folder is not a file", "put a file's name after it"};
    if (!fs::exists(folder, ignored)) {
        return Problem{"there is no folder " + in_quotes(folder.string()),
                       "make the folder first, or correct its name"};
    }
    if (!fs::is_directory(folder, ignored)) {
        return Problem{in_quotes(folder.string()) + " is a file, not a folder", "choose a folder that exists"};
    }
    if (fs::exists(target, ignored) && !fs::is_directory(target, ignored) && ::access(target.c_str(), W_OK) != 0) {
        return Problem{"the file is write-protected", "choose another name, or take its protection away"};
    }
    if (fs::is_directory(target, ignored)) {
        return Problem{"there is a folder of this name", "choose another name, or put a file's name after it"};
    }
    if (fs::exists(target, ignored) && !fs::is_regular_file(target, ignored)) {
        return Problem{"this is not an ordinary file but a device or a pipe", "choose another name"};
    }
    return {};
}

bool write_all(int descriptor, std::string_view bytes) {
    while (!bytes.empty()) {
        const ssize_t written = ::write(descriptor, bytes.data(), bytes.size());
        if (written < 0 && errno == EINTR) continue;
        if (written < 0) return false;
        bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    return true;
}

// Who may read the old file may read the new one.
bool copy_rights(const fs::path& target, int descriptor) {
    struct stat old {};
    if (::stat(target.c_str(), &old) != 0) return errno == ENOENT;
    return ::fchmod(descriptor, old.st_mode & 0777U) == 0 || errno == EPERM;
}

} // namespace

class PendingFile::Writing {
  public:
    // `target` is the file itself, behind all links.
    explicit Writing(fs::path target) : target_(std::move(target)), problem_(check_place(target_)) {
        if (problem_) return;
        temporary_ = temporary_beside(target_);
        file_.emplace(::open(temporary_.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666));
        check(file_->open());
    }
    Writing(const Writing&) = delete;
    Writing& operator=(const Writing&) = delete;
    ~Writing() { drop(); }

    void write(std::string_view bytes) {
        if (!problem_) check(write_all(file_->number(), bytes));
    }

    void complete() {
        if (problem_ || !file_->open()) return;
        check(copy_rights(target_, file_->number()) && ::fsync(file_->number()) == 0 && file_->close());
    }

    Outcome put_in_place() {
        complete();
        if (!problem_) check(::rename(temporary_.c_str(), target_.c_str()) == 0);
        if (!problem_) temporary_.clear();
        return problem_;
    }

    [[nodiscard]] const fs::path& target() const { return target_; }

  private:
    // The first thing that goes wrong is the one that counts.
    void check(bool worked) {
        if (worked) return;
        problem_ = problem_of(errno, folder_of(target_));
        drop();
    }

    void drop() {
        file_.reset();
        if (!temporary_.empty()) ::unlink(temporary_.c_str());
        temporary_.clear();
    }

    fs::path target_, temporary_;
    Outcome problem_;
    std::optional<Descriptor> file_;
};

PendingFile::PendingFile(fs::path target)
    : target_(std::move(target)), writing_(std::make_unique<Writing>(behind_links(target_))) {}
PendingFile::~PendingFile() = default;
PendingFile::PendingFile(PendingFile&&) noexcept = default;
PendingFile& PendingFile::operator=(PendingFile&&) noexcept = default;

void PendingFile::write(std::string_view bytes) {
    writing_->write(bytes);
}

void PendingFile::complete() {
    writing_->complete();
}

bool PendingFile::put_in_place(Diagnostics& diagnostics) {
    const Outcome problem = writing_->put_in_place();
    if (!problem) return sync_folder(folder_of(writing_->target()), target_, diagnostics);
    diagnostics.error({}, "cannot write " + in_quotes(target_.string()) + ": " + problem->message, problem->help);
    return false;
}

bool write_file(const fs::path& target, std::string_view bytes, Diagnostics& diagnostics) {
    PendingFile file{target};
    file.write(bytes);
    return file.put_in_place(diagnostics);
}

} // namespace dyeleaf
