// What a printer makes of colours, by the profile of it with its inks and its paper.
#pragma once

#include "base/colour.h"
#include "profiles/profile.h"

#include <array>
#include <memory>
#include <optional>

namespace dyeleaf {

// All Lab is relative to D50, as everywhere.
class PrinterColours {
  public:
    // Nothing where the profile lacks the way to the inks or the way back. Requires: a printer's, with grey, RGB or
    // CMYK.
    static std::optional<PrinterColours> of(const Profile& profile);

    // What is seen where this colour was sent by relative colorimetric with black point compensation (ISO 18619),
    // beside the bare paper as white.
    [[nodiscard]] Lab printed(Lab sent) const;
    // The same as an instrument measures it, with the paper's own tint.
    [[nodiscard]] Lab on_paper(Lab sent) const;
    // Sent without that compensation, which moves what is dark: what comes back is the nearest the inks can do.
    [[nodiscard]] Lab nearest(Lab sent) const;

  private:
    struct Delete {
        void operator()(void* transform) const;
    };
    using Transform = std::unique_ptr<void, Delete>;
    using Inks = std::array<double, 4>;

    PrinterColours() = default;
    [[nodiscard]] Inks inks(const Transform& way, Lab colour) const;
    [[nodiscard]] static Lab seen(const Transform& way, const Inks& inks);

    double all_ = 1; // what the library calls all of an ink
    Transform to_inks_, to_inks_uncompensated_, to_sight_, to_instrument_;
};

} // namespace dyeleaf
