// Writes the front pages of one layout as a plain list of drawing instructions, for the floor to draw without a layout
// engine. One instruction a line, in points from the page's top left corner:
//
//   page WIDTH HEIGHT
//   fill COLOUR PATH                      PATH: m X Y, l X Y, c X Y X Y X Y, z, one after the other
//   stroke COLOUR WIDTH ROUND DASHES PATH DASHES: how many, then their lengths
//   text COLOUR SIZE X Y TURN FAMILY WEIGHT ITALIC TABULAR WORDS…
//   clip PATH … unclip                    what lies between is seen inside the path alone
//   form NUMBER LEFT TOP WIDTH HEIGHT … end form;  use NUMBER A B C D X Y
//   begin ROLE … end ROLE                 one part for a reader
#include "cli/caption.h"
#include "cli/job.h"
#include "facts/wording.h"
#include "layout/layout.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <iostream>
#include <limits>
#include <map>
#include <sstream>
#include <stdexcept>
#include <utility>

namespace {

using namespace dyeleaf;

std::string number(double value) {
    std::string text = fmt::format("{:.3f}", value);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
    return text == "-0" ? "0" : text;
}

// To a hundredth of a millimetre: nobody sees less, and pages pack better.
std::string points(Length length) {
    return number(mm(std::round(length.in_mm() * 100) / 100).in_pt());
}

std::string points(Point point) {
    return points(point.x) + " " + points(point.y);
}

// Grows around what is drawn.
struct Extent {
    double left = std::numeric_limits<double>::max(), top = left, right = -left, bottom = -left;

    void add(Point p, Length around) {
        const double by = around.in_pt();
        left = std::min(left, p.x.in_pt() - by);
        top = std::min(top, p.y.in_pt() - by);
        right = std::max(right, p.x.in_pt() + by);
        bottom = std::max(bottom, p.y.in_pt() + by);
    }
};

double scale_of(const Transform& t) {
    return std::hypot(t.a, t.b);
}

class ListWriter {
  public:
    ListWriter(const Typesetter& typesetter, std::ostream& out) : typesetter_(typesetter), out_(&out) {}

    // Lists that are drawn more than once are worth a form where they take more operators than it does.
    void count(const DisplayList& list) {
        for (const DisplayItem& item : list.items) {
            if (const auto* group = std::get_if<Group>(&item); group && ++uses_[group->list.get()] == 1)
                count(*group->list);
        }
    }

    void page(const DisplayList& list) {
        line("page " + points(Point{list.size.width, list.size.height}));
        draw(list, {});
    }

  private:
    void line(const std::string& words) { *out_ << words << "\n"; }

    void draw(const DisplayList& list, const Transform& place) {
        for (const DisplayItem& item : list.items)
            std::visit([&](const auto& one) { write(one, place); }, item);
    }

    std::string path(const Path& path, const Transform& place, Length around = {}) {
        std::string words;
        const auto add = [&](Point p) {
            const Point there = place.apply(p);
            extent_.add(there, around);
            words += " " + points(there);
        };
        for (const auto& step : path) {
            if (const auto* move = std::get_if<MoveTo>(&step)) {
                words += " m";
                add(move->to);
            } else if (const auto* to = std::get_if<LineTo>(&step)) {
                words += " l";
                add(to->to);
            } else if (const auto* curve = std::get_if<CurveTo>(&step)) {
                words += " c";
                add(curve->control1);
                add(curve->control2);
                add(curve->to);
            } else {
                words += " z";
            }
        }
        return words;
    }

    void write(const FillPath& fill, const Transform& place) {
        Transform moved = place;
        if (fill.dot > Length{}) {
            const Point first = place.apply(std::get<MoveTo>(fill.path.front()).to);
            moved.dx += fill.dot * std::round(first.x / fill.dot) - first.x;
            moved.dy += fill.dot * std::round(first.y / fill.dot) - first.y;
        }
        line("fill " + to_hex(fill.colour) + path(fill.path, moved));
    }

    void write(const StrokePath& stroke, const Transform& place) {
        const Length width = stroke.width * scale_of(place);
        std::string words = "stroke " + to_hex(stroke.colour) + " " + number(width.in_pt()) +
                            (stroke.round ? " 1 " : " 0 ") + std::to_string(stroke.dash.size());
        for (const Length dash : stroke.dash)
            words += " " + number((dash * scale_of(place)).in_pt());
        line(words + path(stroke.path, place, width));
    }

    void write(const DrawRun& draw, const Transform& place) {
        const Point at = place.apply(draw.baseline);
        const Length size = draw.size * scale_of(place);
        extent_.add(at, size);
        extent_.add(at + Point{size * draw.run->width, {}}, size);
        const Font font = font_of(*draw.run);
        line("text " + to_hex(draw.colour) + " " + number(size.in_pt()) + " " + points(at) + " " +
             number(draw.turn + std::atan2(place.b, place.a)) + " " + font.family + " " + std::to_string(font.weight) +
             (font.italic ? " 1" : " 0") + (font.tabular_figures ? " 1 " : " 0 ") + draw.run->text);
    }

    void write(const DrawPicture& /*picture*/, const Transform& /*place*/) {
        throw std::runtime_error("pictures cannot be drawn from a list");
    }

    void write(const Group& group, const Transform& place) {
        const Transform inner = place.after(group.transform);
        if (group.clip) line("clip" + path(*group.clip, inner));
        if (is_form(group)) {
            line("use " + std::to_string(form(group)) + " " + number(inner.a) + " " + number(inner.b) + " " +
                 number(inner.c) + " " + number(inner.d) + " " + points(Point{inner.dx, inner.dy}));
        } else {
            draw(*group.list, inner);
        }
        if (group.clip) line("unclip");
    }

    void write(const BeginTag& begin, const Transform& /*place*/) {
        roles_.emplace_back(begin.tag.role == Tag::Role::figure ? "Figure" : "P");
        if (!in_form_) line("begin " + roles_.back());
    }
    void write(const EndTag& /*end*/, const Transform& /*place*/) {
        if (!in_form_) line("end " + roles_.back());
        roles_.pop_back();
    }

    [[nodiscard]] bool is_form(const Group& group) const {
        constexpr std::size_t least_worthwhile = 20;
        std::size_t operators = 0;
        for (const DisplayItem& item : group.list->items) {
            if (const auto* fill = std::get_if<FillPath>(&item)) operators += fill->path.size();
            if (const auto* stroke = std::get_if<StrokePath>(&item)) operators += stroke->path.size();
        }
        return !in_form_ && uses_.at(group.list.get()) > 1 && operators >= least_worthwhile;
    }

    std::size_t form(const Group& group) {
        const auto [found, is_new] = forms_.emplace(group.list.get(), forms_.size());
        if (is_new) {
            std::string body;
            std::ostringstream buffer;
            std::ostream* const before = std::exchange(out_, &buffer);
            const Extent around = std::exchange(extent_, {});
            in_form_ = true;
            draw(*group.list, {});
            in_form_ = false;
            const Extent ink = std::exchange(extent_, around);
            out_ = before;
            line("form " + std::to_string(found->second) + " " + number(ink.left) + " " + number(ink.top) + " " +
                 number(ink.right - ink.left) + " " + number(ink.bottom - ink.top));
            *out_ << buffer.str();
            line("end form");
        }
        return found->second;
    }

    // The font that shapes these words to these glyphs.
    Font font_of(const ShapedRun& run) {
        const std::string name = std::filesystem::path{run.face.file}.stem().string();
        Font font{name.substr(0, name.find('-'))};
        const std::string cut = name.substr(name.find('-') + 1);
        font.weight = cut == "Medium" ? 500 : cut == "SemiBold" ? 600 : cut == "Bold" ? 700 : 400;
        font.italic = cut == "Italic";
        for (const bool tabular : {false, true}) {
            font.tabular_figures = tabular;
            const auto set = typesetter_.set(run.text, font, std::nullopt, false);
            if (set->lines.size() != 1 || set->lines[0].runs.size() != 1) continue;
            const std::vector<Glyph>& glyphs = set->lines[0].runs[0].run->glyphs;
            const auto alike = [](const Glyph& a, const Glyph& b) {
                return a.index == b.index && std::abs(a.x - b.x) < 0.01;
            };
            if (std::ranges::equal(glyphs, run.glyphs, alike)) return font;
        }
        throw std::runtime_error("“" + run.text + "” is set in no font that the floor has");
    }

    const Typesetter& typesetter_;
    std::ostream* out_;
    std::map<const DisplayList*, int> uses_;
    std::map<const DisplayList*, std::size_t> forms_;
    std::vector<std::string> roles_;
    Extent extent_;
    bool in_form_ = false;
};

int write_list(const std::string& layout, const Reach& folder, const std::string& data, const std::string& date,
               const std::string& file) {
    Diagnostics diagnostics;
    const Reach reach{folder};
    Render request{layout, reach, file, Format::pdf, {}};
    const auto today = parse_iso_date(date);
    const auto job = prepare(request, Library{data, reach}, today.value(), diagnostics);
    if (!job) {
        for (const Diagnostic& diagnostic : diagnostics.sorted())
            std::cerr << diagnostic.message << "\n";
        return 1;
    }
    std::vector<DisplayList> pages;
    for (std::size_t i = 0; i < job->plans.size(); ++i) {
        const SheetPlan& plan = job->plans[i];
        std::vector<std::shared_ptr<const DisplayList>> lists;
        std::vector<Trim> trims;
        for (const Slot& slot : plan.slots) {
            const Trim& trim = job->trims[slot.label];
            lists.push_back(
                place_label(job->design, job->items[slot.label], {trim.size, trim.sector}, job->typesetter, diagnostics)
                    .front);
            trims.push_back(trim);
        }
        const Language& language = job->languages.first;
        const std::string caption =
            fmt::format("{} · {} · {} · {}", language.say("sheet.actual size"), job->design.name,
                        language.say("sheet.place",
                                     {{"number", std::to_string(i + 1)}, {"count", std::to_string(job->plans.size())}}),
                        short_date(language, *today));
        pages.push_back(
            compose_sheet(plan, lists, trims, job->stock, Side::front, set_caption(caption, job->typesetter)));
    }
    std::ofstream out{file};
    ListWriter writer{job->typesetter, out};
    for (const DisplayList& page : pages)
        writer.count(page);
    for (const DisplayList& page : pages)
        writer.page(page);
    return out.good() ? 0 : 1;
}

} // namespace

int main(int count, char** words) {
    if (count != 6) {
        std::cerr << "bench_drawing_list LAYOUT FOLDER DATA DATE LIST\n";
        return 2;
    }
    try {
        return write_list(words[1], std::filesystem::path{words[2]}, words[3], words[4], words[5]);
    } catch (const std::exception& error) {
        std::cerr << error.what() << "\n";
        return 1;
    }
}
