#include "paint/forms.h"

#include <algorithm>

namespace dyeleaf {

namespace {

// About how many operators a list takes; a form costs some 20 itself.
constexpr std::size_t least_worthwhile = 20;

std::size_t operators(const DisplayList& list);

struct OperatorCounter {
    std::size_t operator()(const FillPath& fill) const { return fill.path.size(); }
    std::size_t operator()(const StrokePath& stroke) const { return stroke.path.size(); }
    std::size_t operator()(const DrawRun& draw) const { return draw.run->glyphs.size(); }
    std::size_t operator()(const DrawPicture& /*picture*/) const { return 1; } // a form already
    std::size_t operator()(const BeginTag& /*begin*/) const { return 0; }
    std::size_t operator()(const EndTag& /*end*/) const { return 0; }
    std::size_t operator()(const Group& group) const { return 1 + operators(*group.list); }
};

std::size_t operators(const DisplayList& list) {
    std::size_t count = 0;
    for (const DisplayItem& item : list.items)
        count += std::visit(OperatorCounter{}, item);
    return count;
}

// In a form, words that are written beside their letters would be lost, and a code would lie on the form's dots instead
// of the page's.
bool is_drawn_anew(const DisplayList& list) {
    return std::ranges::any_of(list.items, [](const DisplayItem& item) {
        if (const auto* group = std::get_if<Group>(&item)) return is_drawn_anew(*group->list);
        if (const auto* fill = std::get_if<FillPath>(&item)) return fill->dot > Length{};
        const auto* begin = std::get_if<BeginTag>(&item);
        return begin != nullptr && begin->tag.spelled;
    });
}

CairoSurface record(const cairo_rectangle_t* extents, const std::function<void(cairo_t*)>& draw) {
    CairoSurface surface{cairo_recording_surface_create(CAIRO_CONTENT_COLOR_ALPHA, extents)};
    const CairoContext context{cairo_create(surface.get())};
    draw(context.get());
    check(context.get(), "a repeated drawing cannot be recorded");
    return surface;
}

} // namespace

cairo_surface_t* Forms::form(const std::shared_ptr<const DisplayList>& list,
                             const std::function<void(cairo_t*)>& draw) {
    Entry& entry = entries_[list.get()];
    if (entry.list.lock() != list) { // new, or another list where one has gone
        entry = {list, nullptr};
        return nullptr;
    }
    if (!entry.recording && operators(*list) >= least_worthwhile && !is_drawn_anew(*list)) {
        // A PDF form needs its edges, and ink may lie outside the list's own size.
        const CairoSurface boundless = record(nullptr, draw);
        cairo_rectangle_t ink{};
        cairo_recording_surface_ink_extents(boundless.get(), &ink.x, &ink.y, &ink.width, &ink.height);
        entry.recording = record(&ink, draw);
    }
    return entry.recording.get();
}

void Forms::forget_unused() {
    std::erase_if(entries_, [](const auto& entry) { return entry.second.list.expired(); });
}

} // namespace dyeleaf
