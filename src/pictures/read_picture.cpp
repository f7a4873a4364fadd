#include "pictures/read_picture.h"

#include "pictures/file_bytes.h"
#include "pictures/jpeg.h"
#include "pictures/known_formats.h"
#include "pictures/png.h"
#include "pictures/svg.h"

#include <filesystem>

namespace dyeleaf {

namespace {

PictureOrFault refused(const std::string& format) {
    if (format.empty()) {
        return PictureFault{"is not a picture",
                            "open it in a picture program and save it as JPEG, or a drawing as PNG or SVG"};
    }
    return PictureFault{"is a " + format + " file, which cannot be printed",
                        "open it in a picture program and save it as JPEG, or a drawing as PNG"};
}

} // namespace

PictureOrFault read_picture(const std::string& file) {
    std::error_code error;
    if (std::filesystem::is_directory(file, error)) return PictureFault{"is a folder", "write the name of a picture"};
    const auto bytes = file_bytes(file);
    if (!bytes) return PictureFault{"cannot be opened", "check that it is a plain file, and who may read it"};
    if (bytes->empty()) return PictureFault{"is empty", "copy it again from where it came"};
    if (bytes->size() > most_file_bytes) return PictureFault{"is larger than 100 MB", "save a smaller copy of it"};
    PictureOrFault picture = is_jpeg(*bytes)  ? read_jpeg(*bytes)
                             : is_png(*bytes) ? read_png(*bytes)
                             : is_svg(*bytes) ? read_svg(*bytes)
                                              : refused(foreign_format(*bytes));
    if (auto* sound = std::get_if<PictureFile>(&picture)) sound->file = file;
    return picture;
}

} // namespace dyeleaf
