#include "cli/printer_profile.h"

#include "base/words.h"
#include "pictures/file_bytes.h"

namespace dyeleaf {

std::optional<PrinterColours> read_printer_profile(const std::filesystem::path& file, Diagnostics& diagnostics) {
    const std::string name = in_quotes(file.string());
    const auto refuse = [&](const std::string& what, const std::string& help) {
        diagnostics.error({}, name + " " + what, help);
        return std::nullopt;
    };
    const std::string where =
        "profiles of printers end in .icc or .icm; yours comes with its driver or with the paper, or "
        "from the print shop";
    const auto bytes = file_bytes(file.string());
    if (!bytes) return refuse("cannot be read", "check its name; " + where);
    constexpr std::size_t most_profile_bytes = 20U << 20U;
    if (bytes->size() > most_profile_bytes) return refuse("is far too large for a profile", where);
    const auto profile = Profile::read(*bytes);
    if (!profile) return refuse("is no whole ICC profile", "get it again: it may be cut short; " + where);
    if (!profile->is_of_printer())
        return refuse("is the profile of a screen, a camera or a colour space, and of no printer", where);
    if (profile->colours() == DeviceColours::others)
        return refuse("is of a printer with other inks than are read here",
                      "profiles for black, RGB and CMYK are read");
    auto printer = PrinterColours::of(*profile);
    if (!printer)
        return refuse("does not say which inks make a colour, and what colour they make", "get it again; " + where);
    return printer;
}

} // namespace dyeleaf
