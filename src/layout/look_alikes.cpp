#include "layout/look_alikes.h"

#include "base/overloaded.h"
#include "colour/difference.h"
#include "colour/spaces.h"

#include <algorithm>
#include <utility>

namespace dyeleaf {

namespace {

struct Coloured {
    PatchBox* box;
    Lab colour;
};

bool shows_colour(const Patch& patch) {
    return patch.kind == Patch::Kind::recorded || patch.kind == Patch::Kind::estimated;
}

void collect(FilledBox& box, std::vector<Coloured>& into) {
    const auto all = [&](std::vector<FilledBox>& boxes) {
        for (FilledBox& one : boxes)
            collect(one, into);
    };
    std::visit(Overloaded{[&](Flow& flow) { all(flow.children); }, [&](FilledGrid& grid) { all(grid.children); },
                          [&](Stack& stack) { all(stack.children); },
                          [&](FilledTable& table) { std::ranges::for_each(table.rows, all); },
                          [&](PatchBox& patch) {
                              if (shows_colour(patch.patch) && !patch.patch.code.empty())
                                  into.push_back({&patch, to_lab(patch.patch.colour)});
                              all(patch.children);
                          },
                          [](const auto&) {}},
               box.kind);
}

} // namespace

void mark_look_alikes(FilledBox& label) {
    std::vector<Coloured> patches;
    collect(label, patches);
    for (auto one = patches.begin(); one != patches.end(); ++one) {
        for (auto other = one + 1; other != patches.end(); ++other) {
            if (one->box->patch.code == other->box->patch.code) continue;
            if (delta_e_2000(one->colour, other->colour) < least_difference)
                one->box->carries_code = other->box->carries_code = true;
        }
    }
}

} // namespace dyeleaf
