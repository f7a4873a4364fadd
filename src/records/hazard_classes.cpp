#include "records/hazard_classes.h"

#include "base/words.h"

#include <algorithm>
#include <array>

namespace dyeleaf {

namespace {

using enum SignalWord;
using enum Pictogram;

// H codes: UN GHS, annex 3, as the PubChem table of GHS codes gives them, with the older classes of explosives (H200 to
// H205) and the letters after H350 to H361 from the EU's CLP Regulation (EC) 1272/2008, annex III. H205 has no
// pictogram: CLP, annex I, table 2.1.2. EUH codes: CLP, annex II; they bear neither word nor pictogram, but for EUH380
// to EUH451, whose words are in Regulation (EU) 2023/707 (EUH430 and EUH431: CLP, annex I, table 4.2.3; the others from
// memory).
constexpr std::array table = {
    HazardClass{"H200", "", danger, ghs01},
    HazardClass{"H201", "1.1", danger, ghs01},
    HazardClass{"H202", "1.2", danger, ghs01},
    HazardClass{"H203", "1.3", danger, ghs01},
    HazardClass{"H204", "1.4 2B", warning, ghs01},
    HazardClass{"H204", "2C", warning, ghs07},
    HazardClass{"H205", "1.5", danger},
    HazardClass{"H206", "1", danger, ghs02},
    HazardClass{"H207", "2", danger, ghs02},
    HazardClass{"H207", "3", warning, ghs02},
    HazardClass{"H208", "4", warning, ghs02},
    HazardClass{"H209", "1", danger, ghs01},
    HazardClass{"H209", "2A", danger, ghs01},
    HazardClass{"H210", "1", danger, ghs01},
    HazardClass{"H211", "1", danger, ghs01},
    HazardClass{"H220", "1A", danger, ghs02},
    HazardClass{"H221", "1B", danger, ghs02},
    HazardClass{"H221", "2", warning},
    HazardClass{"H222", "1", danger, ghs02},
    HazardClass{"H223", "2", warning, ghs02},
    HazardClass{"H224", "1", danger, ghs02},
    HazardClass{"H225", "2", danger, ghs02},
    HazardClass{"H226", "3", warning, ghs02},
    HazardClass{"H227", "4", warning},
    HazardClass{"H228", "1", danger, ghs02},
    HazardClass{"H228", "2", warning, ghs02},
    HazardClass{"H229", "1", danger, ghs02},
    HazardClass{"H229", "2", warning, ghs02},
    HazardClass{"H229", "3", warning},
    HazardClass{"H230", "1A", danger, ghs02},
    HazardClass{"H231", "1A", danger, ghs02},
    HazardClass{"H232", "1A", danger, ghs02},
    HazardClass{"H240", "A", danger, ghs01},
    HazardClass{"H241", "B", danger, ghs01, ghs02},
    HazardClass{"H242", "C D", danger, ghs02},
    HazardClass{"H242", "E F", warning, ghs02},
    HazardClass{"H250", "1", danger, ghs02},
    HazardClass{"H251", "1", danger, ghs02},
    HazardClass{"H252", "2", warning, ghs02},
    HazardClass{"H260", "1", danger, ghs02},
    HazardClass{"H261", "2", danger, ghs02},
    HazardClass{"H261", "3", warning, ghs02},
    HazardClass{"H270", "1", danger, ghs03},
    HazardClass{"H271", "1", danger, ghs03},
    HazardClass{"H272", "2", danger, ghs03},
    HazardClass{"H272", "3", warning, ghs03},
    HazardClass{"H280", "", warning, ghs04},
    HazardClass{"H281", "", warning, ghs04},
    HazardClass{"H282", "1", danger, ghs02, ghs04},
    HazardClass{"H283", "2", warning, ghs02, ghs04},
    HazardClass{"H284", "3", warning, ghs04},
    HazardClass{"H290", "1", warning, ghs05},
    HazardClass{"H300", "1 2", danger, ghs06},
    HazardClass{"H301", "3", danger, ghs06},
    HazardClass{"H302", "4", warning, ghs07},
    HazardClass{"H303", "5", warning},
    HazardClass{"H304", "1", danger, ghs08},
    HazardClass{"H305", "2", warning, ghs08},
    HazardClass{"H310", "1 2", danger, ghs06},
    HazardClass{"H311", "3", danger, ghs06},
    HazardClass{"H312", "4", warning, ghs07},
    HazardClass{"H313", "5", warning},
    HazardClass{"H314", "1 1A 1B 1C", danger, ghs05},
    HazardClass{"H315", "2", warning, ghs07},
    HazardClass{"H316", "3", warning},
    HazardClass{"H317", "1 1A 1B", warning, ghs07},
    HazardClass{"H318", "1", danger, ghs05},
    HazardClass{"H319", "2 2A", warning, ghs07},
    HazardClass{"H320", "2B", warning},
    HazardClass{"H330", "1 2", danger, ghs06},
    HazardClass{"H331", "3", danger, ghs06},
    HazardClass{"H332", "4", warning, ghs07},
    HazardClass{"H333", "5", warning},
    HazardClass{"H334", "1 1A 1B", danger, ghs08},
    HazardClass{"H335", "3", warning, ghs07},
    HazardClass{"H336", "3", warning, ghs07},
    HazardClass{"H340", "1 1A 1B", danger, ghs08},
    HazardClass{"H341", "2", warning, ghs08},
    HazardClass{"H350", "1 1A 1B", danger, ghs08},
    HazardClass{"H350i", "1 1A 1B", danger, ghs08},
    HazardClass{"H351", "2", warning, ghs08},
    HazardClass{"H360", "1 1A 1B", danger, ghs08},
    HazardClass{"H360F", "1 1A 1B", danger, ghs08},
    HazardClass{"H360D", "1 1A 1B", danger, ghs08},
    HazardClass{"H360FD", "1 1A 1B", danger, ghs08},
    HazardClass{"H360Fd", "1 1A 1B", danger, ghs08},
    HazardClass{"H360Df", "1 1A 1B", danger, ghs08},
    HazardClass{"H361", "2", warning, ghs08},
    HazardClass{"H361f", "2", warning, ghs08},
    HazardClass{"H361d", "2", warning, ghs08},
    HazardClass{"H361fd", "2", warning, ghs08},
    HazardClass{"H362", ""},
    HazardClass{"H370", "1", danger, ghs08},
    HazardClass{"H371", "2", warning, ghs08},
    HazardClass{"H372", "1", danger, ghs08},
    HazardClass{"H373", "2", warning, ghs08},
    HazardClass{"H400", "1", warning, ghs09},
    HazardClass{"H401", "2"},
    HazardClass{"H402", "3"},
    HazardClass{"H410", "1", warning, ghs09},
    HazardClass{"H411", "2", {}, ghs09},
    HazardClass{"H412", "3"},
    HazardClass{"H413", "4"},
    HazardClass{"H420", "1", warning, ghs07},
    HazardClass{"H300+H310", "1 2", danger, ghs06},
    HazardClass{"H300+H330", "1 2", danger, ghs06},
    HazardClass{"H310+H330", "1 2", danger, ghs06},
    HazardClass{"H300+H310+H330", "1 2", danger, ghs06},
    HazardClass{"H301+H311", "3", danger, ghs06},
    HazardClass{"H301+H331", "3", danger, ghs06},
    HazardClass{"H311+H331", "3", danger, ghs06},
    HazardClass{"H301+H311+H331", "3", danger, ghs06},
    HazardClass{"H302+H312", "4", warning, ghs07},
    HazardClass{"H302+H332", "4", warning, ghs07},
    HazardClass{"H312+H332", "4", warning, ghs07},
    HazardClass{"H302+H312+H332", "4", warning, ghs07},
    HazardClass{"H303+H313", "5", warning},
    HazardClass{"H303+H333", "5", warning},
    HazardClass{"H313+H333", "5", warning},
    HazardClass{"H303+H313+H333", "5", warning},
    HazardClass{"H315+H320", "2 2B", warning, ghs07},
    HazardClass{"EUH014", ""},
    HazardClass{"EUH018", ""},
    HazardClass{"EUH019", ""},
    HazardClass{"EUH029", ""},
    HazardClass{"EUH031", ""},
    HazardClass{"EUH032", ""},
    HazardClass{"EUH044", ""},
    HazardClass{"EUH066", ""},
    HazardClass{"EUH070", ""},
    HazardClass{"EUH071", ""},
    HazardClass{"EUH201", ""},
    HazardClass{"EUH201A", ""},
    HazardClass{"EUH202", ""},
    HazardClass{"EUH203", ""},
    HazardClass{"EUH204", ""},
    HazardClass{"EUH205", ""},
    HazardClass{"EUH206", ""},
    HazardClass{"EUH207", ""},
    HazardClass{"EUH208", ""},
    HazardClass{"EUH209", ""},
    HazardClass{"EUH209A", ""},
    HazardClass{"EUH210", ""},
    HazardClass{"EUH211", ""},
    HazardClass{"EUH212", ""},
    HazardClass{"EUH380", "1", danger},
    HazardClass{"EUH381", "2", warning},
    HazardClass{"EUH401", ""},
    HazardClass{"EUH430", "1", danger},
    HazardClass{"EUH431", "2", warning},
    HazardClass{"EUH440", "", danger},
    HazardClass{"EUH441", "", danger},
    HazardClass{"EUH450", "", danger},
    HazardClass{"EUH451", "", danger},
};

} // namespace

bool HazardClass::holds_for(std::string_view category) const {
    std::string_view rest = categories;
    while (!rest.empty()) {
        const std::size_t end = std::min(rest.find(' '), rest.size());
        if (lower_case(rest.substr(0, end)) == lower_case(category)) return true;
        rest.remove_prefix(std::min(end + 1, rest.size()));
    }
    return false;
}

std::span<const HazardClass> hazard_classes() {
    return table;
}

std::span<const HazardClass> classes_of(std::string_view code) {
    const auto has_code = [&](const HazardClass& one) { return one.code == code; };
    const auto first = std::ranges::find_if(table, has_code);
    return {first, std::find_if_not(first, table.end(), has_code)};
}

bool depends_on_category(std::string_view code) {
    const auto classes = classes_of(code);
    return std::ranges::any_of(classes, [&](const HazardClass& one) {
        return one.signal != classes.front().signal || one.first != classes.front().first ||
               one.second != classes.front().second;
    });
}

} // namespace dyeleaf
