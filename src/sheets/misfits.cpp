#include "sheets/misfits.h"

#include "base/words.h"

#include <algorithm>

namespace dyeleaf {

std::string in_words(const Trim& trim) {
    if (!trim.round) return measures(trim.size);
    return near(trim.size.width, trim.size.height) ? to_string(trim.size.width) + " round"
                                                   : measures(trim.size) + " oval";
}

bool complain_of_misfits(const std::vector<Trim>& labels, const std::vector<std::string>& names,
                         const std::function<std::optional<Misfit>(const Trim&)>& misfit_of, const Spot& at,
                         Diagnostics& diagnostics) {
    struct Group {
        Misfit misfit;
        std::vector<std::size_t> labels;
    };
    std::vector<Group> groups;
    for (std::size_t i = 0; i < labels.size(); ++i) {
        const auto misfit = misfit_of(labels[i]);
        if (!misfit) continue;
        const auto alike = std::ranges::find(groups, misfit->message, [](const Group& g) { return g.misfit.message; });
        if (alike != groups.end()) {
            alike->labels.push_back(i);
        } else {
            groups.push_back({*misfit, {i}});
        }
    }
    for (const Group& group : groups) {
        std::string whose;
        if (!names.empty() && group.labels.size() < labels.size()) {
            const auto others = static_cast<int>(group.labels.size()) - 1;
            whose = in_quotes(names[group.labels.front()]) +
                    (others > 0 ? " and " + counted(others, "other", "others") : std::string{}) + ": ";
        }
        diagnostics.error(at, whose + group.misfit.message, group.misfit.help);
    }
    return !groups.empty();
}

} // namespace dyeleaf
