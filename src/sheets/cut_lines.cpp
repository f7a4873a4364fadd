#include "sheets/cut_lines.h"

#include <algorithm>

namespace dyeleaf {

namespace {

struct Interval {
    Length from, to;
};

// What of a direction and of the direction across it a rectangle takes up.
struct Extent {
    Interval along, beside;
};
Extent upright(Rect rect) {
    return {{rect.top(), rect.bottom()}, {rect.left(), rect.right()}};
}
Extent lying(Rect rect) {
    return {{rect.left(), rect.right()}, {rect.top(), rect.bottom()}};
}
CutLine upright_line(Length at, Interval run) {
    return {{at, run.from}, {at, run.to}};
}
CutLine lying_line(Length at, Interval run) {
    return {{run.from, at}, {run.to, at}};
}

void add_once(std::vector<Length>& places, Length place) {
    if (std::ranges::none_of(places, [&](Length known) { return near(known, place); })) places.push_back(place);
}

// `whole` less everything taken; pieces too short to be seen are left out.
std::vector<Interval> free_pieces(Interval whole, std::vector<Interval> taken) {
    constexpr Length shortest = mm(0.5);
    std::ranges::sort(taken, {}, &Interval::from);
    taken.push_back({whole.to, whole.to});
    std::vector<Interval> pieces;
    Length reached = whole.from;
    for (const Interval& next : taken) {
        const Interval piece = {reached, smaller(next.from, whole.to)};
        if (fits(shortest, piece.to - piece.from)) pieces.push_back(piece);
        reached = larger(reached, next.to);
    }
    return pieces;
}

void add_full_lines(std::vector<CutLine>& lines, const std::vector<Rect>& labels, const std::vector<Rect>& areas,
                    const std::vector<Rect>& inked, Extent (*extent)(Rect), CutLine (*line)(Length, Interval)) {
    struct Whole {
        Length place;
        Interval run;
    };
    std::vector<Whole> wholes;
    for (std::size_t i = 0; i < labels.size(); ++i) {
        const Extent area = extent(areas[i]);
        const Interval edges = extent(labels[i]).beside;
        for (const Length place : {edges.from - cut_line_width / 2, edges.to + cut_line_width / 2}) {
            const bool inside =
                fits(area.beside.from, place - cut_line_width / 2) && fits(place + cut_line_width / 2, area.beside.to);
            const auto same = [&](const Whole& known) {
                return near(known.place, place) && near(known.run.from, area.along.from) &&
                       near(known.run.to, area.along.to);
            };
            if (inside && std::ranges::none_of(wholes, same)) wholes.push_back({place, area.along});
        }
    }
    for (const Whole& whole : wholes) {
        const Interval ink = {whole.place - cut_line_width / 2, whole.place + cut_line_width / 2};
        std::vector<Interval> taken;
        for (const Rect& rect : inked) {
            const Extent there = extent(rect);
            if (!fits(ink.to, there.beside.from) && !fits(there.beside.to, ink.from)) taken.push_back(there.along);
        }
        for (const Interval& piece : free_pieces(whole.run, taken))
            lines.push_back(line(whole.place, piece));
    }
}

void add_shared_marks(std::vector<CutLine>& lines, const std::vector<Rect>& labels, Length offset, Length length,
                      Extent (*extent)(Rect), CutLine (*line)(Length, Interval)) {
    std::vector<Length> cuts;
    Interval block = extent(labels.front()).along;
    for (const Rect& label : labels) {
        const Extent there = extent(label);
        block = {smaller(block.from, there.along.from), larger(block.to, there.along.to)};
        add_once(cuts, there.beside.from);
        add_once(cuts, there.beside.to);
    }
    for (const Length cut : cuts) {
        lines.push_back(line(cut, {block.from - offset - length, block.from - offset}));
        lines.push_back(line(cut, {block.to + offset, block.to + offset + length}));
    }
}

} // namespace

std::vector<CutLine> full_cut_lines(const std::vector<Rect>& labels, const std::vector<Rect>& areas,
                                    const std::vector<Rect>& inked) {
    std::vector<CutLine> lines;
    add_full_lines(lines, labels, areas, inked, upright, upright_line);
    add_full_lines(lines, labels, areas, inked, lying, lying_line);
    return lines;
}

std::vector<CutLine> shared_cut_marks(const std::vector<Rect>& labels, Length offset, Length length) {
    std::vector<CutLine> lines;
    if (labels.empty()) return lines;
    add_shared_marks(lines, labels, offset, length, upright, upright_line);
    add_shared_marks(lines, labels, offset, length, lying, lying_line);
    return lines;
}

} // namespace dyeleaf
