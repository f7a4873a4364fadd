#include "speckles/scatter.h"

#include "speckles/random.h"

#include <algorithm>
#include <cmath>

namespace dyeleaf {

namespace {

constexpr double tile_area = tile_side.in_mm() * tile_side.in_mm() / 100; // cm²

// How much of the way from one side of the tile to the other, over its edge where that is shorter.
Length along(Length a, Length b) {
    const Length straight = mm(std::abs((a - b).in_mm()));
    return smaller(straight, tile_side - straight);
}

// The specks laid so far, by squares of the tile, so that only neighbours are looked at.
class Tile {
  public:
    // `reach` is the farthest at which two specks matter to each other.
    explicit Tile(Length reach)
        : rows_(std::clamp(static_cast<int>(tile_side / reach), 1, 200)),
          squares_(static_cast<std::size_t>(rows_) * static_cast<std::size_t>(rows_)) {}

    void add(const Speck& speck) {
        square(row_of(speck.at.y), row_of(speck.at.x)).push_back(specks_.size());
        specks_.push_back(speck);
    }

    // Whether `holds` is true of every speck around a place.
    template <class Holds> bool all_around(Point at, const Holds& holds) const {
        const int around = std::min(1, rows_ / 2);
        for (int down = -around; down <= around; ++down) {
            for (int across = -around; across <= around; ++across) {
                const auto& near = square(row_of(at.y) + down, row_of(at.x) + across);
                if (!std::ranges::all_of(near, [&](std::size_t i) { return holds(specks_[i]); })) return false;
            }
        }
        return true;
    }

    [[nodiscard]] std::vector<Speck> specks() && { return std::move(specks_); }

  private:
    [[nodiscard]] int row_of(Length length) const {
        return std::clamp(static_cast<int>(length / tile_side * rows_), 0, rows_ - 1);
    }
    [[nodiscard]] std::size_t index(int row, int column) const {
        const auto wrapped = [&](int i) { return static_cast<std::size_t>((i + rows_) % rows_); };
        return wrapped(row) * static_cast<std::size_t>(rows_) + wrapped(column);
    }
    [[nodiscard]] const std::vector<std::size_t>& square(int row, int column) const {
        return squares_[index(row, column)];
    }
    std::vector<std::size_t>& square(int row, int column) { return squares_[index(row, column)]; }

    int rows_;
    std::vector<std::vector<std::size_t>> squares_;
    std::vector<Speck> specks_;
};

Point somewhere(Random& random) {
    const double x = random.share();
    const double y = random.share();
    return {tile_side * x, tile_side * y};
}

// Lays `count` specks whose widths `width` gives, thrown until they fall where they may lie.
template <class Width>
void lay(Tile& tile, std::size_t count, bool whole, Length apart, const Width& width, Random& random) {
    constexpr int tries_for_clear_room = 40;
    for (std::size_t laid = 0; laid < count; ++laid) {
        Speck speck{{}, width(), whole, random.next()};
        for (int tries = 0;; ++tries) {
            speck.at = somewhere(random);
            const bool clear = !whole && tries < tries_for_clear_room;
            const bool free = tile.all_around(speck.at, [&](const Speck& other) {
                const Length between = distance_on_tile(speck.at, other.at);
                return between >= apart && (!clear || between >= (speck.width + other.width) * 0.55);
            });
            if (free) break;
        }
        tile.add(speck);
    }
}

} // namespace

Length distance_on_tile(Point a, Point b) {
    return mm(std::hypot(along(a.x, b.x).in_mm(), along(a.y, b.y).in_mm()));
}

Length least_distance(ArealDensity density) {
    return mm(0.7 * std::sqrt(100 / density.number()));
}

std::vector<Speck> scatter(std::uint64_t seed, Length spread, ArealDensity density) {
    const auto count = static_cast<std::size_t>(std::max(1.0, std::round(density.number() * tile_area)));
    const std::size_t whole = (count + 2) / 3;
    const auto apart = [](std::size_t specks) {
        return least_distance(per_square_centimetre(static_cast<double>(specks) / tile_area));
    };
    Random random{seed};
    Tile tile{larger(apart(whole), spread * 1.1)};
    lay(
        tile, whole, true, apart(whole), [&] { return spread; }, random);
    const auto fine = [&] {
        const double share = random.share();
        return spread * (0.22 + 0.4 * share * share); // more of the finest than of the coarser ones
    };
    lay(tile, count - whole, false, apart(count), fine, random);
    return std::move(tile).specks();
}

} // namespace dyeleaf
