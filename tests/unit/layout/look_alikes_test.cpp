// Patches that are hardly to be told apart carry their codes, or the code stands beside them.
#include "colour/contrast.h"
#include "colour/spaces.h"
#include "layout/check_label.h"
#include "layout/look_alikes.h"
#include "project_folder.h"
#include "setting.h"

#include <algorithm>
#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

constexpr Lab grey{50, 0, 0};
constexpr Lab near_grey{52.9, 0, 0}; // ΔE00 of two greys near L* 50 is about the step in lightness
constexpr Lab far_grey{53.2, 0, 0};

FilledBox patch_of(Lab colour, const std::string& code, const Box* box, Patch::Kind kind = Patch::Kind::recorded) {
    PatchBox patch{{kind, to_rgb(colour).colour, code + " described", code}, {}, {}};
    patch.style.font.family = "Inter";
    patch.style.size = pt(7.5);
    patch.style.smallest = pt(6);
    return {patch, box};
}

FilledBox row_of(std::vector<FilledBox> children, const Box& box) {
    return {Flow{Direction::across, std::move(children)}, &box};
}

// Which of the row's patches carry their code: "yes no ".
std::string carried(FilledBox row) {
    mark_look_alikes(row);
    std::string text;
    for (const FilledBox& child : std::get<Flow>(row.kind).children)
        text += std::get<PatchBox>(child.kind).carries_code ? "yes " : "no ";
    return text;
}

Box sized(Length width, Length height) {
    Box box;
    box.width = Extent::fixed(width);
    box.height = Extent::fixed(height);
    return box;
}

struct Placed {
    Placement placement;
    std::vector<Diagnostic> complaints;
};

Placed placed(FilledBox row, Ink ink = {}) {
    const Size label{mm(60), mm(40)};
    mark_look_alikes(row);
    Item item;
    item.id = "card";
    Diagnostics diagnostics;
    Placed result{place(row, label, {}, Trial{&typesetter(), 0}, ink), {}};
    check_label(Design{}, item, label, result.placement, {}, diagnostics);
    result.complaints = diagnostics.sorted();
    return result;
}

int words_on(const Placement& placement) {
    return static_cast<int>(
        std::ranges::count_if(placement.zones, [](const Zone& zone) { return zone.kind == Zone::Kind::words; }));
}

} // namespace

TEST_CASE("two things nearer than ΔE00 3 carry their codes, one thing's own colours do not", "[layout]") {
    const Box box;
    CHECK(carried(row_of({patch_of(grey, "A", &box), patch_of(near_grey, "B", &box)}, box)) == "yes yes ");
    CHECK(carried(row_of({patch_of(grey, "A", &box), patch_of(far_grey, "B", &box)}, box)) == "no no ");
    CHECK(carried(row_of({patch_of(grey, "A", &box), patch_of(near_grey, "A", &box)}, box)) == "no no ");
    CHECK(carried(row_of({patch_of(grey, "", &box), patch_of(grey, "B", &box)}, box)) == "no no ");
    CHECK(carried(row_of({patch_of(grey, "A", &box), patch_of({90, 0, 0}, "C", &box), patch_of(grey, "B", &box)},
                         box)) == "yes no yes ");
    CHECK(carried(row_of({patch_of(grey, "A", &box), patch_of(grey, "B", &box, Patch::Kind::not_printable)}, box)) ==
          "no no ");
}

TEST_CASE("the code stands in the patch, black or white, with every ink", "[layout]") {
    const Box row;
    const Box box = sized(mm(12), mm(6));
    for (const Lab colour : {Lab{20, 0, 0}, grey, Lab{90, 0, 0}}) {
        const auto result = placed(row_of({patch_of(colour, "F-412", &box), patch_of(colour, "F-420", &box)}, row));
        CHECK(words_on(result.placement) == 2);
        CHECK(result.complaints.empty());
        int runs = 0;
        for (const DisplayItem& item : result.placement.list.items) {
            const auto* run = std::get_if<DrawRun>(&item);
            if (run == nullptr) continue;
            ++runs;
            CHECK(contrast_ratio(run->colour, to_rgb(colour).colour) >= 4.5); // WCAG 2.1, 1.4.3
            CHECK(run->size >= pt(6));
        }
        CHECK(runs == 2);
    }
    const auto twins = [&] { return row_of({patch_of(grey, "F-412", &box), patch_of(grey, "F-420", &box)}, row); };
    CHECK(words_on(placed(twins(), {true, false}).placement) == 2);
    CHECK(words_on(placed(twins(), {false, true}).placement) == 2);
}

TEST_CASE("a patch too small for its code is warned of unless the code stands beside it", "[layout]") {
    const Box row;
    const Box small = sized(mm(4), mm(6));
    const Box large = sized(mm(12), mm(6));
    const auto found =
        placed(row_of({patch_of(grey, "F-412", &small), patch_of(grey, "F-420", &large)}, row)).complaints;
    REQUIRE(found.size() == 1);
    CHECK(found[0].severity == Severity::warning);
    CHECK(
        found[0].message ==
        "“card”: the patch of “F-412” is too small for its code, and another colour here is hardly to be told from it");
    CHECK(found[0].help == "give the patch more room in the layout, or place the code beside it");

    TextStyle style;
    style.font.family = "Inter";
    const FilledBox beside{Words{"F-412", style}, nullptr};
    CHECK(placed(row_of({patch_of(grey, "F-412", &small), beside, patch_of(grey, "F-420", &large)}, row))
              .complaints.empty());
}
