#include "photographs/read_photograph.h"

#include "base/overloaded.h"
#include "profiles/seen_colours.h"

#include <array>
#include <optional>

namespace dyeleaf {

namespace {

// An average and a median of so many are as good as of all.
constexpr std::size_t most_pixels_of_area = 40'000;

using About = PhotoFault::About;

// The areas of a question in pixels: swatch, then reference.
using Areas = std::array<PixelArea, 2>;

std::optional<PhotoFault> fault_of(const PhotoArea& written, About about, Pixels seen) {
    const auto [across, down] = pixels_needed(written);
    const auto beyond = [&](const std::string& key, int end, int side, const std::string& extent) {
        return PhotoFault{about,
                          key + " ends at " + std::to_string(end) + " px, and the picture is " + std::to_string(side) +
                              " pixels " + extent,
                          "look at it upright, which makes it " + std::to_string(seen.across) + " × " +
                              std::to_string(seen.down) + " pixels; shares, as in 20 to 45 %, do for any size"};
    };
    if (across > seen.across) return beyond("“across”", across, seen.across, "wide");
    if (down > seen.down) return beyond("“down”", down, seen.down, "high");
    const PixelArea area = pixels_of(written, seen);
    if (area.across > 0 && area.down > 0) return std::nullopt;
    return PhotoFault{about, "this rectangle is too narrow to hold a pixel", "make it larger"};
}

std::variant<Areas, PhotoFault> areas_of(const PhotoQuestion& question, Pixels seen) {
    if (auto fault = fault_of(question.swatch, About::swatch, seen)) return *fault;
    if (auto fault = fault_of(question.reference, About::reference, seen)) return *fault;
    const Areas areas{pixels_of(question.swatch, seen), pixels_of(question.reference, seen)};
    if (!overlap(areas[0], areas[1])) return areas;
    return PhotoFault{About::reference, "this rectangle lies over that of the swatch",
                      "look at the four numbers of both again: “across” counts from the left, “down” from above"};
}

// A picture's numbers, understood.
struct Understood {
    SeenColours seen;
    std::string as;
};

std::variant<Understood, PhotoFault> understood(const std::optional<Profile>& profile, const std::string& as) {
    const std::string help = "save a copy of it as JPEG in the colours sRGB";
    const auto fault = [&](const std::string& message) { return PhotoFault{About::picture, message, help}; };
    if (!profile) return fault("has a broken colour profile");
    switch (profile->colours()) {
    case DeviceColours::rgb: break;
    case DeviceColours::grey: return fault("has a colour profile for greys");
    case DeviceColours::cmyk: return fault("has a colour profile for the four inks of a press");
    case DeviceColours::others: return fault("has a colour profile that is not for red, green and blue");
    }
    auto seen = SeenColours::of(*profile);
    if (!seen) return fault("has a broken colour profile");
    if (!as.empty()) return Understood{std::move(*seen), as};
    const std::string name = profile->name();
    return Understood{std::move(*seen), name.empty() ? "its own profile" : name};
}

std::variant<Understood, PhotoFault> understood(const StatedColours& colours) {
    const auto white_of = [](StatedLights::Chromaticity light) { return white_at(light.x, light.y); };
    return std::visit(Overloaded{
                          [](const NotStated&) { return understood(Profile::srgb(), "sRGB, assumed"); },
                          [](const StatedSrgb&) { return understood(Profile::srgb(), "sRGB"); },
                          [](const StatedProfile& stated) { return understood(Profile::read(stated.bytes), {}); },
                          [&](const StatedLights& lights) {
                              const Primaries primaries{white_of(lights.white), white_of(lights.red),
                                                        white_of(lights.green), white_of(lights.blue)};
                              return understood(Profile::rgb(primaries, lights.gamma), "the lights it names");
                          },
                      },
                      colours);
}

PhotoSample sample_of(PixelGrid grid, const SeenColours& seen) {
    std::vector<Triple> coded;
    coded.reserve(grid.pixels.size());
    for (const auto& [red, green, blue] : grid.pixels)
        coded.push_back({red / 65535.0, green / 65535.0, blue / 65535.0});
    return {grid.across, grid.down, std::move(grid.pixels), seen(coded)};
}

PhotoAnswer answer(const PhotoQuestion& question, PixelGrid swatch, PixelGrid reference, const Understood& numbers) {
    auto reading = reading_of(sample_of(std::move(swatch), numbers.seen), sample_of(std::move(reference), numbers.seen),
                              question.reflectance);
    if (!reading) return PhotoFault{About::reference, "this rectangle is black", "put it where the grey or white lies"};
    reading->read_as = numbers.as;
    return std::move(*reading);
}

} // namespace

std::vector<PhotoAnswer> read_photograph(const PictureFile& picture, std::span<const PhotoQuestion> questions) {
    const auto all = [&](const std::string& message, const std::string& help) {
        return std::vector<PhotoAnswer>{questions.size(), PhotoFault{About::picture, message, help}};
    };
    if (picture.kind == PictureKind::svg) return all("is a drawing", "write the name of a photograph: JPEG or PNG");
    std::vector<PhotoAnswer> answers;
    std::vector<PixelArea> areas; // two for each question that can be answered, which has no fault yet
    for (const PhotoQuestion& question : questions) {
        const auto found = areas_of(question, seen(picture));
        const auto* fault = std::get_if<PhotoFault>(&found);
        answers.emplace_back(fault == nullptr ? PhotoAnswer{} : *fault);
        if (fault == nullptr) areas.insert(areas.end(), std::get<Areas>(found).begin(), std::get<Areas>(found).end());
    }
    if (areas.empty()) return answers;
    auto unpacked = unpack_areas(picture, areas, most_pixels_of_area);
    if (const auto* fault = std::get_if<PictureFault>(&unpacked)) return all(fault->message, fault->help);
    auto& [colours, grids] = std::get<UnpackedAreas>(unpacked);
    const auto numbers = understood(colours);
    if (const auto* fault = std::get_if<PhotoFault>(&numbers)) return all(fault->message, fault->help);
    auto grid = grids.begin();
    for (std::size_t i = 0; i < questions.size(); ++i) {
        if (std::holds_alternative<PhotoFault>(answers[i])) continue;
        answers[i] = answer(questions[i], std::move(grid[0]), std::move(grid[1]), std::get<Understood>(numbers));
        grid += 2;
    }
    return answers;
}

} // namespace dyeleaf
