#include "pdf/page_painter.h"

#include "base/overloaded.h"
#include "display/ink_bounds.h"
#include "pdf/syntax.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

namespace dyeleaf {

namespace {

// About how many operators a list takes; a form costs some 20 itself.
constexpr std::size_t least_worthwhile = 20;

std::size_t operators_of(const DisplayList& list) {
    const Overloaded count{[](const FillPath& fill) { return fill.path.size(); },
                           [](const StrokePath& stroke) { return stroke.path.size(); },
                           [](const DrawRun& draw) { return draw.run->glyphs.size(); },
                           [](const DrawPicture& /*picture*/) { return std::size_t{1}; },
                           [](const Group& group) { return 1 + operators_of(*group.list); },
                           [](const auto& /*tag*/) { return std::size_t{0}; }};
    std::size_t sum = 0;
    for (const DisplayItem& item : list.items)
        sum += std::visit(count, item);
    return sum;
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

PageMatrix in_points(const Transform& t) {
    return {t.a, t.b, t.c, t.d, t.dx.in_pt(), t.dy.in_pt()};
}

// Moved by less than a dot, so that the path's first point lies on a whole one of the page. A page may be stretched to
// suit its printer; the dots are not, nor is what is drawn on them.
PageMatrix on_dots(PageMatrix m, Point first, double dot) {
    const auto [x, y] = m.apply(first.x.in_pt(), first.y.in_pt());
    const double across = std::hypot(m.a, m.b);
    const double down = std::hypot(m.c, m.d);
    m = {m.a / across, m.b / across, m.c / down, m.d / down, m.e, m.f};
    const auto [moved_x, moved_y] = m.apply(first.x.in_pt(), first.y.in_pt());
    m.e += std::round(x / dot) * dot - moved_x;
    m.f += std::round(y / dot) * dot - moved_y;
    return m;
}

// Structure types of ISO 32000-1, 14.8.4.
const char* type_of(Tag::Role role) {
    return role == Tag::Role::figure ? "Figure" : "P";
}

} // namespace

PageContent PagePainter::paint(const DisplayList& list) {
    forget_unused_forms();
    canvas_ = {};
    tagged_.clear();
    parts_ = 0;
    canvas_.start_at_top(list.size.height.in_pt());
    draw(list);
    end_decoration();
    return {canvas_.operators(), canvas_.resources(), std::move(tagged_)};
}

void PagePainter::draw(const DisplayList& list) {
    for (const DisplayItem& item : list.items)
        std::visit([&](const auto& kind) { draw_item(kind); }, item);
}

void PagePainter::draw_item(const FillPath& fill) {
    begin_ink();
    if (fill.dot > Length{}) return fill_on_dots(fill);
    canvas_.fill(fill.path, fill.colour);
}

void PagePainter::fill_on_dots(const FillPath& fill) {
    const auto* first = fill.path.empty() ? nullptr : std::get_if<MoveTo>(&fill.path.front());
    if (first == nullptr) return;
    const PageMatrix& here = canvas_.matrix();
    const PageMatrix wanted = on_dots(here, first->to, fill.dot.in_pt());
    canvas_.save();
    canvas_.transform(here.inverse().after(wanted));
    canvas_.fill_exactly(fill.path, fill.colour);
    canvas_.restore();
}

void PagePainter::draw_item(const StrokePath& stroke) {
    begin_ink();
    canvas_.stroke(stroke);
}

void PagePainter::draw_item(const DrawRun& draw) {
    begin_ink();
    DocumentFont& font = fonts_.font(draw.run->face, file_);
    const double cos = std::cos(draw.turn);
    const double sin = std::sin(draw.turn);
    // Letters stand upward on a page whose y runs down.
    const PageMatrix place{cos, sin, sin, -cos, draw.baseline.x.in_pt(), draw.baseline.y.in_pt()};
    const double size = draw.size.in_pt();
    canvas_.begin_text(font.object(), size, place, draw.colour);
    append_run(canvas_.text(), *draw.run, size, font);
    canvas_.end_text();
}

// As large as fits in its rectangle, in the middle.
void PagePainter::draw_item(const DrawPicture& draw) {
    begin_ink();
    const double shape = draw.picture.shape;
    const double width = std::min(draw.rect.size.width.in_pt(), draw.rect.size.height.in_pt() * shape);
    const double height = width / shape;
    const Point middle = draw.rect.centre();
    const ShownPicture shown = images_.show(draw.picture, draw.grey, width, height);
    const PageMatrix corner{1, 0, 0, 1, middle.x.in_pt() - width / 2, middle.y.in_pt() - height / 2};
    canvas_.save();
    canvas_.transform(corner.after(shown.placed));
    canvas_.draw(shown.object);
    canvas_.restore();
}

void PagePainter::draw_item(const Group& group) {
    if (group.is_label) tagged_.emplace_back();
    canvas_.save();
    canvas_.transform(in_points(group.transform));
    if (group.clip) canvas_.clip(*group.clip);
    if (const int form = form_of(group.list)) {
        draw_form(form, group);
    } else {
        draw(*group.list);
    }
    canvas_.restore();
}

void PagePainter::draw_form(int form, const Group& group) {
    // Parts inside it are heard as one; inside a part it is only ink.
    const std::string words = in_form_ || part_ ? std::string{} : reading_text(*group.list);
    if (!words.empty()) draw_item(BeginTag{{Tag::Role::replica, words, {}, {}}});
    begin_ink();
    canvas_.draw(form);
    if (!words.empty()) draw_item(EndTag{});
}

void PagePainter::draw_item(const BeginTag& begin) {
    if (in_form_) return;
    end_decoration();
    if (tagged_.empty()) tagged_.emplace_back();
    part_ = begin.tag;
    canvas_.begin_mark(fmt::format("/{} <</MCID {}>> BDC", type_of(begin.tag.role), parts_++));
    if (begin.tag.spelled) canvas_.begin_mark("/Span <</ActualText" + text_string(begin.tag.words) + ">> BDC");
    const PageMatrix& m = canvas_.matrix();
    const Transform here{m.a, m.b, m.c, m.d, pt(m.e), pt(m.f)};
    tagged_.back().parts.push_back(begin.tag);
    tagged_.back().parts.back().place = here.bounds(begin.tag.place);
}

void PagePainter::draw_item(const EndTag& /*end*/) {
    if (in_form_ || !part_) return;
    if (part_->spelled) canvas_.end_mark();
    canvas_.end_mark();
    part_.reset();
}

void PagePainter::begin_ink() {
    if (in_form_ || part_ || in_decoration_) return;
    canvas_.begin_mark("/Artifact BMC");
    in_decoration_ = true;
}

void PagePainter::end_decoration() {
    if (std::exchange(in_decoration_, false)) canvas_.end_mark();
}

int PagePainter::form_of(const std::shared_ptr<const DisplayList>& list) {
    Form& known = forms_[list.get()];
    if (known.list.lock() != list) { // new, or another list where one has gone
        known = {list, 0};
        return 0;
    }
    if (known.object == 0 && operators_of(*list) >= least_worthwhile && !is_drawn_anew(*list))
        known.object = put_form(*list);
    return known.object;
}

int PagePainter::put_form(const DisplayList& list) {
    Canvas page = std::exchange(canvas_, Canvas{});
    const bool before = std::exchange(in_form_, true);
    draw(list);
    in_form_ = before;
    const Canvas form = std::exchange(canvas_, std::move(page));
    const Rect ink = ink_bounds(list);
    std::string entries = "/Type/XObject/Subtype/Form/BBox[";
    for (const Length edge : {ink.left(), ink.top(), ink.right(), ink.bottom()}) {
        append_number(entries, edge.in_pt(), 2);
        entries += ' ';
    }
    return file_.put_stream(entries + "]/Resources" + form.resources().dictionary(), form.operators());
}

void PagePainter::forget_unused_forms() {
    std::erase_if(forms_, [](const auto& entry) { return entry.second.list.expired(); });
}

} // namespace dyeleaf
