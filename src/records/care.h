// Care treatments as records write them, after the processes of ISO 3758.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace dyeleaf {

// The order in which ISO 3758 lists them since 2012.
enum class CareProcess { wash, bleach, dry, iron, professional };

struct Care {
    CareProcess process;
    std::string_view key;   // as recorded: "wash 30 gentle"
    std::string_view words; // in plain English, by which a sentence is recognised: "Wash 30 °C, gentle"
};

// Every treatment that records may name, in printing order.
const std::vector<Care>& care_treatments();
std::optional<Care> find_care(std::string_view key);
// Whether two treatments cannot both be right: two washes, steam for what must not be ironed, a tumble dryer for what
// must not be washed. Requires: both from care_treatments.
bool contradict(const Care& one, const Care& other);
std::vector<Care> in_process_order(std::vector<Care> care);
// Of which processes nothing is said, in printing order.
std::vector<CareProcess> processes_left_out(const std::vector<Care>& care);
// As messages call it: "washing".
std::string_view noun_of(CareProcess process);

} // namespace dyeleaf
