#include "facts/trade_words.h"

#include "facts/fibre_kinds.h"

#include <algorithm>
#include <array>

namespace dyeleaf {

namespace {

struct TradeWord {
    std::string_view words; // split by |
    std::string_view eu;    // what to write, for the EU and the UK
    std::string_view us;
};

// From memory; that silk means the silkworm's thread alone: Regulation (EU) No 1007/2011, Annex I, row 4 and Art. 5(2).
constexpr std::array trade_words = {
    TradeWord{"sparkle|sparkles|glitter|shimmer|tinsel|lame|sparkle thread|sparkle nylon",
              "write what its thread is made of, as the mill says: “polyester”, “polyamide” or “metallised fibre”; one "
              "that is for show alone, can be picked out and is no more than 7 % may be left out (Art. 10(1))",
              "write what its thread is made of, as the mill says: “polyester”, “nylon” or “metallic”"},
    TradeWord{"bamboo|bamboo fibre|bamboo fiber|bamboo silk",
              "yarn from bamboo is nearly always viscose: write “viscose” if the mill says so",
              "yarn from bamboo is nearly always rayon: write “rayon” if the mill says so"},
    TradeWord{"artificial silk|art silk|vegan silk|plant silk|banana silk|rose silk|faux silk",
              "only the silkworm's thread is “silk”: write “viscose”, “lyocell” or what the mill says",
              "only the silkworm's thread is “silk”: write “rayon”, “lyocell” or what the mill says"},
    TradeWord{"banana|rose|rose fibre|rose fiber|mint|pearl|seaweed|seaweed fibre|eucalyptus|wood|pineapple",
              "write what is spun from it, as the mill says: mostly “viscose” or “lyocell”",
              "write what is spun from it, as the mill says: mostly “rayon” or “lyocell”"},
    TradeWord{"soya|soy|soybean|soy silk|milk|milk fibre|milk fiber|casein", "write “protein” if the mill says so",
              "write “azlon” if the mill says so"},
    TradeWord{"corn|corn fibre|corn fiber", "write “polylactide” if the mill says so",
              "write “PLA” if the mill says so"},
    TradeWord{"microfibre|microfiber|micro fibre|synthetic|synthetics",
              "write “polyester”, “polyamide” or “acrylic”, as the mill says",
              "write “polyester”, “nylon” or “acrylic”, as the mill says"},
    TradeWord{"elastic|stretch|rubber band", "write “elastane” if the mill says so",
              "write “spandex” if the mill says so"},
    TradeWord{"olefin", "write “polypropylene” or “polyethylene”, as the mill says", ""},
    TradeWord{"sock|sock yarn|highland|blend|mixed", "write each fibre with its share, as the mill gives them",
              "write each fibre with its share, as the mill gives them"},
};

} // namespace

std::optional<std::string> in_place_of(std::string_view word, Market market) {
    const auto found =
        std::ranges::find_if(trade_words, [&](const TradeWord& one) { return !found_among(word, one.words).empty(); });
    if (found == trade_words.end()) return std::nullopt;
    const std::string_view help = market == Market::us ? found->us : found->eu;
    return help.empty() ? std::nullopt : std::optional{std::string{help}};
}

} // namespace dyeleaf
