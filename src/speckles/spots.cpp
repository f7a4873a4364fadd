#include "speckles/spots.h"

#include "speckles/drop.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <numeric>
#include <utility>

namespace dyeleaf {

namespace {

// A drop of one layer of a speck: so much wider than the speck, with an edge so rough, in so much of its colour.
struct Ring {
    double width;
    double roughness;
    double colour; // share of the dye, the rest is ground
    SpotLayer::Part part;
};

using Part = SpotLayer::Part;

// Widest first. By eye, from how dyers describe them: crisp; rounded, with a paler rim; a veil between the dots.
std::vector<Ring> rings_of(SpeckleGrade grade) {
    switch (grade) {
    case SpeckleGrade::clean: return {{1.0, 0.22, 1.0, Part::speck}};
    case SpeckleGrade::soft:
        return {{1.0, 0.16, 0.14, Part::edge}, {0.87, 0.16, 0.42, Part::edge}, {0.72, 0.15, 1.0, Part::speck}};
    case SpeckleGrade::hazy:
        return {{2.6, 0.40, 0.025, Part::veil},
                {1.65, 0.34, 0.08, Part::veil},
                {1.0, 0.26, 0.38, Part::edge},
                {0.76, 0.26, 1.0, Part::speck}};
    case SpeckleGrade::blotchy: return {{1.0, 0.38, 0.4, Part::edge}, {0.74, 0.42, 1.0, Part::speck}};
    }
    return {};
}

void append(Path& path, const Path& more) {
    path.insert(path.end(), more.begin(), more.end());
}

Point beside(Point at, double angle, Length distance) {
    return at + Point{distance * std::cos(angle), distance * std::sin(angle)};
}

// What runs out of a drop that is too wet: one or two smaller ones along the yarn, each from within the one before.
Path runs(const Speck& speck, const Ring& ring, int points) {
    Random random{speck.seed ^ 0x5bd1e995};
    Path path;
    const double angle = std::numbers::pi / 2 * (random.share() < 0.5 ? 1 : -1) + random.between(-1, 1);
    const int count = random.share() < 0.6 ? 2 : 1;
    double width = random.between(0.6, 0.78); // of the speck's
    double out = 0.34;                        // of its width
    for (int i = 0; i < count; ++i) {
        const Point centre = beside(speck.at, angle + random.between(-0.25, 0.25), speck.width * out);
        append(path,
               drop_path(centre, speck.width * (ring.width * width), ring.roughness * 0.7, points, random.next()));
        out += width * 0.44;
        width *= 0.62;
    }
    return path;
}

SpotLayer layer_of(const Ring& ring, const Speckled& speckled, const std::vector<Speck>& specks, Rgb behind) {
    SpotLayer layer{ring.part, {}, thinned(speckled.colour, ring.colour, behind), speckled.colour};
    for (const Speck& speck : specks) {
        const int points = drop_points(speck.width);
        append(layer.path, drop_path(speck.at, speck.width * ring.width, ring.roughness, points, speck.seed));
        if (speckled.grade == SpeckleGrade::blotchy) append(layer.path, runs(speck, ring, points));
    }
    return layer;
}

// What a dye breaks into creeps out in steps that grow paler and more ragged, by eye: how far out of its reach, in how
// much of its colour.
struct Step {
    double reach, colour, roughness;
};
constexpr std::array halo_steps = {Step{1, 0.12, 0.34}, Step{0.84, 0.4, 0.28}, Step{0.66, 1, 0.22}};

// Round whole specks, none of them quite in its middle.
void add_halo(const Speckled::Halo& halo, std::size_t number, const Speckled& speckled, const std::vector<Speck>& whole,
              Rgb behind, std::vector<SpotLayer>& layers) {
    const auto width = [&](const Step& step) { return speckled.spread + halo.reach * (2 * step.reach); };
    const int points = drop_points(width(halo_steps.front())) + 3;
    for (const Step& step : halo_steps) {
        const Part part = &step == &halo_steps.front() ? Part::halo : Part::fade;
        SpotLayer layer{part, {}, thinned(halo.colour, step.colour, behind), halo.colour};
        for (const Speck& speck : whole) {
            Random random{speck.seed + number + 1};
            const Point centre = beside(speck.at, random.between(0, 2 * std::numbers::pi), halo.reach * 0.12);
            append(layer.path, drop_path(centre, width(step), step.roughness, points, random.next()));
        }
        layers.push_back(std::move(layer));
    }
}

} // namespace

Rgb thinned(Rgb dye, double share, Rgb ground) {
    constexpr double least = 0.002; // of light: the deepest black gives back as much
    const auto channel = [&](double a, double b) {
        const double light =
            std::pow(std::max(decoded(a), least), share) * std::pow(std::max(decoded(b), least), 1 - share);
        return std::clamp(coded(light), 0.0, 1.0);
    };
    return {channel(dye.red, ground.red), channel(dye.green, ground.green), channel(dye.blue, ground.blue)};
}

Length widest_reach(const Speckled& speckled) {
    Length reach = speckled.spread * 1.8; // of a veil, or of a drop that runs
    for (const Speckled::Halo& halo : speckled.halos)
        reach = larger(reach, (speckled.spread / 2 + halo.reach) * 1.5);
    return reach;
}

std::vector<SpotLayer> spot_layers(const Speckled& speckled, const std::vector<Speck>& specks, Rgb ground) {
    std::vector<SpotLayer> layers;
    const std::vector<Ring> rings = rings_of(speckled.grade);
    const auto add_rings = [&](const std::vector<Speck>& some, Rgb behind, bool veils) {
        for (const Ring& ring : rings) {
            if (some.empty() || (ring.part == Part::veil) != veils) continue;
            layers.push_back(layer_of(ring, speckled, some, behind));
        }
    };
    add_rings(specks, ground, true);
    if (speckled.halos.empty()) {
        add_rings(specks, ground, false);
        return layers;
    }
    std::vector<std::size_t> widest_first(speckled.halos.size());
    std::iota(widest_first.begin(), widest_first.end(), std::size_t{});
    std::ranges::stable_sort(widest_first, std::ranges::greater{},
                             [&](std::size_t i) { return speckled.halos[i].reach; });
    std::vector<Speck> whole;
    std::vector<Speck> fine_ones;
    for (const Speck& speck : specks)
        (speck.is_whole ? whole : fine_ones).push_back(speck);
    Rgb behind = ground;
    for (const std::size_t i : widest_first) {
        if (whole.empty()) break;
        add_halo(speckled.halos[i], i, speckled, whole, behind, layers);
        behind = speckled.halos[i].colour;
    }
    add_rings(fine_ones, ground, false);
    add_rings(whole, behind, false);
    return layers;
}

} // namespace dyeleaf
