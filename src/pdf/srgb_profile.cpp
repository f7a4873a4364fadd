#include "pdf/srgb_profile.h"

#include <array>
#include <cmath>
#include <cstdint>
#include <string_view>
#include <vector>

namespace dyeleaf {

namespace {

using Xyz = std::array<double, 3>;

// The profile connection space's white, D50 (ICC.1:2004-10, 7.2.16).
constexpr Xyz d50 = {0.9642, 1.0, 0.8249};

// The primaries and the white of IEC 61966-2-1 (red 0.64 0.33, green 0.30 0.60, blue 0.15 0.06, white 0.3127 0.3290),
// brought from D65 to D50 by the Bradford transform (ICC.1:2004-10, annex E); worked out by hand from these.
constexpr Xyz red = {0.436042, 0.222485, 0.013920};
constexpr Xyz green = {0.385114, 0.716905, 0.097068};
constexpr Xyz blue = {0.143047, 0.060611, 0.713918};
constexpr std::array<Xyz, 3> adaptation = {
    {{1.047887, 0.022920, -0.050216}, {0.029583, 0.990482, -0.017079}, {-0.009252, 0.015072, 0.751683}}};

// Numbers stand with the highest byte first (ICC.1:2004-10, 5.1).
std::string bytes(std::uint32_t value, int count = 4) {
    std::string result;
    for (int shift = (count - 1) * 8; shift >= 0; shift -= 8)
        result += static_cast<char>(value >> static_cast<unsigned>(shift) & 0xffU);
    return result;
}

std::string fixed(double value) { // s15Fixed16Number
    return bytes(static_cast<std::uint32_t>(std::lround(value * 65536)));
}

std::string fixed(const Xyz& values) {
    return fixed(values[0]) + fixed(values[1]) + fixed(values[2]);
}

std::string typed(std::string_view type, const std::string& data) {
    return std::string{type} + bytes(0) + data;
}

std::string xyz(const Xyz& values) {
    return typed("XYZ ", fixed(values));
}

// One English text (ICC.1:2004-10, 10.13).
std::string words(std::string_view text) {
    std::string utf16;
    for (const char c : text)
        utf16 += std::string{'\0', c};
    return typed("mluc",
                 bytes(1) + bytes(12) + "enUS" + bytes(static_cast<std::uint32_t>(utf16.size())) + bytes(28) + utf16);
}

// The curve of IEC 61966-2-1, as function type 3 (ICC.1:2004-10, 10.15).
std::string curve() {
    return typed("para", bytes(3, 2) + bytes(0, 2) + fixed(2.4) + fixed(1 / 1.055) + fixed(0.055 / 1.055) +
                             fixed(1 / 12.92) + fixed(0.04045));
}

std::string header(std::size_t size) {
    std::string result = bytes(static_cast<std::uint32_t>(size)) + bytes(0) + bytes(0x04200000) + "mntrRGB XYZ ";
    for (const std::uint32_t part : {1999U, 10U, 18U, 0U, 0U, 0U}) // the day of the standard, not of the run
        result += bytes(part, 2);
    result += "acsp" + std::string(28, '\0') + fixed(d50);
    return result + std::string(128 - result.size(), '\0');
}

} // namespace

std::string srgb_profile() {
    struct Entry {
        std::string_view name;
        std::string data;
    };
    const std::string adapted = typed("sf32", fixed(adaptation[0]) + fixed(adaptation[1]) + fixed(adaptation[2]));
    const std::vector<Entry> entries = {{"desc", words("sRGB")},
                                        {"cprt", words("No copyright, use freely")},
                                        {"wtpt", xyz(d50)},
                                        {"chad", adapted},
                                        {"rXYZ", xyz(red)},
                                        {"gXYZ", xyz(green)},
                                        {"bXYZ", xyz(blue)},
                                        {"rTRC", curve()},
                                        {"gTRC", {}},
                                        {"bTRC", {}}}; // as red's
    std::string table = bytes(static_cast<std::uint32_t>(entries.size()));
    std::string data;
    const std::size_t start = 128 + 4 + entries.size() * 12;
    std::string place; // of the entry before
    for (const Entry& entry : entries) {
        if (!entry.data.empty()) {
            place = bytes(static_cast<std::uint32_t>(start + data.size())) +
                    bytes(static_cast<std::uint32_t>(entry.data.size()));
            data += entry.data;
            data.resize((data.size() + 3) / 4 * 4, '\0');
        }
        table += std::string{entry.name} + place;
    }
    return header(start + data.size()) + table + data;
}

} // namespace dyeleaf
