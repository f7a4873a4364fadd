#include "records/precaution_codes.h"

#include <algorithm>
#include <array>

namespace dyeleaf {

namespace {

constexpr std::array<std::string_view, 150> codes = {
    "P101",           "P102",           "P103",           "P201",
    "P202",           "P203",           "P210",           "P211",
    "P212",           "P220",           "P222",           "P223",
    "P230",           "P231",           "P232",           "P233",
    "P234",           "P235",           "P236",           "P240",
    "P241",           "P242",           "P243",           "P244",
    "P250",           "P251",           "P260",           "P261",
    "P262",           "P263",           "P264",           "P265",
    "P270",           "P271",           "P272",           "P273",
    "P280",           "P282",           "P283",           "P284",
    "P301",           "P302",           "P303",           "P304",
    "P305",           "P306",           "P308",           "P310",
    "P311",           "P312",           "P313",           "P314",
    "P315",           "P316",           "P317",           "P318",
    "P319",           "P320",           "P321",           "P330",
    "P331",           "P332",           "P333",           "P334",
    "P335",           "P336",           "P337",           "P338",
    "P340",           "P342",           "P351",           "P352",
    "P353",           "P354",           "P360",           "P361",
    "P362",           "P363",           "P364",           "P370",
    "P371",           "P372",           "P373",           "P375",
    "P376",           "P377",           "P378",           "P380",
    "P381",           "P390",           "P391",           "P401",
    "P402",           "P403",           "P404",           "P405",
    "P406",           "P407",           "P410",           "P411",
    "P412",           "P413",           "P420",           "P501",
    "P502",           "P503",           "P231+P232",      "P264+P265",
    "P301+P310",      "P301+P312",      "P301+P316",      "P301+P317",
    "P301+P330+P331", "P302+P317",      "P302+P334",      "P302+P335+P334",
    "P302+P352",      "P302+P361+P354", "P303+P361+P353", "P304+P317",
    "P304+P340",      "P305+P351+P338", "P305+P354+P338", "P306+P360",
    "P308+P311",      "P308+P313",      "P308+P316",      "P332+P313",
    "P332+P317",      "P333+P313",      "P333+P317",      "P336+P315",
    "P336+P317",      "P337+P313",      "P337+P317",      "P342+P311",
    "P342+P316",      "P361+P364",      "P362+P364",      "P370+P372+P380+P373",
    "P370+P376",      "P370+P378",      "P370+P380+P375", "P370+P380+P375+P378",
    "P371+P380+P375", "P402+P404",      "P403+P233",      "P403+P235",
    "P410+P403",      "P410+P412"};

constexpr std::array<std::string_view, 20> blanks = {"P230", "P231", "P236", "P241", "P250", "P264", "P280",
                                                     "P310", "P311", "P312", "P320", "P321", "P352", "P378",
                                                     "P401", "P406", "P411", "P413", "P501", "P503"};

} // namespace

std::span<const std::string_view> precaution_codes() {
    return codes;
}

bool is_precaution_code(std::string_view code) {
    return std::ranges::find(codes, code) != codes.end();
}

bool is_precaution_with_blank(std::string_view code) {
    return std::ranges::any_of(blanks,
                               [&](std::string_view blank) { return code.find(blank) != std::string_view::npos; });
}

} // namespace dyeleaf
