#include "cli/swatch_places.h"

#include "base/plain_figures.h"
#include "base/words.h"

namespace dyeleaf {

namespace {

std::string depth_words(const LikePair& pair) {
    const std::string found = plain(pair.found->depth);
    const std::string wanted = plain(pair.wanted->depth);
    return found == wanted ? found : found + " for " + wanted;
}

} // namespace

std::string places(const Records& records, const std::vector<LikePair>& pairs) {
    std::vector<std::string> all;
    for (auto pair = pairs.begin(); pair != pairs.end();) {
        const std::string& base = pair->wanted->base.value;
        std::vector<std::string> depths;
        for (; pair != pairs.end() && pair->wanted->base.value == base; ++pair)
            depths.push_back(depth_words(*pair));
        all.push_back(joined(depths, ", ") + " on " + records.base(base).name);
    }
    return joined(all, "; ");
}

std::string places(const Records& records, const std::vector<const Swatch*>& swatches) {
    std::vector<LikePair> pairs;
    for (const Swatch* swatch : swatches)
        pairs.push_back({swatch, swatch});
    return places(records, pairs);
}

} // namespace dyeleaf
