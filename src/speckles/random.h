// Numbers that look random and are the same everywhere: SplitMix64 (Steele, Lea and Flood 2014, “Fast splittable
// pseudorandom number generators”). The standard library's distributions differ between its makers; these do not.
#pragma once

#include <cstdint>

namespace dyeleaf {

class Random {
  public:
    explicit Random(std::uint64_t seed) : state_(seed) {}

    std::uint64_t next() {
        state_ += 0x9e3779b97f4a7c15;
        std::uint64_t z = state_;
        z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9;
        z = (z ^ (z >> 27)) * 0x94d049bb133111eb;
        return z ^ (z >> 31);
    }
    // From 0 to just below 1, in steps of 2^-53.
    double share() { return static_cast<double>(next() >> 11) * 0x1p-53; }
    double between(double least, double most) { return least + (most - least) * share(); }

  private:
    std::uint64_t state_;
};

} // namespace dyeleaf
