#include "paint/cairo_handles.h"

#include "paint/painter.h"

namespace dyeleaf {

void check(cairo_status_t status, const std::string& what) {
    if (status != CAIRO_STATUS_SUCCESS) throw PaintError(what + ": " + cairo_status_to_string(status));
}

void check(cairo_t* context, const std::string& what) {
    check(cairo_status(context), what);
    check(cairo_surface_status(cairo_get_target(context)), what);
}

cairo_status_t append_bytes(void* bytes, const unsigned char* data, unsigned int length) {
    static_cast<std::string*>(bytes)->append(reinterpret_cast<const char*>(data), length);
    return CAIRO_STATUS_SUCCESS;
}

} // namespace dyeleaf
