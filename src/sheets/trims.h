// The outlines along which labels are cut.
#pragma once

#include "base/geometry.h"
#include "base/sector.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace dyeleaf {

struct Trim {
    Size size;
    bool round = false;                // an ellipse
    Length corner;                     // radius
    Length bleed;                      // how far artwork may run beyond the trim
    Length clipped{};                  // how much of either side the two top corners lose
    std::optional<Sector> sector = {}; // a piece of a ring in the rectangle of `size`
    friend bool operator==(const Trim&, const Trim&) = default;
};

// One for each label. Most are like the one before, and are kept but once.
class Trims {
  public:
    Trims() = default;
    Trims(const std::vector<Trim>& all) {
        for (const Trim& trim : all)
            push_back(trim);
    }

    void push_back(const Trim& trim) {
        if (kinds_.empty() || kinds_.back() != trim) kinds_.push_back(trim);
        kind_of_.push_back(static_cast<std::uint32_t>(kinds_.size() - 1));
    }

    [[nodiscard]] std::size_t size() const { return kind_of_.size(); }
    [[nodiscard]] bool empty() const { return kind_of_.empty(); }
    [[nodiscard]] const Trim& operator[](std::size_t label) const { return kinds_[kind_of_[label]]; }
    // All that there are, none twice in a row, in the order of the labels.
    [[nodiscard]] const std::vector<Trim>& kinds() const { return kinds_; }
    [[nodiscard]] std::vector<Trim>& kinds() { return kinds_; }

  private:
    std::vector<Trim> kinds_;
    std::vector<std::uint32_t> kind_of_;
};

} // namespace dyeleaf
