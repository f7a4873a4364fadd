#include "base/number.h"
#include "base/words.h"
#include "display/display_list.h"

#include <algorithm>
#include <array>
#include <iterator>

namespace dyeleaf {

namespace {

std::string number(double value) {
    return decimal(value, 2);
}

std::string number(Length length) {
    return number(length.in_mm());
}

std::string point(Point p) {
    return number(p.x) + "," + number(p.y);
}

// The rectangle around a path's points, control points among them.
Rect bounds(const Path& path) {
    std::vector<Point> points;
    for (const auto& step : path) {
        if (const auto* move = std::get_if<MoveTo>(&step)) {
            points.push_back(move->to);
        } else if (const auto* line = std::get_if<LineTo>(&step)) {
            points.push_back(line->to);
        } else if (const auto* curve = std::get_if<CurveTo>(&step)) {
            points.insert(points.end(), {curve->control1, curve->control2, curve->to});
        }
    }
    if (points.empty()) return {};
    Point least = points.front();
    Point most = points.front();
    for (const Point p : points) {
        least = {smaller(least.x, p.x), smaller(least.y, p.y)};
        most = {larger(most.x, p.x), larger(most.y, p.y)};
    }
    return {least, {most.x - least.x, most.y - least.y}};
}

std::string escaped(const std::string& text) {
    std::string shown = "\"";
    for (const char c : text) {
        if (c == '"' || c == '\\') shown += '\\';
        shown += c;
    }
    return shown + "\"";
}

void write_list(const DisplayList& list, const std::string& indent, std::string& text);

struct ItemWriter {
    const std::string& indent;
    std::string& text;

    void operator()(const FillPath& fill) const {
        line("fill " + to_string(bounds(fill.path)) + " " + to_hex(fill.colour));
    }

    void operator()(const StrokePath& stroke) const {
        std::string words = "stroke " + to_string(bounds(stroke.path)) + " " + to_hex(stroke.colour) + " " +
                            number(stroke.width) + "mm";
        if (!stroke.dash.empty()) {
            std::vector<std::string> lengths;
            std::ranges::transform(stroke.dash, std::back_inserter(lengths), [](Length l) { return number(l); });
            words += " dash " + joined(lengths, ",");
        }
        if (stroke.round) words += " round";
        line(words);
    }

    void operator()(const DrawRun& draw) const {
        const std::string words = draw.run ? draw.run->text : std::string{};
        const std::string turn = draw.turn == 0 ? std::string{} : " turn " + number(draw.turn);
        line("text " + point(draw.baseline) + " " + escaped(words) + " " + number(draw.size.in_pt()) + "pt " +
             to_hex(draw.colour) + turn);
    }

    void operator()(const DrawPicture& picture) const {
        line("picture " + to_string(picture.rect) + " " + escaped(picture.picture.file));
    }

    void operator()(const BeginTag& begin) const {
        constexpr std::array roles = {"paragraph", "figure", "replica"};
        std::string words = std::string{"begin "} + roles.at(static_cast<std::size_t>(begin.tag.role));
        if (!begin.tag.words.empty()) words += " " + escaped(begin.tag.words);
        if (!begin.tag.target.empty()) words += " to " + begin.tag.target;
        line(words);
    }

    void operator()(const EndTag& /*end*/) const { line("end"); }

    void operator()(const Group& group) const {
        std::string words = "group";
        const Transform& t = group.transform;
        const bool turned = t.a != 1 || t.b != 0 || t.c != 0 || t.d != 1;
        if (turned) words += " turn " + number(t.a) + "," + number(t.b) + "," + number(t.c) + "," + number(t.d);
        if (turned || t.dx != Length{} || t.dy != Length{}) words += " move " + point({t.dx, t.dy});
        if (group.clip) words += " clip " + to_string(bounds(*group.clip));
        line(words);
        if (group.list) write_list(*group.list, indent + "  ", text);
    }

    void line(const std::string& words) const { text += indent + words + "\n"; }
};

void write_list(const DisplayList& list, const std::string& indent, std::string& text) {
    for (const DisplayItem& item : list.items)
        std::visit(ItemWriter{indent, text}, item);
}

} // namespace

std::string dump(const DisplayList& list) {
    std::string text;
    write_list(list, "", text);
    return text;
}

} // namespace dyeleaf
