#include "photographs/photo_reading.h"

#include "colour/difference.h"

#include <algorithm>
#include <numeric>

namespace dyeleaf {

namespace {

// The last of 255 steps or nearer: noise keeps some pixels of a clipped area from the very end.
constexpr int upper_end = 254 * 257;
constexpr int lower_end = 257;

Xyz operator*(const Xyz& colour, double times) {
    return {colour.x * times, colour.y * times, colour.z * times};
}

std::vector<std::size_t> by_lightness(const std::vector<Xyz>& light) {
    std::vector<std::size_t> order(light.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, {}, [&](std::size_t i) { return light[i].y; });
    return order;
}

std::vector<std::size_t> middle_half(const std::vector<Xyz>& light) {
    const auto order = by_lightness(light);
    const auto quarter = static_cast<std::ptrdiff_t>(order.size() / 4);
    return {order.begin() + quarter, order.end() - quarter};
}

Xyz mean(const std::vector<Xyz>& light, const std::vector<std::size_t>& of) {
    Xyz sum;
    for (const std::size_t i : of)
        sum = {sum.x + light[i].x, sum.y + light[i].y, sum.z + light[i].z};
    return sum * (1 / static_cast<double>(of.size()));
}

double median(std::vector<double> values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::ranges::nth_element(values, middle);
    return *middle;
}

// How the picture is to be seen: under D50, as light as it was.
class Balance {
  public:
    explicit Balance(Xyz white) : white_(white) {}
    [[nodiscard]] Xyz light(const Xyz& seen) const { return adapted(seen, white_, white_d50); }
    [[nodiscard]] Lab colour(const Xyz& seen) const { return to_lab(light(seen)); }

  private:
    Xyz white_;
};

double spread_about(const Lab& colour, const std::vector<Xyz>& light, const Balance& balance) {
    std::vector<double> differences;
    differences.reserve(light.size());
    for (const Xyz& pixel : light)
        differences.push_back(delta_e_2000(balance.colour(pixel), colour));
    return median(std::move(differences));
}

double spread_of_hue_about(const Xyz& average, const std::vector<Xyz>& light, const std::vector<std::size_t>& of,
                           const Balance& balance) {
    const Lab colour = balance.colour(average);
    std::vector<double> differences;
    for (const std::size_t i : of) {
        const Xyz& pixel = light[i];
        const double times = pixel.y > 0 ? average.y / pixel.y : 1;
        differences.push_back(delta_e_2000(balance.colour(pixel * times), colour));
    }
    return median(std::move(differences));
}

double unevenness(const PhotoSample& sample, const Lab& colour, const Balance& balance) {
    double most = 0;
    if (sample.across < 2 || sample.down < 2) return most;
    const int middle = sample.across / 2;
    const int centre = sample.down / 2;
    for (const auto& [left, right] : {std::pair{0, middle}, std::pair{middle, sample.across}}) {
        for (const auto& [top, bottom] : {std::pair{0, centre}, std::pair{centre, sample.down}}) {
            std::vector<Xyz> quarter;
            for (int y = top; y < bottom; ++y) {
                const auto row = sample.light.begin() + std::ptrdiff_t{y} * sample.across;
                quarter.insert(quarter.end(), row + left, row + right);
            }
            most = std::max(most, delta_e_2000(balance.colour(midmean(quarter)), colour));
        }
    }
    return most;
}

template <class AtEnd> Percent share_of(const std::vector<CodedPixel>& pixels, const AtEnd& at_end) {
    const auto count =
        std::ranges::count_if(pixels, [&](const CodedPixel& pixel) { return std::ranges::any_of(pixel, at_end); });
    return percent(100 * static_cast<double>(count) / static_cast<double>(pixels.size()));
}

bool is_clipped(int channel) {
    return channel >= upper_end;
}

bool is_drowned(int channel) {
    return channel <= lower_end;
}

std::vector<CodedPixel> picked(const std::vector<CodedPixel>& pixels, const std::vector<std::size_t>& which) {
    std::vector<CodedPixel> result;
    for (const std::size_t i : which)
        result.push_back(pixels[i]);
    return result;
}

} // namespace

Xyz midmean(const std::vector<Xyz>& light) {
    return mean(light, middle_half(light));
}

std::optional<PhotoReading> reading_of(const PhotoSample& swatch, const PhotoSample& reference, Percent reflectance) {
    const Xyz card = midmean(reference.light);
    if (card.x <= 0 || card.y <= 0 || card.z <= 0) return std::nullopt;
    const double share = reflectance.number() / 100;
    const Balance balance{card * (1 / share)};
    const Lab card_colour = balance.colour(card);
    const auto middle = middle_half(swatch.light);
    const Xyz average = mean(swatch.light, middle);
    const auto coded = picked(swatch.coded, middle);

    PhotoReading reading;
    reading.colour = balance.colour(average);
    reading.spread = spread_about(reading.colour, swatch.light, balance);
    reading.spread_of_hue = spread_of_hue_about(average, swatch.light, middle, balance);
    reading.reference_spread = spread_about(card_colour, reference.light, balance);
    reading.unevenness = unevenness(reference, card_colour, balance);
    reading.cast = chroma(to_lab(card * (share / card.y)));
    reading.exposure = card.y / share;
    reading.clipped = share_of(coded, is_clipped);
    reading.drowned = share_of(coded, is_drowned);
    reading.reference_clipped = share_of(reference.coded, is_clipped);
    reading.pixels = static_cast<int>(swatch.light.size());
    reading.reference_pixels = static_cast<int>(reference.light.size());
    return reading;
}

} // namespace dyeleaf
