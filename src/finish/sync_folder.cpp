#include "finish/sync_folder.h"

#include "base/words.h"
#include "finish/descriptor.h"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <system_error>

namespace dyeleaf {

namespace {

// Zero: it worked, or there is nothing to be done.
int error_of_sync(const std::filesystem::path& folder) {
    const Descriptor descriptor{::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC)};
    if (!descriptor.open()) return errno == EACCES ? 0 : errno; // she may write there, and not read
    if (::fsync(descriptor.number()) == 0) return 0;
    const bool cannot_be_done = errno == EINVAL || errno == EBADF || errno == ENOTSUP || errno == EROFS;
    return cannot_be_done ? 0 : errno;
}

} // namespace

bool sync_folder(const std::filesystem::path& folder, const std::filesystem::path& made, Diagnostics& diagnostics) {
    const int error = error_of_sync(folder);
    if (error != 0) {
        diagnostics.error({},
                          "the disk does not say that it will keep " + in_quotes(made.string()) + ": " +
                              std::generic_category().message(error),
                          "look whether it is there and opens; better write it to another disk as well");
    }
    return error == 0;
}

} // namespace dyeleaf
