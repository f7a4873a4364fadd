#include "facts/check_hazards.h"

#include "base/words.h"
#include "records/hazard_classes.h"
#include "records/precaution_codes.h"

#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

namespace {

void check_category(const Hazard& hazard, Diagnostics& diagnostics) {
    if (!hazard.category.empty() || !depends_on_category(hazard.code)) return;
    std::vector<std::string> forms;
    for (const HazardClass& one : classes_of(hazard.code)) {
        const std::string category{one.categories.substr(one.categories.rfind(' ') + 1)};
        forms.push_back(hazard.code + " cat " + category);
    }
    diagnostics.warning(hazard.spot,
                        "what stands on a label for " + hazard.code +
                            " depends on its category, which is not "
                            "recorded: the gravest is printed",
                        "look into section 2 of the supplier's sheet and write " + joined(forms, " or "));
}

// The one hazard statement with a blank: it names what the powder contains (CLP, annex II, 2.8).
bool has_blank(const Hazard& hazard) {
    return hazard.code == "EUH208";
}
bool has_blank(const Precaution& precaution) {
    return is_precaution_with_blank(precaution.code);
}

template <class Statement>
void check_blanks(const std::string& name, const std::optional<std::vector<Statement>>& statements,
                  Diagnostics& diagnostics) {
    if (!statements) return;
    std::vector<std::string> codes;
    const Statement* first = nullptr;
    for (const Statement& one : *statements) {
        if (one.says || !has_blank(one)) continue;
        if (first == nullptr) first = &one;
        codes.push_back(one.code);
    }
    if (first == nullptr) return;
    diagnostics.warning(first->spot,
                        "of " + name + ", " + joined(codes, ", ") +
                            (codes.size() == 1 ? " has a blank" : " have blanks") +
                            " that the supplier's sheet fills in, and “…” would be printed",
                        "write the sheet's own words: {code: " + first->code + ", says: \"…\"}");
}

template <class Thing> void check(const Thing& thing, Diagnostics& diagnostics) {
    if (thing.hazards) {
        for (const Hazard& hazard : *thing.hazards)
            check_category(hazard, diagnostics);
    }
    check_blanks(thing.name, thing.hazards, diagnostics);
    check_blanks(thing.name, thing.precautions, diagnostics);
}

} // namespace

void check_hazards(const Dye& dye, Diagnostics& diagnostics) {
    check(dye, diagnostics);
}

void check_hazards(const Ingredient& ingredient, Diagnostics& diagnostics) {
    check(ingredient, diagnostics);
}

} // namespace dyeleaf
