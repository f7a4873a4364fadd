// Specks lie like blue noise: evenly without order, none too near another.
#include "speckles/scatter.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <numeric>

using namespace dyeleaf;

namespace {

Length nearest_to(const Speck& speck, const std::vector<Speck>& specks) {
    Length nearest = tile_side;
    for (const Speck& other : specks) {
        if (&other != &speck) nearest = smaller(nearest, distance_on_tile(speck.at, other.at));
    }
    return nearest;
}

std::vector<Speck> whole_ones(std::vector<Speck> specks) {
    std::erase_if(specks, [](const Speck& speck) { return !speck.is_whole; });
    return specks;
}

struct Sprinkling {
    std::uint64_t seed;
    double spread, density; // mm, to a cm²
};
const std::vector<Sprinkling> sprinklings = {{1, 2.5, 4},  {2, 1.5, 20}, {3, 8, 0.7},
                                             {4, 3, 0.05}, {5, 6, 12},   {6, 0.4, 50}};

} // namespace

TEST_CASE("there are as many specks as the density asks for, one in three of them whole", "[speckles]") {
    for (const auto& [seed, spread, density] : sprinklings) {
        const auto specks = scatter(seed, mm(spread), per_square_centimetre(density));
        CHECK(static_cast<double>(specks.size()) == std::round(density * 100)); // the tile is 100 cm²
        CHECK(whole_ones(specks).size() == (specks.size() + 2) / 3);
        for (const Speck& speck : specks) {
            if (speck.is_whole) CHECK(speck.width == mm(spread));
            if (!speck.is_whole) CHECK(speck.width >= mm(spread * 0.22));
            if (!speck.is_whole) CHECK(speck.width <= mm(spread * 0.62));
        }
    }
}

TEST_CASE("no two specks lie nearer than the least distance, over the seams of the tile as well", "[speckles]") {
    for (const auto& [seed, spread, density] : sprinklings) {
        const auto specks = scatter(seed, mm(spread), per_square_centimetre(density));
        const auto whole = whole_ones(specks);
        const double whole_density = static_cast<double>(whole.size()) / 100;
        for (const Speck& speck : specks)
            REQUIRE(nearest_to(speck, specks) >= least_distance(per_square_centimetre(density)));
        for (const Speck& speck : whole)
            REQUIRE(nearest_to(speck, whole) >= least_distance(per_square_centimetre(whole_density)));
    }
}

// Clark and Evans 1954, “Distance to nearest neighbor”: the mean distance to the nearest neighbour over 1 / (2
// √density) is 1 for points thrown at random and 2.149 for a lattice of triangles.
TEST_CASE("specks are spread more evenly than by chance, and not in rows", "[speckles]") {
    for (const auto& [seed, spread, density] : sprinklings) {
        if (density < 1) continue; // too few to tell
        const auto specks = scatter(seed, mm(spread), per_square_centimetre(density));
        double sum = 0;
        for (const Speck& speck : specks)
            sum += nearest_to(speck, specks).in_mm();
        const double mean = sum / static_cast<double>(specks.size());
        const double by_chance = 1 / (2 * std::sqrt(density / 100));
        CHECK(mean / by_chance > 1.4);
        CHECK(mean / by_chance < 1.8);
    }
}

TEST_CASE("fine specks stand clear of the others where there is room", "[speckles]") {
    const auto specks = scatter(9, mm(2.5), per_square_centimetre(4));
    for (const Speck& speck : specks) {
        for (const Speck& other : specks) {
            if (speck.is_whole || &speck == &other) continue;
            REQUIRE(distance_on_tile(speck.at, other.at) > (speck.width + other.width) / 2);
        }
    }
}

TEST_CASE("the same seed gives the same specks, another seed others", "[speckles]") {
    const auto places = [](std::uint64_t seed) {
        std::vector<double> places;
        for (const Speck& speck : scatter(seed, mm(2), per_square_centimetre(5)))
            places.push_back(speck.at.x.in_mm());
        return places;
    };
    CHECK(places(42) == places(42));
    CHECK(places(42) != places(43));
}
