#include "sheets/refusal.h"

#include "base/words.h"

#include <algorithm>

namespace dyeleaf {

std::string in_words(const Trim& trim) {
    if (trim.sector) return measures(trim.size) + " round its arc";
    if (!trim.round) return measures(trim.size);
    return near(trim.size.width, trim.size.height) ? to_string(trim.size.width) + " round"
                                                   : measures(trim.size) + " oval";
}

bool complain_of_refused(const Trims& labels, const NameOfLabel& name,
                         const std::function<std::optional<Refusal>(const Trim&)>& refusal_of, const Spot& at,
                         Diagnostics& diagnostics) {
    struct Alike {
        Refusal refusal;
        std::vector<std::size_t> labels;
    };
    std::vector<Alike> groups;
    for (std::size_t i = 0; i < labels.size(); ++i) {
        const auto refusal = refusal_of(labels[i]);
        if (!refusal) continue;
        const auto alike =
            std::ranges::find(groups, refusal->message, [](const Alike& g) { return g.refusal.message; });
        if (alike != groups.end()) {
            alike->labels.push_back(i);
        } else {
            groups.push_back({*refusal, {i}});
        }
    }
    for (const Alike& group : groups) {
        std::string whose;
        if (name && group.labels.size() < labels.size()) {
            const auto others = static_cast<int>(group.labels.size()) - 1;
            whose = in_quotes(name(group.labels.front())) +
                    (others > 0 ? " and " + counted(others, "other", "others") : std::string{}) + ": ";
        }
        diagnostics.error(at, whose + group.refusal.message, group.refusal.help);
    }
    return !groups.empty();
}

} // namespace dyeleaf
