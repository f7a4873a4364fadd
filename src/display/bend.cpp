#include "display/bend.h"

#include "display/transform_path.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>
#include <vector>

namespace dyeleaf {

namespace {

// Capitals of most text faces are about this tall, in ems.
constexpr double cap_height = 0.7;

Transform turn_about(Point flat, double turn, Point at) {
    const double c = std::cos(turn);
    const double s = std::sin(turn);
    const Transform turned{c, s, -s, c, at.x, at.y};
    return turned.after(Transform::move({-flat.x, -flat.y}));
}

// What is as it is, turned about its middle.
Transform rigid(Point middle, const Sector& sector) {
    return turn_about(middle, sector.turn_at(middle.x), sector.at(middle));
}

// Paths.

// A point of a flat line and how it moves on from there.
struct Motion {
    Point at, speed;
};

Motion bent(const Motion& flat, const Sector& sector) {
    const double turn = sector.turn_at(flat.at.x);
    const double stretch = sector.radius_at(flat.at.y) / sector.inner;
    const Length round = flat.speed.x * stretch;
    const Length down = flat.speed.y;
    return {sector.at(flat.at),
            {round * std::cos(turn) - down * std::sin(turn), round * std::sin(turn) + down * std::cos(turn)}};
}

Point operator*(Point p, double k) {
    return {p.x * k, p.y * k};
}

Motion on_line(Point from, Point to, double t) {
    return {from * (1 - t) + to * t, to - from};
}

Motion on_curve(Point from, const CurveTo& curve, double t) {
    const double u = 1 - t;
    const Point at = from * (u * u * u) + curve.control1 * (3 * u * u * t) + curve.control2 * (3 * u * t * t) +
                     curve.to * (t * t * t);
    const Point speed = (curve.control1 - from) * (3 * u * u) + (curve.control2 - curve.control1) * (6 * u * t) +
                        (curve.to - curve.control2) * (3 * t * t);
    return {at, speed};
}

class PathBender {
  public:
    explicit PathBender(const Sector& sector) : sector_(sector) {}

    void operator()(const MoveTo& move) {
        path.push_back(MoveTo{sector_.at(move.to)});
        at_ = start_ = move.to;
    }
    void operator()(const LineTo& line) { line_to(line.to); }
    void operator()(const CurveTo& curve) {
        const Length span =
            larger(larger(apart(at_.x, curve.control1.x), apart(at_.x, curve.control2.x)), apart(at_.x, curve.to.x));
        const Point from = at_;
        follow([&](double t) { return on_curve(from, curve, t); }, std::max(pieces(span), 4));
        at_ = curve.to;
    }
    void operator()(const ClosePath& close) {
        line_to(start_);
        path.push_back(close);
    }

    Path path;

  private:
    static Length apart(Length a, Length b) { return a < b ? b - a : a - b; }

    // So many that each goes round by no more than a twentieth of a radian, and no farther than 5 mm.
    [[nodiscard]] int pieces(Length along) const {
        constexpr double most = 0.05;
        return static_cast<int>(std::ceil(std::max(along / sector_.inner / most, along / mm(5))));
    }

    void line_to(Point to) {
        const Length along = apart(at_.x, to.x);
        if (near(along, Length{})) { // a radius stays straight
            if (!near(at_.y, to.y)) path.push_back(LineTo{sector_.at(to)});
        } else {
            const Point from = at_;
            follow([&](double t) { return on_line(from, to, t); }, pieces(along));
        }
        at_ = to;
    }

    // Cubic pieces that leave and arrive as the bent line does.
    template <class Move> void follow(const Move& move, int pieces) {
        Motion here = bent(move(0), sector_);
        for (int i = 1; i <= pieces; ++i) {
            const Motion there = bent(move(static_cast<double>(i) / pieces), sector_);
            const double third = 1.0 / 3 / pieces;
            path.push_back(CurveTo{here.at + here.speed * third, there.at - there.speed * third, there.at});
            here = there;
        }
    }

    const Sector& sector_;
    Point at_, start_; // on the flat
};

// Text.

bool is_blank(const std::string& text) {
    return text == " " || text == "\u00A0" || text == "\u202F" || text == "\u2009";
}

// The radius at which a line keeps its distances: where the letters stand closest, at their feet on a rainbow, at
// their heads where the centre lies above.
Length closest_radius(const Sector& sector, Length baseline, Length size) {
    const Length radius = sector.radius_at(baseline);
    return sector.centre_below ? radius : radius - size * cap_height;
}

// One cluster of a run as a run of its own, and where it starts.
struct Letter {
    std::shared_ptr<const ShapedRun> run;
    double x = 0; // from the whole run's left end, in ems
};

std::vector<Letter> letters_of(const ShapedRun& run) {
    std::vector<Letter> letters;
    std::size_t byte = 0;
    std::size_t taken = 0; // glyphs, from the end where the run goes leftward
    for (const Cluster& cluster : run.clusters) {
        const auto glyphs = static_cast<std::size_t>(cluster.glyphs);
        const std::size_t first = run.right_to_left ? run.glyphs.size() - taken - glyphs : taken;
        const std::size_t after = first + glyphs;
        const double start = run.glyphs[first].x;
        const double end = after < run.glyphs.size() ? run.glyphs[after].x : run.width;
        ShapedRun letter{run.face,
                         run.text.substr(byte, static_cast<std::size_t>(cluster.bytes)),
                         {},
                         {cluster},
                         run.right_to_left,
                         end - start};
        for (std::size_t i = first; i < after; ++i)
            letter.glyphs.push_back({run.glyphs[i].index, run.glyphs[i].x - start, run.glyphs[i].y});
        letters.push_back({std::make_shared<const ShapedRun>(std::move(letter)), start});
        byte += static_cast<std::size_t>(cluster.bytes);
        taken += glyphs;
    }
    return letters;
}

DrawRun stood_up(const DrawRun& draw, const Letter& letter, const Sector& sector) {
    const Length half = draw.size * letter.run->width / 2;
    const Length middle = draw.baseline.x + draw.size * letter.x + half;
    const double round = (middle - draw.anchor) / closest_radius(sector, draw.baseline.y, draw.size);
    const double turn = sector.turn_at(draw.anchor) + (sector.centre_below ? round : -round);
    const Length radius = sector.radius_at(draw.baseline.y) * (sector.centre_below ? 1.0 : -1.0);
    const Point foot = sector.centre() + Point{radius * std::sin(turn), radius * -std::cos(turn)};
    const Point start = foot - Point{half * std::cos(turn), half * std::sin(turn)};
    return {letter.run, start, draw.size, draw.colour, start.x, turn};
}

Rect around_both(Rect a, Rect b) {
    const Point least = {smaller(a.left(), b.left()), smaller(a.top(), b.top())};
    const Point most = {larger(a.right(), b.right()), larger(a.bottom(), b.bottom())};
    return {least, {most.x - least.x, most.y - least.y}};
}

using Items = std::vector<DisplayItem>;

// Where a code to scan ends that starts here; the start itself where there is none.
Items::const_iterator end_of_code(Items::const_iterator start, Items::const_iterator end) {
    const auto* begin = std::get_if<BeginTag>(&*start);
    if (begin == nullptr || begin->tag.role != Tag::Role::figure) return start;
    const auto closed = std::find_if(start, end, [](const auto& item) { return std::holds_alternative<EndTag>(item); });
    const bool has_modules = std::any_of(start, closed, [](const DisplayItem& item) {
        const auto* fill = std::get_if<FillPath>(&item);
        return fill != nullptr && fill->dot > Length{};
    });
    return has_modules ? closed : start;
}

class Bender {
  public:
    explicit Bender(const Sector& sector) : sector_(sector) {}

    void operator()(const FillPath& fill) {
        FillPath bent = fill;
        bent.path = bend(fill.path, sector_);
        items.emplace_back(std::move(bent));
    }
    void operator()(const StrokePath& stroke) {
        StrokePath bent = stroke;
        bent.path = bend(stroke.path, sector_);
        items.emplace_back(std::move(bent));
    }
    void operator()(const DrawPicture& picture) {
        auto list = std::make_shared<DisplayList>();
        list->size = picture.rect.size;
        list->items.emplace_back(DrawPicture{picture.picture, {{}, picture.rect.size}, picture.grey});
        (*this)(Group{std::move(list), Transform::move(picture.rect.origin), std::nullopt});
    }
    void operator()(const Group& group) {
        if (group.clip) {
            pattern(group, *group.clip);
            return;
        }
        Group bent = group;
        const Point middle = group.transform.bounds({{}, group.list->size}).centre();
        bent.transform = rigid(middle, sector_).after(group.transform);
        items.emplace_back(std::move(bent));
    }
    void operator()(const BeginTag& begin) {
        if (begin.tag.role == Tag::Role::paragraph) {
            paragraph_ = begin.tag;
            paragraph_->joined = false;
        } else {
            BeginTag bent = begin;
            const Rect& place = begin.tag.place;
            if (place.size.width > Length{}) bent.tag.place = rigid(place.centre(), sector_).bounds(place);
            items.emplace_back(std::move(bent));
        }
    }
    // What fills an outline follows the arc with it.
    void pattern(const Group& group, const Path& outline) {
        Bender inner{sector_};
        for (const DisplayItem& item : group.list->items) {
            if (const auto* stroke = std::get_if<StrokePath>(&item)) {
                StrokePath moved = *stroke;
                moved.path = transformed(stroke->path, group.transform);
                inner(moved);
            } else if (const auto* fill = std::get_if<FillPath>(&item)) {
                FillPath moved = *fill;
                moved.path = transformed(fill->path, group.transform);
                inner(moved);
            } else {
                inner(Group{std::make_shared<const DisplayList>(DisplayList{group.list->size, {item}}), group.transform,
                            std::nullopt});
            }
        }
        auto list = std::make_shared<const DisplayList>(DisplayList{sector_.bounds(), std::move(inner.items)});
        items.emplace_back(Group{std::move(list), Transform{}, bend(transformed(outline, group.transform), sector_)});
    }
    // With the white around it and the digits below: a scanner needs the modules square.
    void code(const Tag& tag, Items::const_iterator start, Items::const_iterator end) {
        auto list = std::make_shared<DisplayList>(DisplayList{tag.place.size, {start, end}});
        items.emplace_back(Group{std::move(list), rigid(tag.place.centre(), sector_), std::nullopt});
    }
    void operator()(const EndTag& end) {
        if (paragraph_) {
            end_word();
            paragraph_.reset();
            line_.reset();
        } else {
            items.emplace_back(end);
        }
    }
    void operator()(const DrawRun& draw) {
        if (line_ && !near(*line_, draw.baseline.y)) end_line();
        line_ = draw.baseline.y;
        for (const Letter& letter : letters_of(*draw.run)) {
            DrawRun bent = stood_up(draw, letter, sector_);
            if (!paragraph_) {
                items.emplace_back(std::move(bent));
            } else if (is_blank(letter.run->text)) {
                end_word();
                write_part(" ", {std::move(bent)}, false);
            } else {
                word_ += letter.run->text;
                letters_.push_back(std::move(bent));
            }
        }
    }

    std::vector<DisplayItem> items;

  private:
    void end_word() {
        if (!letters_.empty()) write_part(std::exchange(word_, {}), std::exchange(letters_, {}), true);
    }

    // Nothing at a line's end says that a word has ended.
    void end_line() {
        if (!word_.empty()) word_ += " ";
        end_word();
    }

    void write_part(const std::string& words, std::vector<DrawRun> runs, bool spelled) {
        Tag tag = *paragraph_;
        tag.words = spelled ? words : std::string{};
        tag.spelled = spelled;
        tag.place = letter_box(runs.front()).bounds();
        for (const DrawRun& run : runs)
            tag.place = around_both(tag.place, letter_box(run).bounds());
        items.emplace_back(BeginTag{std::move(tag)});
        for (DrawRun& run : runs)
            items.emplace_back(std::move(run));
        items.emplace_back(EndTag{});
        paragraph_->joined = true;
    }

    const Sector& sector_;
    std::optional<Tag> paragraph_; // that is open
    std::optional<Length> line_;   // the baseline of what was bent last in it
    std::string word_;
    std::vector<DrawRun> letters_; // of the word
};

} // namespace

Path bend(const Path& path, const Sector& sector) {
    PathBender bender{sector};
    for (const auto& step : path)
        std::visit(bender, step);
    return std::move(bender.path);
}

DisplayList bend(const DisplayList& flat, const Sector& sector) {
    Bender bender{sector};
    for (auto item = flat.items.begin(); item != flat.items.end(); ++item) {
        std::visit(bender, *item);
        const auto end = end_of_code(item, flat.items.end());
        if (end == item) continue;
        bender.code(std::get<BeginTag>(*item).tag, item + 1, end);
        item = end - 1;
    }
    return {sector.bounds(), std::move(bender.items)};
}

Length room_on_arc(const Sector& sector, Length baseline, Length size, double angle) {
    return closest_radius(sector, baseline, size) * angle;
}

Quad letter_box(const DrawRun& draw) {
    const Length height = draw.size * cap_height;
    return quad_of(turn_about({}, draw.turn, draw.baseline), {{{}, -height}, {draw.size * draw.run->width, height}});
}

} // namespace dyeleaf
