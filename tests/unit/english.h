// The language that the tests of printed words read: the bundled English one.
#pragma once

#include "language/read_language.h"
#include "project_folder.h"
#include "source/files.h"

#include <stdexcept>

namespace dyeleaf {

inline std::optional<Language> bundled_language(const std::string& code, const Language* beneath,
                                                Diagnostics& diagnostics) {
    const auto path = project_folder() / "layouts" / "languages" / (code + ".yaml");
    const auto file = read_file(path, code + ".yaml", DocumentLimits{}.bytes, diagnostics);
    const auto node = file ? parse_document(file, diagnostics) : std::nullopt;
    return node ? read_language(*node, code, beneath, diagnostics) : std::nullopt;
}

inline const Language& english() {
    static const Language language = [] {
        Diagnostics diagnostics;
        auto read = bundled_language("en", nullptr, diagnostics);
        if (!read) throw std::runtime_error("the English phrases cannot be read");
        return std::move(*read);
    }();
    return language;
}

} // namespace dyeleaf
