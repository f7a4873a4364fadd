#include "records/read_pictures.h"

#include "pictures/find_picture.h"

namespace dyeleaf {

void read_pictures(Records& records, const std::filesystem::path& folder, Diagnostics& diagnostics) {
    const auto read = [&](std::optional<RecordedPicture>& picture) {
        if (picture) picture->file = find_picture(picture->name.value, folder, picture->name.spot, diagnostics);
    };
    read(records.studio.logo);
    for (Lot& lot : records.lots)
        read(lot.picture);
    for (Dye& dye : records.dyes) {
        for (Swatch& swatch : dye.swatches)
            read(swatch.picture);
    }
}

} // namespace dyeleaf
