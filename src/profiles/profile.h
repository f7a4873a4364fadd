// ICC profiles (ICC.1:2010, ICC.1:2022): what the numbers of a device mean.
#pragma once

#include "colour/matrix.h"
#include "colour/xyz.h"

#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace dyeleaf {

enum class DeviceColours { rgb, grey, cmyk, others };

// Chromaticities of a device's white and of its three lights.
struct Primaries {
    Xyz white, red, green, blue;
};

class Profile {
  public:
    // From the bytes of one; nothing where they are broken, or are not a device's.
    static std::optional<Profile> read(std::string_view bytes);
    static Profile srgb();
    // Of a device whose light is its signal raised to `gamma`; nothing where no device has such primaries.
    static std::optional<Profile> rgb(const Primaries& primaries, double gamma);

    [[nodiscard]] DeviceColours colours() const;
    // Of its class (ICC.1:2022, 7.2.5), and not of a screen's, a camera's or a space's.
    [[nodiscard]] bool is_of_printer() const;
    // As it calls itself, in English where it can: "Display P3". May be empty.
    [[nodiscard]] std::string name() const;
    // The library's own handle, for this floor.
    [[nodiscard]] void* handle() const { return handle_.get(); }

  private:
    struct Close {
        void operator()(void* handle) const;
    };
    explicit Profile(void* handle) : handle_(handle) {}

    std::unique_ptr<void, Close> handle_;
};

} // namespace dyeleaf
