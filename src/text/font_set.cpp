#include "text/font_set.h"

#include "base/words.h"

#include <algorithm>
#include <iterator>
#include <system_error>

namespace dyeleaf {

namespace {

namespace fs = std::filesystem;

// In the order of their names, so that no directory order reaches the output.
std::vector<fs::path> font_files(const fs::path& folder, Diagnostics& diagnostics) {
    std::vector<fs::path> files;
    std::error_code problem;
    fs::directory_iterator entry{folder, problem};
    for (; !problem && entry != fs::directory_iterator{}; entry.increment(problem)) {
        const std::string ending = lower_case(entry->path().extension().string());
        std::error_code unreadable;
        if ((ending == ".otf" || ending == ".ttf") && entry->is_regular_file(unreadable))
            files.push_back(entry->path());
    }
    if (problem && problem != std::errc::no_such_file_or_directory) {
        diagnostics.warning({}, "the fonts in the folder " + in_quotes(folder.string()) + " cannot be read",
                            "check that this is a folder and that you may open it");
    }
    std::ranges::sort(files);
    return files;
}

std::string family_of(FcPattern* face) {
    FcChar8* name = nullptr;
    if (FcPatternGetString(face, FC_FAMILY, 0, &name) != FcResultMatch) return {};
    return reinterpret_cast<const char*>(name);
}

bool same_face(FcPattern* a, FcPattern* b) {
    const auto same = [&](const char* property) {
        double in_a = 0;
        double in_b = 0;
        FcPatternGetDouble(a, property, 0, &in_a);
        FcPatternGetDouble(b, property, 0, &in_b);
        return in_a == in_b;
    };
    return family_of(a) == family_of(b) && same(FC_WEIGHT) && same(FC_SLANT) && same(FC_WIDTH);
}

// A range of weights rather than one face: glyph runs name a face, so only a variable font's named faces count.
bool is_variable(FcPattern* face) {
    FcBool variable = FcFalse;
    return FcPatternGetBool(face, FC_VARIABLE, 0, &variable) == FcResultMatch && variable == FcTrue;
}

// Of the faces from `first_new` on, those that add something to the `known` first ones stay. False where none came.
bool keep_new_faces(FcFontSet& fonts, int known, int first_new) {
    int kept = first_new;
    for (int i = first_new; i < fonts.nfont; ++i) {
        FcPattern* face = fonts.fonts[i];
        const bool repeated =
            std::any_of(fonts.fonts, fonts.fonts + known, [&](FcPattern* other) { return same_face(face, other); });
        if (repeated || is_variable(face)) {
            FcPatternDestroy(face);
        } else {
            fonts.fonts[kept++] = face;
        }
    }
    const bool any = fonts.nfont > first_new;
    fonts.nfont = kept;
    return any;
}

int count(const FcFontSet* fonts) {
    return fonts ? fonts->nfont : 0;
}

} // namespace

FontSet load_fonts(const std::vector<fs::path>& folders, Diagnostics& diagnostics) {
    FontSet set{std::unique_ptr<FcConfig, FcConfigDeleter>{FcConfigCreate()}, {}};
    const auto fonts = [&] { return FcConfigGetFonts(set.config.get(), FcSetApplication); };

    for (const fs::path& folder : folders) {
        const int known = count(fonts());
        for (const fs::path& file : font_files(folder, diagnostics)) {
            const int before = count(fonts());
            FcConfigAppFontAddFile(set.config.get(), reinterpret_cast<const FcChar8*>(file.c_str()));
            if (!fonts() || !keep_new_faces(*fonts(), known, before)) {
                diagnostics.warning({}, "the file " + in_quotes(file.string()) + " is not a font that can be read",
                                    "remove it from the folder, or put a sound copy in its place");
            }
        }
    }
    for (int i = 0; i < count(fonts()); ++i)
        set.families.push_back(family_of(fonts()->fonts[i]));
    std::ranges::sort(set.families);
    set.families.erase(std::unique(set.families.begin(), set.families.end()), set.families.end());

    if (set.families.empty()) {
        std::vector<std::string> names;
        std::ranges::transform(folders, std::back_inserter(names),
                               [](const fs::path& f) { return in_quotes(f.string()); });
        diagnostics.error({}, "there is no font to print with" + (names.empty() ? "" : " in " + joined(names, ", ")),
                          "install dyeleaf again, or put .otf or .ttf files into a folder named fonts");
    }
    return set;
}

} // namespace dyeleaf
