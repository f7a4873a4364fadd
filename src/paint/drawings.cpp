#include "paint/drawings.h"

#include "base/words.h"
#include "paint/painter.h"
#include "paint/pixels.h"
#include "pictures/file_bytes.h"

#include <signal.h>
#include <sys/resource.h>
#include <sys/time.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cmath>
#include <string_view>

#include <dlfcn.h>
#include <librsvg/rsvg.h>

namespace dyeleaf {

namespace {

// librsvg, and what it brings along, take as long to load as a tag takes to print, and few runs show a drawing: it
// comes with the first.
class Renderer {
  public:
    Renderer() : library_(dlopen("librsvg-2.so.2", RTLD_LAZY | RTLD_LOCAL)) {
        find(read, "rsvg_handle_new_from_data");
        find(render, "rsvg_handle_render_document");
    }

    decltype(&rsvg_handle_new_from_data) read = nullptr;
    decltype(&rsvg_handle_render_document) render = nullptr;

  private:
    template <class Function> void find(Function& function, const char* name) {
        void* found = library_ == nullptr ? nullptr : dlsym(library_, name);
        if (found == nullptr) throw PaintError("drawings need librsvg, version 2, which is not installed");
        function = reinterpret_cast<Function>(found);
    }

    void* library_; // stays: its types live as long as the program
};

const Renderer& renderer() {
    static const Renderer loaded;
    return loaded;
}

[[noreturn]] void refuse(const std::string& file, std::string_view why) {
    throw PaintError("the drawing " + in_quotes(file) + " " + std::string{why});
}

constexpr std::string_view cannot_be_drawn = "cannot be drawn: save it again as a plain SVG";

// From memory and without an address, so that it can load nothing else. Null where it is broken.
RsvgHandle* load(const std::string& bytes) {
    return renderer().read(reinterpret_cast<const guint8*>(bytes.data()), bytes.size(), nullptr);
}

enum class Look { sound, broken, endless };

// At a small picture of it.
Look look_at(const std::string& bytes) noexcept {
    constexpr int side = 256;
    const std::unique_ptr<RsvgHandle, DrawingDeleter> drawing{load(bytes)};
    const CairoSurface small{cairo_image_surface_create(CAIRO_FORMAT_ARGB32, side, side)};
    const CairoContext context{cairo_create(small.get())};
    const RsvgRectangle place{0, 0, side, side};
    const bool sound = drawing && renderer().render(drawing.get(), context.get(), &place, nullptr) != FALSE;
    return sound ? Look::sound : Look::broken;
}

// By a process of its own, which is stopped after half a second's work: some thousand lines that cross one another
// would take hours. Where that one did not get to work, but waited for what the threads of this one hold, or could not
// be begun, this one looks.
Look look_from_afar(const std::string& bytes) {
    (void)renderer(); // or every such process would load it again
    const pid_t child = ::fork();
    if (child < 0) return look_at(bytes);
    if (child == 0) {
        constexpr itimerval half_a_second{{0, 0}, {0, 500'000}};
        ::signal(SIGVTALRM, SIG_DFL);
        ::signal(SIGALRM, SIG_DFL);
        ::setitimer(ITIMER_VIRTUAL, &half_a_second, nullptr);
        ::alarm(5);
        ::_exit(static_cast<int>(look_at(bytes)));
    }
    int status = 0;
    rusage used{};
    while (::wait4(child, &status, 0, &used) < 0 && errno == EINTR) {
    }
    if (WIFEXITED(status)) return static_cast<Look>(WEXITSTATUS(status));
    if (WTERMSIG(status) == SIGVTALRM) return Look::endless;
    const bool waited = WTERMSIG(status) == SIGALRM && used.ru_utime.tv_sec == 0 && used.ru_utime.tv_usec < 100'000;
    if (waited) return look_at(bytes);
    return WTERMSIG(status) == SIGALRM ? Look::endless : Look::broken;
}

} // namespace

void DrawingDeleter::operator()(RsvgHandle* drawing) const {
    g_object_unref(drawing);
}

RsvgHandle* Drawings::drawing(const std::string& file) {
    auto& known = drawings_[file];
    if (known) return known.get();
    if (const auto bytes = file_bytes(file)) known.reset(load(*bytes));
    if (!known) refuse(file, cannot_be_drawn);
    return known.get();
}

void Drawings::look(const std::string& file) {
    if (!looked_at_.insert(file).second) return;
    const auto bytes = file_bytes(file);
    switch (bytes ? look_from_afar(*bytes) : Look::broken) {
    case Look::sound: return;
    case Look::endless: refuse(file, "takes too long to draw: simplify it in your drawing program, or save it as PNG");
    case Look::broken: refuse(file, cannot_be_drawn);
    }
}

void Drawings::draw(cairo_t* context, const std::string& file, double width, double height) {
    look(file);
    const RsvgRectangle place{0, 0, width, height};
    if (renderer().render(drawing(file), context, &place, nullptr) == FALSE) refuse(file, cannot_be_drawn);
}

// Looked for in a small picture of it.
bool Drawings::is_coloured(const std::string& file, double shape) {
    if (const auto known = coloured_.find(file); known != coloured_.end()) return known->second;
    constexpr double side = 256;
    const double scale = side / std::max(shape, 1.0);
    const CairoSurface small{cairo_image_surface_create(CAIRO_FORMAT_ARGB32, static_cast<int>(std::ceil(scale * shape)),
                                                        static_cast<int>(std::ceil(scale)))};
    const CairoContext context{cairo_create(small.get())};
    draw(context.get(), file, scale * shape, scale);
    check(context.get(), "a drawing cannot be looked at");
    return coloured_[file] = has_colour(small.get());
}

cairo_surface_t* Drawings::in_grey(const std::string& file, double width, double height) {
    constexpr double fine = 1200.0 / 72; // pixels to the point: the dots of a good laser printer
    constexpr double most = 4000;        // a side
    const double scale = std::min(fine, most / std::max(width, height));
    const auto pixels = [&](double side) { return std::max(1, static_cast<int>(std::lround(side * scale))); };
    CairoSurface& known = greys_[{file, pixels(height)}];
    if (known) return known.get();
    known.reset(cairo_image_surface_create(CAIRO_FORMAT_ARGB32, pixels(width), pixels(height)));
    const CairoContext context{cairo_create(known.get())};
    draw(context.get(), file, pixels(width), pixels(height));
    check(context.get(), "a drawing cannot be made grey");
    make_grey(known.get());
    return known.get();
}

} // namespace dyeleaf
