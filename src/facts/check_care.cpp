#include "facts/check_care.h"

#include "base/number.h"
#include "base/words.h"
#include "facts/care_proposal.h"

#include <algorithm>

namespace dyeleaf {

namespace {

std::string keys_of(const std::vector<Care>& care) {
    std::vector<std::string> keys;
    for (const Care& treatment : care)
        keys.emplace_back(treatment.key);
    return joined(keys, ", ");
}

// "drying, ironing and dry and wet cleaning"
std::string nouns_of(const std::vector<CareProcess>& processes) {
    std::vector<std::string> nouns;
    for (const CareProcess process : processes)
        nouns.emplace_back(noun_of(process));
    if (nouns.size() < 2) return joined(nouns, "");
    const std::string last = nouns.back();
    nouns.pop_back();
    return joined(nouns, ", ") + " or " + last;
}

// Words for these processes: the gentlest.
std::string examples_of(const std::vector<CareProcess>& processes) {
    std::vector<std::string> examples;
    for (const CareProcess process : processes) {
        switch (process) {
        case CareProcess::wash: examples.emplace_back("hand wash"); break;
        case CareProcess::bleach: examples.emplace_back("no bleach"); break;
        case CareProcess::dry: examples.emplace_back("dry flat"); break;
        case CareProcess::iron: examples.emplace_back("no iron"); break;
        case CareProcess::professional: examples.emplace_back("no dry clean"); break;
        }
    }
    return joined(examples, ", ");
}

// ISO 3758 takes its five processes in the order washing, bleaching, drying, ironing, professional care.
void check_gaps(const Base& base, Diagnostics& diagnostics) {
    const auto missing = processes_left_out(base.care);
    if (missing.empty()) return;
    diagnostics.warning(base.care_spot, "the care of " + base.name + " says nothing of " + nouns_of(missing),
                        "add what the mill's data or your own test says, such as " + examples_of(missing));
}

void check_missing(const Base& base, const std::optional<CareProposal>& proposal, Diagnostics& diagnostics) {
    std::string help = "ask the mill, or test it yourself";
    if (proposal) {
        help += "; common practice for " + proposal->because + ": care: [" + keys_of(proposal->care) + "]";
    }
    diagnostics.warning(base.spot, base.name + " has no care recorded, so its tags give none", help);
}

// Where the mill's data or a test stands behind the care, they know better.
void check_harshness(const Base& base, const CareProposal& proposal, Diagnostics& diagnostics) {
    if (base.care_source) return;
    for (const Care& recorded : base.care) {
        for (const Care& proposed : proposal.care) {
            if (!is_harsher(recorded, proposed)) continue;
            const bool washing = recorded.process == CareProcess::wash;
            const std::string whom = washing ? proposal.because : "such a blend";
            diagnostics.warning(base.care_spot, in_quotes(recorded.key) + " may be too harsh for " + base.name,
                                "common practice for " + whom + " is " + in_quotes(proposed.key) +
                                    "; if yours is the mill's word or you tried it, add “care from: mill” or “care "
                                    "from: own test”");
        }
    }
}

void check_superwash(const Base& base, Diagnostics& diagnostics) {
    if (!base.superwash) return;
    const Percent wool = wool_share(base);
    const auto* share = std::get_if<Percent>(&*base.superwash);
    const bool all = share == nullptr && std::get<bool>(*base.superwash);
    if (all && wool == Percent{}) {
        diagnostics.warning(base.spot, base.name + " is superwash, but no wool is in it",
                            "leave “superwash” out: it counts for wool alone");
    } else if (share != nullptr && *share > wool) {
        diagnostics.warning(
            base.spot,
            decimal(share->number(), 3) + " % of " + base.name + " is superwash, but only " +
                decimal(wool.number(), 3) + " % is wool",
            "superwash counts for its own share of the wool; write “superwash: yes” if all the wool is");
    }
}

bool is_sold(const Records& records, const Base& base) {
    return std::ranges::any_of(records.lots, [&](const Lot& lot) { return lot.base.value == base.id.value; });
}

} // namespace

// The symbols of ISO 3758 are registered marks in a number of countries.
void check_care_symbols(const Records& records, Diagnostics& diagnostics) {
    const Studio& studio = records.studio;
    const bool printed = std::ranges::any_of(records.bases, [](const Base& base) { return !base.care.empty(); });
    if (studio.care_style == CareStyle::words || !printed) return;
    std::string help = "ask whether you need a licence; words are always possible: write “care: words”";
    // ASTM D5489 has drawings of its own (from memory).
    if (studio.market == Market::us) help += "; the US also draws some of them in another way";
    diagnostics.warning(studio.spot, "care symbols may be protected trademarks where you sell", help);
}

void check_care(const Records& records, const Base& base, Diagnostics& diagnostics) {
    check_superwash(base, diagnostics);
    const auto proposal = proposed_care(base);
    if (base.care.empty()) {
        if (is_sold(records, base)) check_missing(base, proposal, diagnostics);
        return;
    }
    check_gaps(base, diagnostics);
    if (proposal) check_harshness(base, *proposal, diagnostics);
}

} // namespace dyeleaf
