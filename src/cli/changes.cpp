#include "cli/changes.h"

#include "cli/printed_note.h"
#include "display/digest.h"
#include "layout/layout.h"

#include <algorithm>
#include <fstream>
#include <iterator>
#include <utility>

namespace dyeleaf {

namespace {

std::uint64_t picture_digest(const std::string& file) {
    std::ifstream stream{file, std::ios::binary};
    Digest sum;
    sum.add(std::string{std::istreambuf_iterator<char>{stream}, {}});
    return sum.value();
}

// Of each item's label, as if printed on one and the same day.
std::vector<std::uint64_t> digests(const Job& job, const Render& request) {
    constexpr Date some_day = {2000, 1, 1};
    Printing printing = job.languages.printing(some_day, request.ink);
    printing.counted = false;
    Diagnostics unheard; // all of it is said when the labels are made
    const auto items =
        make_items(job.records, job.design.items, job.design.grouping, Selection{request.only}, printing, unheard);
    std::vector<std::uint64_t> result;
    for (std::size_t i = 0; i < items.size(); ++i) {
        const PlacedLabel label =
            place_label(job.design, items[i], {job.trims[i].size, job.trims[i].sector}, job.typesetter, unheard);
        Digest sum;
        sum.add(std::uint64_t{request.ink.mono});
        for (const auto& side : {label.front, label.back}) {
            if (side) sum.add(digest(*side, picture_digest));
        }
        result.push_back(sum.value());
    }
    return result;
}

// Cards of several dyes change their numbers as dyes come and go, so any that looks the same is the same.
bool is_known(const PrintedNote& note, const Job& job, const std::string& id, std::uint64_t digest) {
    if (job.design.grouping) {
        return std::ranges::any_of(note, [&](const auto& known) {
            return known.first.first == job.design.name && known.second.digest == digest;
        });
    }
    const auto known = note.find({job.design.name, id});
    return known != note.end() && known->second.digest == digest;
}

} // namespace

void compare_with_note(Job& job, const Render& request, const Date& today, Diagnostics& diagnostics) {
    PrintedNote note = read_note(request.folder.home, diagnostics);
    const std::vector<std::uint64_t> now = digests(job, request);
    std::vector<std::size_t> changed;
    Trims trims;
    const PrintedNote before = note;
    for (std::size_t i = 0; i < job.items.size(); ++i) {
        const std::string id = job.items[i].id;
        if (request.changed && is_known(before, job, id, now[i])) {
            ++job.unchanged;
            continue;
        }
        note[{job.design.name, id}] = {now[i], to_iso(today)};
        changed.push_back(i);
        trims.push_back(job.trims[i]);
    }
    job.items = job.items.only(std::move(changed));
    job.trims = std::move(trims);
    if (request.remember && !job.items.empty()) job.note = write_note(note);
}

} // namespace dyeleaf
