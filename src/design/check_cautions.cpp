#include "design/check_cautions.h"

#include "base/overloaded.h"

#include <algorithm>
#include <array>
#include <set>
#include <string>
#include <utility>

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

// What must hold for a box to be printed: names of facts that must be recorded, or must not.
using Conditions = std::set<std::pair<std::string, bool>>;

class Finder {
  public:
    void look(const std::vector<Box>& boxes, const Conditions& conditions) {
        for (const Box& box : boxes)
            look(box, conditions);
    }
    // Boxes in a list that may be empty do not count.
    void look(const Box& box, Conditions conditions) {
        for (const std::string& name : box.with)
            conditions.emplace(name, true);
        for (const std::string& name : box.without)
            conditions.emplace(name, false);
        std::visit(Overloaded{
                       [&](const Column& column) { look(column.holds, conditions); },
                       [&](const Row& row) { look(row.holds, conditions); },
                       [&](const Grid& grid) { look(grid.holds, conditions); },
                       [&](const Layers& layers) { look(layers.holds, conditions); },
                       [&](const Caution& caution) { found_.emplace(caution.kind, conditions); },
                       [](const auto&) {},
                   },
                   box.kind);
    }

    // Whether it is printed whatever is recorded: under no condition, or once where a fact is and once where it is not.
    [[nodiscard]] bool always(CautionKind kind) const {
        return std::ranges::any_of(found_, [&](const auto& one) {
            if (one.first != kind || one.second.size() > 1) return false;
            if (one.second.empty()) return true;
            const auto& [name, recorded] = *one.second.begin();
            return found_.contains({kind, Conditions{{name, !recorded}}});
        });
    }

  private:
    std::set<std::pair<CautionKind, Conditions>> found_;
};

} // namespace

void check_cautions(const Design& design, Diagnostics& diagnostics) {
    if (design.items != ItemKind::jars) return;
    Finder finder;
    finder.look(design.front, {});
    if (design.back) finder.look(*design.back, {});
    // The sheet's words may stand in one text or in two.
    const bool in_two = finder.always(CautionKind::signal) && finder.always(CautionKind::statements);
    for (const CautionName& caution : cautions) {
        if (finder.always(caution.kind) || (in_two && caution.kind == CautionKind::hazards)) continue;
        diagnostics.error(design.spot,
                          std::string{"a jar label must always say "} + caution.purpose + ", and this one does not",
                          std::string{"add {caution: "} + caution.written + "} where nothing leaves it out");
    }
}

} // namespace dyeleaf
