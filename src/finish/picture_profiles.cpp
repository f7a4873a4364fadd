#include "finish/picture_profiles.h"

#include "pictures/jpeg.h"

#include <map>

namespace dyeleaf {

namespace {

bool is_jpeg_picture(PdfObject& object) {
    if (!object.isStream()) return false;
    PdfObject filter = object.getDict().getKey("/Filter");
    return filter.isNameAndEquals("/DCTDecode");
}

// ICC.1:2010, 7.2: the kind of colours stands in bytes 16 to 19, the mark of a profile in 36 to 39.
std::size_t components_of(const std::string& profile) {
    if (profile.size() < 128 || profile.compare(36, 4, "acsp") != 0) return 0;
    if (profile.compare(16, 4, "RGB ") == 0) return 3;
    return profile.compare(16, 4, "GRAY") == 0 ? 1 : 0;
}

} // namespace

void keep_picture_profiles(QPDF& document) {
    std::map<std::string, PdfObject> colours; // by profile
    for (PdfObject object : document.getAllObjects()) {
        if (!is_jpeg_picture(object)) continue;
        const auto raw = object.getRawStreamData();
        const std::string profile = jpeg_profile({reinterpret_cast<const char*>(raw->getBuffer()), raw->getSize()});
        const std::size_t components = components_of(profile);
        PdfObject plain = object.getDict().getKey("/ColorSpace");
        if (!plain.isNameAndEquals(components == 3 ? "/DeviceRGB" : "/DeviceGray") || components == 0) continue;
        auto [known, is_new] = colours.try_emplace(profile);
        if (is_new) {
            PdfObject stream = document.newStream(profile);
            stream.getDict().replaceKey("/N", pdf_integer(components));
            stream.getDict().replaceKey("/Alternate", plain);
            known->second = document.makeIndirectObject(PdfObject::newArray({pdf_name("/ICCBased"), stream}));
        }
        object.getDict().replaceKey("/ColorSpace", known->second);
    }
}

} // namespace dyeleaf
