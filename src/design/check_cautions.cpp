#include "design/check_cautions.h"

#include "base/overloaded.h"

#include <array>
#include <set>
#include <string>

namespace dyeleaf {

namespace {

struct CautionName {
    CautionKind kind;
    const char* written;
    const char* purpose;
};
constexpr std::array cautions = {
    CautionName{CautionKind::not_food, "not-food", "that it is not food"},
    CautionName{CautionKind::dust, "dust", "that its dust must not be breathed"},
    CautionName{CautionKind::airtight, "airtight", "that it must be kept airtight"},
    CautionName{CautionKind::hazards, "hazards", "what the supplier's sheet says"},
};

class Finder {
  public:
    std::set<CautionKind> found;

    void look(const std::vector<Box>& boxes) {
        for (const Box& box : boxes)
            look(box);
    }
    // Boxes that may be left out, or stand in a list that may be empty, do not count.
    void look(const Box& box) {
        if (!box.with.empty() || !box.without.empty()) return;
        std::visit(Overloaded{
                       [&](const Column& column) { look(column.holds); },
                       [&](const Row& row) { look(row.holds); },
                       [&](const Grid& grid) { look(grid.holds); },
                       [&](const Layers& layers) { look(layers.holds); },
                       [&](const Caution& caution) { found.insert(caution.kind); },
                       [](const auto&) {},
                   },
                   box.kind);
    }
};

} // namespace

void check_cautions(const Design& design, Diagnostics& diagnostics) {
    if (design.items != ItemKind::jars) return;
    Finder finder;
    finder.look(design.front);
    if (design.back) finder.look(*design.back);
    // The sheet's words may stand in one text or in two.
    if (finder.found.contains(CautionKind::signal) && finder.found.contains(CautionKind::statements))
        finder.found.insert(CautionKind::hazards);
    for (const CautionName& caution : cautions) {
        if (finder.found.contains(caution.kind)) continue;
        diagnostics.error(design.spot,
                          std::string{"a jar label must always say "} + caution.purpose + ", and this one does not",
                          std::string{"add {caution: "} + caution.written + "} where nothing leaves it out");
    }
}

} // namespace dyeleaf
