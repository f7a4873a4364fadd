#include "facts/check_photos.h"

#include "base/number.h"

#include <cmath>

namespace dyeleaf {

namespace {

std::string share_of(Percent share) {
    return decimal(std::round(share.number()), 0) + " %";
}

std::string delta_e(double difference) {
    return "ΔE00 " + fixed(difference, 1);
}

class PhotoCheck {
  public:
    PhotoCheck(const PhotoColour& photo, const PhotoReading& reading, const std::string& whose,
               Diagnostics& diagnostics)
        : photo_(photo), reading_(reading), whose_(whose), card_(photo.by_white ? "white" : "grey"),
          diagnostics_(diagnostics) {}

    void run() const {
        check_size();
        check_card();
        check_light();
        check_swatch();
    }

  private:
    void doubt_swatch(const std::string& what, const std::string& help) const {
        diagnostics_.warning(photo_.swatch_spot, what, help);
    }
    void doubt_card(const std::string& what, const std::string& help) const {
        diagnostics_.warning(photo_.reference_spot, what, help);
    }
    [[nodiscard]] std::string beside() const { return "the " + card_ + " beside " + whose_; }

    void check_size() const {
        constexpr int least = 400;
        const std::string help = "some thousand are better: make it larger, or take the picture from nearer";
        const auto few = [](int pixels) { return " holds only " + std::to_string(pixels) + " pixels"; };
        if (reading_.pixels < least) doubt_swatch("the rectangle of " + whose_ + few(reading_.pixels), help);
        if (reading_.reference_pixels < least)
            doubt_card("the rectangle of " + beside() + few(reading_.reference_pixels), help);
    }

    void check_card() const {
        constexpr double most_clipped = 2;
        constexpr double most_uneven = 1.5;
        constexpr double most_cast = 25;
        if (reading_.reference_clipped.number() > most_clipped) {
            doubt_card(beside() + " is over-exposed: " + share_of(reading_.reference_clipped) +
                           " of its pixels are as light as the picture can show",
                       "take the picture again, a step darker; how far this colour is off cannot be told");
        }
        if (reading_.unevenness > most_uneven) {
            doubt_card("the light falls unevenly on " + beside() + ": it differs by " + delta_e(reading_.unevenness),
                       "lay both side by side, where no shadow and no sun falls on them");
        }
        if (reading_.cast > most_cast) {
            doubt_card(
                beside() + " looks far from " + card_ + " in the picture (C*ab " +
                    decimal(std::round(reading_.cast), 0) + ")",
                "see that the rectangle lies on it; then take the picture in daylight: under a coloured lamp some "
                "colours are lost");
        }
    }

    void check_light() const {
        constexpr double least = 0.2;
        constexpr double most = 3;
        if (reading_.exposure < least) {
            doubt_card("the picture of " + whose_ + " is too dark: its " + card_ + " came out at " +
                           decimal(std::round(100 * reading_.exposure), 0) + " % of its light",
                       "take it again in more light");
        } else if (reading_.exposure > most) {
            doubt_card(beside() + " came out " + fixed(reading_.exposure, 1) + " times as light as it is said to be",
                       "look at how light you wrote it is: paper is white, not grey");
        }
        if (reading_.colour.lightness > 100) {
            doubt_swatch(whose_ + " comes out lighter than the whitest white",
                         "look at how light you wrote the " + card_ + " is, and whether a shadow lies on it");
        }
    }

    void check_swatch() const {
        constexpr double most_clipped = 2;
        constexpr double most_drowned = 10;
        constexpr double most_hue = 5;
        constexpr double most_spread = 15;
        if (reading_.clipped.number() > most_clipped) {
            doubt_swatch(whose_ + " is over-exposed: " + share_of(reading_.clipped) +
                             " of its pixels are as light as the picture can show",
                         "take the picture again, a step darker");
        }
        if (reading_.drowned.number() > most_drowned) {
            doubt_swatch(whose_ + " is stronger or darker than the picture can show, in " + share_of(reading_.drowned) +
                             " of its pixels",
                         "more light may help; else the colour wants an instrument, or your eye");
        }
        if (reading_.spread_of_hue > most_hue) {
            doubt_swatch("more than one colour seems to lie in the rectangle of " + whose_ +
                             ": half of it differs by " + delta_e(reading_.spread_of_hue) +
                             " and more, light and shadow left out",
                         "keep to one colour, well inside the yarn; of a variegated one there is no single colour");
        } else if (reading_.spread > most_spread) {
            doubt_swatch("light and dark differ much in the rectangle of " + whose_ + ": half of it by " +
                             delta_e(reading_.spread) + " and more",
                         "see that only yarn lies in it, and no sun on the yarn");
        }
    }

    const PhotoColour& photo_;
    const PhotoReading& reading_;
    const std::string& whose_;
    std::string card_;
    Diagnostics& diagnostics_;
};

} // namespace

void check_photo(const std::optional<Sourced<RecordedColour>>& colour, const std::string& whose,
                 Diagnostics& diagnostics) {
    const auto* photo = colour ? photo_of(colour->value) : nullptr;
    if (photo != nullptr && photo->reading) PhotoCheck{*photo, *photo->reading, whose, diagnostics}.run();
}

} // namespace dyeleaf
