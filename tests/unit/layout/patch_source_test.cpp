// A patch whose colour comes from a photograph says so, with every ink, or the label is warned of.
#include "colour/contrast.h"
#include "layout/check_label.h"
#include "layout/place.h"
#include "project_folder.h"
#include "setting.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

constexpr Rgb rust{0.7, 0.38, 0.18};

struct Placed {
    std::string words;
    Rgb ink;
    Rect rect;
    std::string complaint;
};

// A patch so large, with `beside` next to it.
Placed placed(Length width, Length height, Ink ink = {}, const std::string& beside = "", bool beyond_print = false) {
    Box box;
    box.width = Extent::fixed(width);
    box.height = Extent::fixed(height);
    PatchBox patch{{Patch::Kind::estimated, rust, "Fox"}, {}, {}};
    patch.patch.says = {"from a photo", "photo"};
    patch.patch.beyond_print = beyond_print;
    patch.style.font.family = "Inter";
    const Box plain;
    Flow row{Direction::across, {{patch, &box}}};
    if (!beside.empty()) row.children.push_back({Words{beside, patch.style}, &plain});
    const Size label{mm(70), mm(40)};
    const Placement placement = place({row, &plain}, label, {}, Trial{&typesetter(), 0}, ink);
    Placed result;
    for (const Zone& zone : placement.zones) {
        if (zone.kind != Zone::Kind::words || zone.box != &box) continue;
        result.words = zone.text;
        result.rect = zone.rect;
    }
    for (const DisplayItem& item : placement.list.items) {
        if (const auto* run = std::get_if<DrawRun>(&item)) result.ink = run->colour;
    }
    Item item;
    item.id = "fox";
    Diagnostics diagnostics;
    check_label(Design{}, item, label, placement, {}, diagnostics);
    for (const Diagnostic& one : diagnostics.sorted())
        result.complaint = one.message;
    return result;
}

} // namespace

TEST_CASE("a patch says that its colour is from a photograph, in as many words as it has room for", "[layout]") {
    CHECK(placed(mm(20), mm(8)).words == "from a photo");
    CHECK(placed(mm(9), mm(8)).words == "from a photo"); // on two lines
    CHECK(placed(mm(8), mm(3.6)).words == "photo");
    CHECK(placed(mm(20), mm(8)).complaint.empty());
    CHECK(contains(Rect{{}, {mm(20), mm(8)}}, placed(mm(20), mm(8)).rect));
    CHECK(placed(mm(12), mm(4), {}, "", true).words == "photo");   // clear of the mark of what print cannot show
    CHECK(contrast_ratio(placed(mm(20), mm(8)).ink, rust) >= 4.5); // WCAG 2.1, 1.4.3
    CHECK(placed(mm(20), mm(8), {true, false}).words == "from a photo");
    CHECK(placed(mm(20), mm(8), {false, true}).words == "from a photo");
    CHECK(placed(mm(20), mm(8), {false, true}).ink == Rgb{});
}

TEST_CASE("a patch too small to say where it comes from wants it beside it", "[layout]") {
    CHECK(placed(mm(4), mm(3)).words.empty());
    CHECK(placed(mm(4), mm(3)).complaint == "“fox”: a patch is too small to say “from a photo” on it");
    CHECK(placed(mm(4), mm(3), {}, "rust, from a photo").complaint.empty());
    CHECK(placed(mm(4), mm(3), {}, "rust (photo)").complaint.empty());
    CHECK_FALSE(placed(mm(4), mm(3), {}, "rust").complaint.empty());
}
