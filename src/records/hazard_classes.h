// What a hazard statement stands for on a label: its signal word and its pictograms. The codes are those of the UN and
// of the EU; nothing here says what a powder is, only what a code means that its supplier gives.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string_view>

namespace dyeleaf {

enum class SignalWord { warning, danger };

// Under the numbers that the UN gives them: UN GHS, annex 3, section 4 (from memory).
enum class Pictogram { none, ghs01, ghs02, ghs03, ghs04, ghs05, ghs06, ghs07, ghs08, ghs09 };

struct HazardClass {
    std::string_view code;       // "H317", "H302+H332", "EUH208"
    std::string_view categories; // those that it holds for, as sheets write them, with blanks between: "1 1A 1B"
    std::optional<SignalWord> signal = {};
    Pictogram first = Pictogram::none, second = Pictogram::none;

    [[nodiscard]] bool holds_for(std::string_view category) const; // case ignored
    friend bool operator==(const HazardClass&, const HazardClass&) = default;
};

// Every class, by code; those of one code stand together, the gravest first.
std::span<const HazardClass> hazard_classes();
// The classes of one code; none for a code that does not exist.
std::span<const HazardClass> classes_of(std::string_view code);
// Whether what goes on the label depends on the category, which the code alone does not tell.
bool depends_on_category(std::string_view code);

} // namespace dyeleaf
