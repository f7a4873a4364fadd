#include "records/read_spectrum.h"

#include "base/number.h"
#include "records/read_fields.h"
#include "source/amounts.h"
#include "source/fields.h"
#include "source/values.h"

#include <algorithm>
#include <cmath>

namespace dyeleaf {

namespace {

constexpr Unit nanometre[] = {{"nm", 1}};
constexpr Dimension wavelength{"wavelength", nanometre};
constexpr const char* example = "reflectance: [12.1, 13.4, 15.0, 16.2]";

// Colours cannot be told from less (common practice); no instrument for colours goes further.
constexpr int latest_start = 420, earliest_end = 680;
constexpr Bounds start{300, latest_start}, end{earliest_end, 850};

std::string nm(int wavelength) {
    return std::to_string(wavelength) + " nm";
}

std::optional<int> read_nm(const Node& node, const std::string& what, Bounds bounds, Diagnostics& diagnostics) {
    const auto number = read_amount(node, what, wavelength, bounds, diagnostics);
    if (!number) return std::nullopt;
    if (*number == std::round(*number)) return static_cast<int>(*number);
    diagnostics.error(node.spot, what + " of " + decimal(*number, 3) + " nm is no whole number",
                      "write it as the instrument gives it, as in 10 nm");
    return std::nullopt;
}

std::optional<int> read_from(const Node& node, const std::string& /*what*/, Diagnostics& diagnostics) {
    return read_nm(node, "a start", start, diagnostics);
}

std::optional<int> read_to(const Node& node, const std::string& /*what*/, Diagnostics& diagnostics) {
    return read_nm(node, "an end", end, diagnostics);
}

std::optional<int> read_step(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    const auto step = read_nm(node, what, {1, 100}, diagnostics);
    if (!step || *step == 5 || *step == 10 || *step == 20) return step;
    diagnostics.error(node.spot, "curves in steps of " + nm(*step) + " are not read",
                      "let the instrument give out every 10 nm, or every 20 or 5 nm");
    return std::nullopt;
}

std::optional<std::vector<double>> read_shares(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    constexpr double most = 250, darkest_peak = 1.5; // percent
    std::vector<double> percent;
    bool sound = true;
    for (const Node& item : read_list(node, what, example, diagnostics)) {
        const auto value = read_decimal(item, what, {0, most}, diagnostics);
        sound = sound && value;
        if (value) percent.push_back(*value);
    }
    if (node.kind == Node::Kind::list && node.items().empty()) {
        diagnostics.error(node.spot, "this curve has no values",
                          "write those of your instrument, as in " + std::string{example} +
                              "; or leave the colour out");
    }
    if (!sound || percent.empty()) return std::nullopt;
    const double peak = *std::ranges::max_element(percent);
    if (peak <= darkest_peak) {
        diagnostics.error(node.spot,
                          "nowhere does this colour throw back more than " + decimal(peak, 4) +
                              " % of the light, and black wool does",
                          "these look like shares from 0 to 1; write percent, as in " + decimal(peak * 100, 2) +
                              " for " + decimal(peak, 4));
        return std::nullopt;
    }
    for (double& value : percent)
        value /= 100;
    return percent;
}

// How far the values reach, and whether they can.
bool reaches(const Node& node, const Spectrum& spectrum, std::optional<int> to, Diagnostics& diagnostics) {
    const int count = static_cast<int>(spectrum.reflectance.size());
    const int last = last_wavelength(spectrum);
    const std::string reach = counted(count, "value", "values") + " from " + nm(spectrum.from) + " in steps of " +
                              nm(spectrum.step) + " end at " + nm(last);
    const std::string comma = "; a comma inside a number makes two of it, so write 12.1 and not 12,1";
    if (to && *to != last) {
        const int steps = *to - spectrum.from;
        const bool whole = steps % spectrum.step == 0;
        diagnostics.error(node.spot, reach + ", and not at " + nm(*to),
                          whole ? "there should be " + std::to_string(steps / spectrum.step + 1) + " values" +
                                      (last > *to ? comma : "; has one been lost?")
                                : "look at from, to and step again");
        return false;
    }
    if (last > end.most) {
        diagnostics.error(node.spot, reach + ", where no eye sees anything", "count the values again" + comma);
        return false;
    }
    if (last >= earliest_end) return true;
    diagnostics.error(node.spot, reach + ", and a colour cannot be told from that",
                      "a curve runs from " + nm(latest_start) + " or less to " + nm(earliest_end) +
                          " or more, as in from: 400 nm, to: 700 nm");
    return false;
}

} // namespace

std::optional<Spectrum> read_spectrum(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    Fields fields{node, what, diagnostics};
    const auto shares = needed_field(fields, "reflectance", example, read_shares);
    const auto from = needed_field(fields, "from", "from: 400 nm", read_from);
    const auto step = needed_field(fields, "step", "step: 10 nm", read_step);
    const auto to = optional_field(fields, "to", read_to);
    fields.refuse_the_rest();
    if (!shares || !from || !step) return std::nullopt;
    const Spectrum spectrum{*from, *step, *shares};
    return reaches(node, spectrum, to, diagnostics) ? std::optional{spectrum} : std::nullopt;
}

} // namespace dyeleaf
