#include "facts/fibre_kinds.h"

#include "base/words.h"

#include <algorithm>
#include <array>

namespace dyeleaf {

namespace {

using enum FibreKind::Nature;

// Names for the EU: Regulation (EU) No 1007/2011, Annex I, rows 1 to 48 in its order; row 49 is of Regulation (EU)
// No 286/2012 (from memory), row 50 of Regulation (EU) 2018/122. The UK keeps the same list. Rows 2 and 3 name each
// animal by itself. Names for the US: 16 CFR 303.6 (by which the name of an animal whose hair is no wool has “hair” or
// “fiber” beside it, or is “fur fiber”), 303.7 and 300.8 (which names these list: from memory). Allowances: Annex IX of
// the regulation, where it has several the one for staple fibre, not bleached or mercerised, and the carded one, which
// it asks for where nobody can tell; those of rows 49 and 50 were not at hand and are not given. What the trade says
// besides: from memory.
constexpr std::array kinds = {
    FibreKind{"wool", "wool", "lambswool|lamb's wool|sheep's wool|sheepswool", wool, percent(17), percent(18.25)},
    FibreKind{"alpaca", "alpaca", "", hair, percent(17), percent(18.25)},
    FibreKind{"llama", "llama", "", hair, percent(17), percent(18.25)},
    FibreKind{"camel", "camel hair|camel", "", hair, percent(17), percent(18.25)},
    FibreKind{"cashmere", "cashmere", "", hair, percent(17), percent(18.25)},
    FibreKind{"mohair", "mohair", "", hair, percent(17), percent(18.25)},
    FibreKind{"angora", "angora rabbit hair|fur fiber", "angora rabbit", hair, percent(17), percent(18.25)},
    FibreKind{"vicuna", "vicuna", "", hair, percent(17), percent(18.25)},
    FibreKind{"yak", "yak hair|fur fiber", "", hair, percent(17), percent(18.25)},
    FibreKind{"guanaco", "guanaco hair|fur fiber", "", hair, percent(17), percent(18.25)},
    FibreKind{"cashgora", "cashgora hair|fur fiber", "", hair, percent(17), percent(18.25)},
    FibreKind{"beaver", "beaver hair|fur fiber", "", hair, percent(17), percent(18.25)},
    FibreKind{"otter", "otter hair|fur fiber", "", hair, percent(17), percent(18.25)},
    FibreKind{"animal hair|hair|cattle hair|common goat hair", "fur fiber", "", hair, percent(17), percent(18.25)},
    FibreKind{"horsehair", "horsehair", "", hair, percent(15), percent(16)},
    FibreKind{"musk ox hair|animal hair", "musk ox hair|fur fiber", "qiviut|musk ox|muskox", hair, percent(17),
              percent(18.25)},
    FibreKind{"possum hair|animal hair", "possum hair|fur fiber", "possum|possum fur", hair, percent(17),
              percent(18.25)},
    FibreKind{"silk", "silk", "", silk, percent(11)},
    FibreKind{"cotton", "cotton", "", plant, percent(8.5)},
    FibreKind{"kapok", "kapok", "", plant, percent(10.9)},
    FibreKind{"flax|linen", "linen|flax", "", plant, percent(12)},
    FibreKind{"true hemp", "hemp|true hemp", "hemp", plant, percent(12)},
    FibreKind{"jute", "jute", "", plant, percent(17)},
    FibreKind{"abaca|manila hemp", "abaca", "", plant, percent(14)},
    FibreKind{"alfa", "", "", plant, percent(14)},
    FibreKind{"coir|coconut", "coir", "", plant, percent(13)},
    FibreKind{"broom", "", "", plant, percent(14)},
    FibreKind{"ramie", "ramie", "", plant, percent(8.5)},
    FibreKind{"sisal", "sisal", "", plant, percent(14)},
    FibreKind{"sunn", "sunn", "", plant, percent(12)},
    FibreKind{"henequen", "henequen", "", plant, percent(14)},
    FibreKind{"maguey", "", "", plant, percent(14)},
    FibreKind{"acetate", "acetate", "", regenerated, percent(9)},
    FibreKind{"alginate", "alginate", "", regenerated, percent(20)},
    FibreKind{"cupro", "cupra|rayon", "", regenerated, percent(13)},
    FibreKind{"modal", "modal|rayon", "", regenerated, percent(13)},
    FibreKind{"protein", "azlon|protein", "soya protein|soy protein|milk protein", regenerated, percent(17)},
    FibreKind{"triacetate", "triacetate|acetate", "", regenerated, percent(7)},
    FibreKind{"viscose", "rayon|viscose", "bamboo viscose|bamboo rayon|viscose from bamboo|rayon from bamboo",
              regenerated, percent(13)},
    FibreKind{"acrylic", "acrylic", "", synthetic, percent(2)},
    FibreKind{"chlorofibre", "vinyon", "", synthetic, percent(2)},
    FibreKind{"fluorofibre", "fluoropolymer", "", synthetic, percent(0)},
    FibreKind{"modacrylic", "modacrylic", "", synthetic, percent(2)},
    FibreKind{"polyamide|nylon", "nylon", "", synthetic, percent(6.25)},
    FibreKind{"aramid", "aramid", "", synthetic, percent(8)},
    FibreKind{"polyimide", "polyimide", "", synthetic, percent(3.5)},
    FibreKind{"lyocell", "lyocell|rayon", "", regenerated, percent(13)},
    FibreKind{"polylactide", "PLA", "", synthetic, percent(1.5)},
    FibreKind{"polyester", "polyester", "", synthetic, percent(1.5)},
    FibreKind{"", "olefin", "", synthetic, std::nullopt}, // the EU tells two of them apart
    FibreKind{"polyethylene", "olefin", "", synthetic, percent(1.5)},
    FibreKind{"polypropylene", "olefin", "", synthetic, percent(2)},
    FibreKind{"polycarbamide", "polycarbamide", "", synthetic, percent(2)},
    FibreKind{"polyurethane", "polyurethane", "", synthetic, percent(3.5)},
    FibreKind{"vinylal", "vinal", "", synthetic, percent(5)},
    FibreKind{"trivinyl", "trivinyl", "", synthetic, percent(3)},
    FibreKind{"elastodiene", "rubber", "", synthetic, percent(1)},
    FibreKind{"elastane", "spandex|elastane", "", synthetic, percent(1.5)},
    FibreKind{"glass fibre", "glass", "", other, percent(2)},
    FibreKind{"elastomultiester", "elasterell-p", "", synthetic, percent(1.5)},
    FibreKind{"elastolefin", "lastol", "", synthetic, percent(1.5)},
    FibreKind{"melamine", "melamine", "", synthetic, percent(7)},
    FibreKind{"metallised fibre|metal|metallic|metallised|metal fibre|metallic fibre|metal yarn|metallic yarn|"
              "metallised yarn",
              "metallic", "metallized fiber|metallic fiber|metallized", other, percent(2)},
    FibreKind{"paper|paper yarn|paper fibre", "paper", "", other, percent(13.75)},
    FibreKind{"polypropylene/polyamide bicomponent", "polypropylene/polyamide bicomponent", "", synthetic,
              std::nullopt},
    FibreKind{"polyacrylate", "", "", synthetic, std::nullopt},
};

constexpr FibreKind others = {"other fibres|other fibre", "other fibers|other fiber", "", other, std::nullopt};

} // namespace

std::span<const FibreKind> fibre_kinds() {
    return kinds;
}

const FibreKind& other_fibres() {
    return others;
}

std::string_view first_of(std::string_view names) {
    return names.substr(0, names.find('|'));
}

std::string_view found_among(std::string_view name, std::string_view names) {
    while (!names.empty()) {
        const std::string_view one = first_of(names);
        if (lower_case(one) == lower_case(name)) return one;
        names.remove_prefix(std::min(one.size() + 1, names.size()));
    }
    return {};
}

} // namespace dyeleaf
