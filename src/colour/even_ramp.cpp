#include "colour/even_ramp.h"

#include "base/number.h"
#include "colour/difference.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace dyeleaf {

namespace {

constexpr double least_step = 2; // ΔE00
constexpr int fewest_shades = 5, usual_shades = 7, most_shades = 9;
constexpr int figures = 2; // of a depth that is estimated for

// How far one has come on the way from the lightest shade to the deepest, in ΔE00.
class Way {
  public:
    Way(const std::vector<Shade>& recorded, const ShadeCurve& curve) : stops_{{recorded.front().depth, 0}} {
        constexpr int parts = 32; // of each gap: fine enough to follow the curve
        Lab last = recorded.front().colour;
        for (std::size_t i = 1; i < recorded.size(); ++i) {
            const double ratio = recorded[i].depth / recorded[i - 1].depth;
            for (int part = 1; part <= parts; ++part) {
                const Percent depth = recorded[i - 1].depth * std::pow(ratio, static_cast<double>(part) / parts);
                const Lab colour = curve.at(depth);
                stops_.push_back({depth, stops_.back().distance + delta_e_2000(last, colour)});
                last = colour;
            }
            recorded_.push_back(stops_.back().distance);
        }
    }

    [[nodiscard]] double length() const { return stops_.back().distance; }
    // The distances of the recorded shades, the first at 0.
    [[nodiscard]] const std::vector<double>& recorded() const { return recorded_; }
    // Requires: a distance from 0 to the length.
    [[nodiscard]] Percent depth_at(double distance) const {
        const auto next = std::ranges::lower_bound(stops_, distance, {}, &Stop::distance);
        if (next == stops_.begin()) return stops_.front().depth;
        const auto before = next - 1;
        const double share = (distance - before->distance) / (next->distance - before->distance);
        return before->depth * std::pow(next->depth / before->depth, share);
    }

  private:
    struct Stop {
        Percent depth;
        double distance = 0;
    };
    std::vector<Stop> stops_;
    std::vector<double> recorded_{0};
};

// Between two recorded shades, as many equal steps as come near to `step`.
struct Flight {
    std::size_t first = 0, last = 0; // among the recorded
    int steps = 1;
    double step = 0; // ΔE00
};
using Plan = std::vector<Flight>;

Plan plan_for(const std::vector<double>& places, double step) {
    constexpr double crowded = 0.6; // of a step
    Plan plan;
    std::size_t from = 0;
    for (std::size_t to = 1; to < places.size(); ++to) {
        const double length = places[to] - places[from];
        const bool is_last = to + 1 == places.size();
        if (!is_last && (length < crowded * step || places.back() - places[to] < crowded * step)) continue;
        const int steps = std::max(1, static_cast<int>(std::lround(length / step)));
        plan.push_back({from, to, steps, length / steps});
        from = to;
    }
    return plan;
}

int shades_in(const Plan& plan) {
    return std::accumulate(plan.begin(), plan.end(), 1,
                           [](int sum, const Flight& flight) { return sum + flight.steps; });
}

// The smaller the better: even steps first, then recorded shades among them and about the usual number of all.
double unevenness(const Plan& plan) {
    const auto [least, greatest] = std::ranges::minmax(plan, {}, &Flight::step);
    const std::size_t left_out = plan.back().last - plan.size();
    return std::log(greatest.step / least.step) + 0.5 * static_cast<double>(left_out) +
           0.1 * std::abs(shades_in(plan) - usual_shades);
}

// Empty where even the whole way is hardly a step.
Plan most_even_plan(const Way& way) {
    const int most_steps = std::min(most_shades - 1, static_cast<int>(way.length() / least_step));
    Plan best;
    for (int steps = most_steps; steps >= std::min(fewest_shades - 1, most_steps) && steps > 1; --steps) {
        Plan plan = plan_for(way.recorded(), way.length() / steps);
        if (shades_in(plan) > most_shades) continue;
        if (best.empty() || unevenness(plan) < unevenness(best)) best = std::move(plan);
    }
    return best;
}

Percent in_round_figures(Percent depth) {
    return percent(parse_decimal(significant(depth.number(), figures)).value_or(depth.number()));
}

} // namespace

std::vector<RampShade> even_ramp(const std::vector<Shade>& recorded) {
    if (recorded.size() < 2) return {};
    const ShadeCurve curve{recorded};
    const Way way{recorded, curve};
    const Plan plan = most_even_plan(way);
    if (plan.empty()) return {};

    std::vector<RampShade> ramp{{recorded.front().depth, recorded.front().colour}};
    bool estimates = false;
    for (const Flight& flight : plan) {
        const Shade& end = recorded[flight.last];
        for (int step = 1; step < flight.steps; ++step) {
            const Percent depth = in_round_figures(way.depth_at(way.recorded()[flight.first] + step * flight.step));
            if (depth <= ramp.back().depth || depth >= end.depth) continue;
            ramp.push_back({depth, curve.at(depth), true});
            estimates = true;
        }
        ramp.push_back({end.depth, end.colour});
    }
    return estimates ? ramp : std::vector<RampShade>{};
}

} // namespace dyeleaf
