#include "facts/illustration.h"

#include <utility>

namespace dyeleaf {

std::optional<Illustration> illustration(const Boxed<RecordedPicture>& picture, std::string description,
                                         std::string owner) {
    if (!picture || !picture->file) return std::nullopt;
    return Illustration{*picture->file, std::move(description), std::move(owner)};
}

} // namespace dyeleaf
