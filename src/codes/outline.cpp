#include "codes/outline.h"

#include <array>
#include <cstddef>

namespace dyeleaf {

namespace {

struct Step {
    int x, y;
};
// Right, down, left, up: the next one is a turn to the right.
constexpr std::array<Step, 4> directions = {Step{1, 0}, Step{0, 1}, Step{-1, 0}, Step{0, -1}};

// The edges between dark and white, by the point at which each starts.
class Edges {
  public:
    explicit Edges(const Code& code)
        : width_(code.columns + 1),
          starts_(static_cast<std::size_t>(width_) * static_cast<std::size_t>(code.rows + 1)) {
        std::vector<bool> dark(starts_.size());
        for (const DarkModules& one : code.dark) {
            for (int y = one.y; y < one.y + one.height; ++y) {
                for (int x = one.x; x < one.x + one.width; ++x)
                    dark[at(x, y)] = true;
            }
        }
        const auto is_dark = [&](int x, int y) {
            return x >= 0 && y >= 0 && x < code.columns && y < code.rows && dark[at(x, y)];
        };
        for (int y = 0; y < code.rows; ++y) {
            for (int x = 0; x < code.columns; ++x) {
                if (!is_dark(x, y)) continue;
                if (!is_dark(x, y - 1)) starts_[at(x, y)][0] = true;
                if (!is_dark(x + 1, y)) starts_[at(x + 1, y)][1] = true;
                if (!is_dark(x, y + 1)) starts_[at(x + 1, y + 1)][2] = true;
                if (!is_dark(x - 1, y)) starts_[at(x, y + 1)][3] = true;
            }
        }
    }

    // Whether there is such an edge; takes it out.
    bool take(int x, int y, std::size_t direction) {
        const bool is_there = starts_[at(x, y)].at(direction);
        starts_[at(x, y)].at(direction) = false;
        return is_there;
    }

  private:
    [[nodiscard]] std::size_t at(int x, int y) const {
        return static_cast<std::size_t>(y) * static_cast<std::size_t>(width_) + static_cast<std::size_t>(x);
    }

    int width_;
    std::vector<std::array<bool, 4>> starts_; // in each direction
};

// To the right first, so that the outline stays with its own region where two meet.
std::size_t next_direction(Edges& edges, int x, int y, std::size_t before) {
    for (const std::size_t turn : {1U, 0U, 3U}) {
        if (edges.take(x, y, (before + turn) % 4)) return (before + turn) % 4;
    }
    return before; // back where it started
}

// From a corner at which an outline begins to the right.
std::vector<OutlineCorner> follow(Edges& edges, int x, int y) {
    std::vector<OutlineCorner> corners;
    const Step start{x, y};
    std::size_t direction = 0;
    constexpr std::size_t first = 0;
    const auto add = [&](std::size_t in, std::size_t out) {
        // The dark lies on the right hand of either edge.
        const Step& one = directions.at((in + 1) % 4);
        const Step& other = directions.at((out + 1) % 4);
        corners.push_back({x, y, one.x + other.x, one.y + other.y});
    };
    do {
        x += directions.at(direction).x;
        y += directions.at(direction).y;
        const bool closed = x == start.x && y == start.y;
        const std::size_t next = closed ? first : next_direction(edges, x, y, direction);
        if (next != direction) add(direction, next);
        direction = next;
        if (closed) break;
    } while (true);
    return corners;
}

} // namespace

std::vector<std::vector<OutlineCorner>> outlines(const Code& code) {
    Edges edges{code};
    std::vector<std::vector<OutlineCorner>> all;
    for (int y = 0; y <= code.rows; ++y) {
        for (int x = 0; x <= code.columns; ++x) {
            if (edges.take(x, y, 0)) all.push_back(follow(edges, x, y));
        }
    }
    return all;
}

} // namespace dyeleaf
