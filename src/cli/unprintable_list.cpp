#include "cli/unprintable_list.h"

#include "base/number.h"
#include "cli/report.h"
#include "colour/difference.h"
#include "colour/spaces.h"
#include "facts/recorded_colours.h"
#include "facts/swatches.h"

#include <vector>

namespace dyeleaf {

std::string list_unprintable_colours(const Records& records) {
    std::vector<std::vector<std::string>> rows{{"COLOUR OF", "ΔE00", "ON PAPER"}};
    for (const ColourOfRecord& record : recorded_colours(records)) {
        if (record.glows) {
            rows.push_back({record.whose, "", "hatched: fluorescent"});
        } else if (is_beyond_print(record.colour)) {
            const double beyond = delta_e_2000(lab_of(record.colour), to_lab(rgb_of(record.colour)));
            rows.push_back({record.whose, fixed(beyond, 1), "the nearest colour, with a +"});
        }
    }
    if (rows.size() == 1) return {};
    return "No print shows these as they are, so tie real yarn to their cards:\n" + table(rows);
}

} // namespace dyeleaf
