// A disk that fails on demand: loaded before the C library, it lets one kind of call fail, once files of ours are
// written. FAILING_CALL names it (open, write, fsync, fsync folder, fchmod, close or rename), FAILING_ERROR the error's
// number, and FAILING_PART a part of the file's name and folder. A write first takes half of its bytes, as a disk does
// that is running full. KILLED_AT instead kills the run before so many such calls, of all kinds together and counted
// from 1.
#include <cerrno>
#include <csignal>
#include <cstdarg>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <dlfcn.h>
#include <fcntl.h>
#include <string_view>
#include <sys/stat.h>
#include <sys/types.h>
#include <unistd.h>

namespace {

bool fails(const char* call) {
    static int calls = 0;
    const char* killed_at = std::getenv("KILLED_AT");
    if (killed_at != nullptr && ++calls == std::atoi(killed_at)) std::raise(SIGKILL);
    const char* chosen = std::getenv("FAILING_CALL");
    if (chosen == nullptr || std::string_view{chosen} != call) return false;
    errno = std::atoi(std::getenv("FAILING_ERROR"));
    return true;
}

bool is_ours(const char* name) {
    return std::strstr(name, std::getenv("FAILING_PART")) != nullptr;
}

bool is_ours(int descriptor) {
    char link[64];
    char name[4096] = {};
    std::snprintf(link, sizeof link, "/proc/self/fd/%d", descriptor);
    return ::readlink(link, name, sizeof name - 1) > 0 && is_ours(name);
}

bool is_folder(int descriptor) {
    struct stat file {};
    return ::fstat(descriptor, &file) == 0 && S_ISDIR(file.st_mode);
}

template <class Function> Function next(const char* name, Function) {
    return reinterpret_cast<Function>(::dlsym(RTLD_NEXT, name));
}

} // namespace

extern "C" {

int open(const char* name, int flags, ...) {
    std::va_list rest;
    va_start(rest, flags);
    const mode_t mode = (flags & O_CREAT) != 0 ? static_cast<mode_t>(va_arg(rest, int)) : 0;
    va_end(rest);
    if ((flags & O_WRONLY) != 0 && is_ours(name) && fails("open")) return -1;
    return next("open", &open)(name, flags, mode);
}

ssize_t write(int descriptor, const void* bytes, size_t count) {
    const auto real = next("write", &write);
    if (!is_ours(descriptor) || !fails("write")) return real(descriptor, bytes, count);
    if (count > 1) return real(descriptor, bytes, count / 2);
    (void)fails("write");
    return -1;
}

int fsync(int descriptor) {
    const char* call = is_folder(descriptor) ? "fsync folder" : "fsync";
    return is_ours(descriptor) && fails(call) ? -1 : next("fsync", &fsync)(descriptor);
}

int fchmod(int descriptor, mode_t mode) {
    return is_ours(descriptor) && fails("fchmod") ? -1 : next("fchmod", &fchmod)(descriptor, mode);
}

int close(int descriptor) {
    const bool failing = is_ours(descriptor);
    const int result = next("close", &close)(descriptor);
    return failing && fails("close") ? -1 : result;
}

int rename(const char* from, const char* to) noexcept {
    return is_ours(from) && fails("rename") ? -1 : next("rename", &rename)(from, to);
}
}
