// Artwork that a document shows again and again, written into it once.
#pragma once

#include "display/display_list.h"
#include "paint/cairo_handles.h"

#include <functional>
#include <map>
#include <memory>

namespace dyeleaf {

class Forms {
  public:
    // The list as a recording from the second time on that it is asked for; null where drawing it is as good, because
    // it is new here or small, and where it holds codes or words along an arc. `draw` draws the list at the origin of a
    // context. Belongs to this object.
    cairo_surface_t* form(const std::shared_ptr<const DisplayList>& list, const std::function<void(cairo_t*)>& draw);

    // Lets go of what nobody else holds any more; between two pages.
    void forget_unused();

  private:
    struct Entry {
        std::weak_ptr<const DisplayList> list;
        CairoSurface recording;
    };
    std::map<const DisplayList*, Entry> entries_;
};

} // namespace dyeleaf
