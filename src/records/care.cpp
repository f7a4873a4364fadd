#include "records/care.h"

#include "base/words.h"

#include <algorithm>
#include <utility>

namespace dyeleaf {

namespace {

// Treatments that shut each other out make one choice: tumble and natural drying stand together, as do dry and wet
// cleaning, and heat and steam of the iron.
std::pair<CareProcess, bool> choice_of(const Care& care) {
    switch (care.process) {
    case CareProcess::dry: return {care.process, care.key.starts_with("dry")};
    case CareProcess::iron: return {care.process, care.key == "iron no steam"};
    case CareProcess::professional: return {care.process, care.key.find("wet") != std::string_view::npos};
    default: return {care.process, false};
    }
}

} // namespace

// Processes and their order: ISO 3758:2012 and 2023 (wash, bleach, dry, iron, professional); hand washing at ambient
// temperature and ironing without steam are new in 2023. Temperatures stand where the symbol itself shows them. Keys
// and words are our own; the standard's are its symbols, which are protected marks in some countries.
const std::vector<Care>& care_treatments() {
    using enum CareProcess;
    static const std::vector<Care> treatments = {
        {wash, "wash 95", "Wash 95 °C"},
        {wash, "wash 70", "Wash 70 °C"},
        {wash, "wash 60", "Wash 60 °C"},
        {wash, "wash 60 gentle", "Wash 60 °C, gentle"},
        {wash, "wash 50", "Wash 50 °C"},
        {wash, "wash 50 gentle", "Wash 50 °C, gentle"},
        {wash, "wash 40", "Wash 40 °C"},
        {wash, "wash 40 gentle", "Wash 40 °C, gentle"},
        {wash, "wash 40 very gentle", "Wash 40 °C, very gentle"},
        {wash, "wash 30", "Wash 30 °C"},
        {wash, "wash 30 gentle", "Wash 30 °C, gentle"},
        {wash, "wash 30 very gentle", "Wash 30 °C, very gentle"},
        {wash, "hand wash", "Hand wash"},
        {wash, "hand wash ambient", "Hand wash, ambient temperature"},
        {wash, "no wash", "Do not wash"},
        {bleach, "any bleach", "Any bleach"},
        {bleach, "oxygen bleach", "Oxygen bleach only"},
        {bleach, "no bleach", "Do not bleach"},
        {dry, "tumble normal", "Tumble dry, normal heat"},
        {dry, "tumble low", "Tumble dry, low heat"},
        {dry, "no tumble", "Do not tumble dry"},
        {dry, "dry line", "Dry on a line"},
        {dry, "dry drip line", "Drip dry on a line"},
        {dry, "dry flat", "Dry flat"},
        {dry, "dry drip flat", "Drip dry flat"},
        {dry, "dry line shade", "Dry on a line in the shade"},
        {dry, "dry drip line shade", "Drip dry on a line in the shade"},
        {dry, "dry flat shade", "Dry flat in the shade"},
        {dry, "dry drip flat shade", "Drip dry flat in the shade"},
        {iron, "iron high", "Iron high"},
        {iron, "iron medium", "Iron medium"},
        {iron, "iron low", "Iron low"},
        {iron, "iron no steam", "Iron without steam"},
        {iron, "no iron", "Do not iron"},
        {professional, "dry clean P", "Dry clean P"},
        {professional, "dry clean P gentle", "Dry clean P, gentle"},
        {professional, "dry clean F", "Dry clean F"},
        {professional, "dry clean F gentle", "Dry clean F, gentle"},
        {professional, "no dry clean", "Do not dry clean"},
        {professional, "wet clean", "Wet clean"},
        {professional, "wet clean gentle", "Wet clean, gentle"},
        {professional, "wet clean very gentle", "Wet clean, very gentle"},
        {professional, "no wet clean", "Do not wet clean"},
    };
    return treatments;
}

std::optional<Care> find_care(std::string_view key) {
    const std::string wanted = lower_case(trimmed(key));
    const auto found =
        std::ranges::find_if(care_treatments(), [&](const Care& care) { return lower_case(care.key) == wanted; });
    return found == care_treatments().end() ? std::nullopt : std::optional{*found};
}

bool contradict(const Care& one, const Care& other) {
    const auto says = [&](std::string_view key) { return one.key == key || other.key == key; };
    const auto says_any = [&](std::initializer_list<std::string_view> keys) { return std::ranges::any_of(keys, says); };
    if (choice_of(one) == choice_of(other)) return true;
    if (says("no iron") && says("iron no steam")) return true;
    // Both begin with a washed yarn.
    return says("no wash") && says_any({"any bleach", "oxygen bleach", "tumble normal", "tumble low"});
}

std::vector<Care> in_process_order(std::vector<Care> care) {
    std::ranges::stable_sort(care, {}, &Care::process);
    return care;
}

std::vector<CareProcess> processes_left_out(const std::vector<Care>& care) {
    using enum CareProcess;
    std::vector<CareProcess> missing;
    for (const CareProcess process : {wash, bleach, dry, iron, professional}) {
        if (std::ranges::find(care, process, &Care::process) == care.end()) missing.push_back(process);
    }
    return missing;
}

std::string_view noun_of(CareProcess process) {
    switch (process) {
    case CareProcess::wash: return "washing";
    case CareProcess::bleach: return "bleaching";
    case CareProcess::dry: return "drying";
    case CareProcess::iron: return "ironing";
    case CareProcess::professional: return "dry and wet cleaning";
    }
    return {};
}

} // namespace dyeleaf
