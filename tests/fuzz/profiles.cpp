// ICC profiles: of cameras and screens, as photographs hold them, and of printers.
#include "profiles/printer_colours.h"
#include "profiles/seen_colours.h"

#include <array>
#include <cstddef>
#include <cstdint>

using namespace dyeleaf;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const auto profile = Profile::read({reinterpret_cast<const char*>(data), size});
    if (!profile) return 0;
    (void)profile->name();
    constexpr std::array colours = {Triple{0, 0, 0}, Triple{1, 1, 1}, Triple{0.2, 0.4, 0.8}};
    if (profile->colours() == DeviceColours::rgb) {
        if (const auto seen = SeenColours::of(*profile)) (void)(*seen)(colours);
    }
    if (!profile->is_of_printer()) return 0;
    if (const auto printer = PrinterColours::of(*profile)) {
        for (const Lab colour : {Lab{0, 0, 0}, Lab{50, 60, -60}, Lab{100, 0, 0}}) {
            (void)printer->printed(colour);
            (void)printer->on_paper(colour);
            (void)printer->nearest(colour);
        }
    }
    return 0;
}
