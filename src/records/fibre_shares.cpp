#include "records/fibre_shares.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace dyeleaf {

namespace {

constexpr double whole = 100;
constexpr double nudge = 1e-9; // undoes the binary error of sums such as 33.4 + 33.3 + 33.3

double sum_of(const std::vector<Percent>& shares) {
    return std::accumulate(shares.begin(), shares.end(), Percent{}).number();
}

// The last decimal that some share is written with, at most the third: 0.1 of 74.9 and 25.
double finest_step(const std::vector<Percent>& shares) {
    double step = 1;
    const auto is_written_so = [&](Percent share) {
        const double steps = share.number() / step;
        return std::abs(steps - std::round(steps)) < 1e-6;
    };
    while (step > 0.0015 && !std::ranges::all_of(shares, is_written_so))
        step /= 10;
    return step;
}

// Common practice: a mill's figures miss 100 % by rounding or by traces, never by more than one. Above it traces
// explain nothing, and each rounded figure is off by half its last decimal at most.
bool may_be_mended(const std::vector<Percent>& shares) {
    const double beyond = sum_of(shares) - whole;
    const double by_rounding = static_cast<double>(shares.size()) * finest_step(shares) / 2;
    return shares.size() > 1 && std::abs(beyond) <= 1 + nudge && beyond <= by_rounding + nudge;
}

} // namespace

bool are_whole(const std::vector<Percent>& shares) {
    return std::abs(sum_of(shares) - whole) < nudge;
}

std::optional<std::vector<Percent>> made_whole(const std::vector<Percent>& shares) {
    if (!may_be_mended(shares)) return std::nullopt;
    const double sum = sum_of(shares);
    std::vector<double> remainders;
    std::vector<Percent> result;
    int left = static_cast<int>(whole);
    for (const Percent share : shares) {
        const double exact = share.number() * whole / sum;
        const double floor = std::floor(exact + nudge);
        remainders.push_back(exact - floor);
        result.push_back(percent(floor));
        left -= static_cast<int>(floor);
    }
    std::vector<std::size_t> order(shares.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order,
                             [&](std::size_t a, std::size_t b) { return remainders[a] > remainders[b] + nudge; });
    for (int i = 0; i < left; ++i)
        result[order[static_cast<std::size_t>(i)]] = result[order[static_cast<std::size_t>(i)]] + percent(1);
    const bool none_vanished = std::ranges::none_of(result, [](Percent share) { return share.number() < 1; });
    return none_vanished ? std::optional{result} : std::nullopt;
}

} // namespace dyeleaf
