#include "facts/check_fibres.h"

#include "base/nearest.h"
#include "base/number.h"
#include "base/words.h"
#include "facts/fibre_statement.h"
#include "facts/trade_words.h"

#include <algorithm>
#include <array>

namespace dyeleaf {

namespace {

std::string share_of(const std::string& name, Percent share) {
    return decimal(share.number(), 3) + " % " + name;
}

std::string_view land_of(Market market) {
    switch (market) {
    case Market::eu: return "EU";
    case Market::uk: return "UK";
    case Market::us: return "US";
    case Market::none: break;
    }
    return {};
}

// "Pure Cloud", "100% Silk", "All Wool"; not "All Saints".
bool speaks_of_one_fibre(std::string_view name) {
    const std::string padded = " " + lower_case(name) + " ";
    for (const std::string_view word : {" pure ", " 100 % ", " 100% "}) {
        if (padded.find(word) != std::string::npos) return true;
    }
    const std::size_t all = padded.find(" all ");
    if (all == std::string::npos) return false;
    const std::string_view rest = trimmed(std::string_view{padded}.substr(all + 5));
    return read_fibre_word(rest.substr(0, rest.find(' '))).kind != nullptr;
}

// One base under one market's rules.
struct Check {
    const Base& base;
    Market market;
    Diagnostics& diagnostics;

    // Regulation (EU) No 1007/2011, which the UK has kept; or title 16 of the Code of Federal Regulations.
    void warn(const Spot& spot, const std::string& message, const std::string& help, std::string_view article,
              std::string_view section) const {
        std::string source = "16 CFR " + std::string{section};
        if (market != Market::us) {
            source = "Regulation (EU) No 1007/2011";
            if (market == Market::uk) source += " as the UK keeps it";
            source += ", Art. " + std::string{article};
        }
        diagnostics.warning(spot, message,
                            help + (help.ends_with('?') ? " see " : "; see ") + source +
                                ", and check with your market's rules");
    }

    std::string instead_of(const FibreWord& word) const;

    void check_name(const Fibre& fibre) const;
    void check_breed(const Fibre& fibre, const FibreWord& word) const;
    void check_claims(const Fibre& fibre, const FibreWord& word) const;
    void check_merged() const;
    void check_small_shares() const;
    void check_virgin_wool() const;
    void check_name_of_base() const;
};

std::string Check::instead_of(const FibreWord& word) const {
    if (const auto instead = in_place_of(word.name, market)) return *instead;
    if (word.kind != nullptr) return "ask the mill under which name it is sold there";
    if (const auto near = nearest(word.name, legal_names(market))) return "did you mean " + in_quotes(*near) + "?";
    const std::string help = "write the fibre itself, as the mill names it; trade names belong into the base's name";
    if (market == Market::us) return help;
    return help + ", and a fibre that is not on the list under “other fibres” (Art. 9(5))";
}

void Check::check_name(const Fibre& fibre) const {
    const FibreWord word = read_fibre_word(fibre.name);
    if (word.kind != nullptr && !legal_name(word, market).empty()) {
        check_breed(fibre, word);
        check_claims(fibre, word);
        return;
    }
    warn(fibre.spot,
         in_quotes(shortened(fibre.name, 40)) + " is not on the " + std::string{land_of(market)} +
             " list of fibre names",
         instead_of(word), "5(1)", "303.6");
}

void Check::check_breed(const Fibre& fibre, const FibreWord& word) const {
    if (word.breed.empty() || base.names_breed) return;
    const std::string name = legal_name(word, market);
    std::string help = "write " + in_quotes(name) + "; or add “name the breed: yes” to print " +
                       in_quotes(name + " (" + word.breed + ")") + ", or “no” to leave it out";
    if (market != Market::us) help += "; other words stand apart from the fibres, as in the base's name (Art. 16(2))";
    warn(fibre.spot, in_quotes(fibre.name) + " prints as " + in_quotes(name), help, "5(1)", "303.6");
}

void Check::check_claims(const Fibre& fibre, const FibreWord& word) const {
    const std::string name = legal_name(word, market);
    if (word.superwash) {
        diagnostics.warning(fibre.spot, in_quotes(word.besides) + " is a treatment and does not print with the fibre",
                            "write " + in_quotes(name) + ", and “superwash: yes” on a line of its own");
    } else if (!word.besides.empty() && !name.starts_with("recycled")) {
        diagnostics.warning(fibre.spot, in_quotes(word.besides) + " does not print with the fibre",
                            "write " + in_quotes(name) + "; the rest belongs into the base's name or its notes");
    }
    if (word.sole && stated_fibres(base, market).size() > 1) {
        warn(fibre.spot, in_quotes(fibre.name) + " in a yarn of several fibres",
             "it prints as " + in_quotes(name) + ": “100 %”, “pure” and “all” are for yarns of one fibre", "7(1)",
             "303.27");
    }
}

// Names of one fibre have one figure.
void Check::check_merged() const {
    for (const StatedFibre& stated : stated_fibres(base, market)) {
        std::vector<std::string> names;
        Spot spot;
        for (const std::size_t place : stated.recorded) {
            names.push_back(in_quotes(base.fibres[place].name));
            spot = base.fibres[place].spot;
        }
        if (names.size() < 2) continue;
        warn(spot, joined(names, " and ") + " are one fibre, which prints as " + share_of(stated.name, stated.share),
             "write it once, as " + stated.name + ": " + decimal(stated.share.number(), 3) + " %", "9(1)", "303.16");
    }
}

// EU: one fibre of at most 5 %, several of at most 15 % together. US: below 5 % “other fiber”, save wool, which the
// Wool Products Labeling Act wants named at any share, and fibres that do something in so small a share (from memory).
void Check::check_small_shares() const {
    constexpr std::array named_at_any_share = {"wool",   "alpaca", "llama",   "camel hair", "camel", "cashmere",
                                               "mohair", "vicuna", "spandex", "elastane",   "nylon", "rubber"};
    for (const StatedFibre& stated : stated_fibres(base, market)) {
        if (!stated.is_legal) continue;
        const Spot& spot = base.fibres[stated.recorded.back()].spot;
        const bool is_other = !found_among(stated.name, other_fibres().eu).empty() ||
                              !found_among(stated.name, other_fibres().us).empty();
        if (market != Market::us && is_other && stated.share > percent(15)) {
            warn(spot, share_of(stated.name, stated.share) + " are too many to go unnamed",
                 "name them: at most 15 % may go together so, or 5 % of one fibre alone", "9(2)", "303.3");
        }
        const bool named = std::ranges::find(named_at_any_share, stated.name) != named_at_any_share.end() ||
                           stated.name.starts_with("recycled");
        if (market == Market::us && !is_other && !named && stated.share < percent(5)) {
            warn(spot, share_of(stated.name, stated.share) + " is less than the US rules name",
                 "write “other fiber: " + decimal(stated.share.number(), 3) +
                     " %”, unless it does something in the yarn, as spandex stretches it",
                 "9(2)", "303.3");
        }
    }
}

void Check::check_virgin_wool() const {
    const std::string claimed = "virgin wool is claimed of " + base.name;
    switch (virgin_wool(base, market)) {
    case VirginWool::not_claimed:
    case VirginWool::may_be_named: return;
    case VirginWool::no_wool:
        warn(base.spot, claimed + ", which holds no wool",
             "leave “virgin wool” out; the name is for sheep's wool alone", "8(1)", "300.20");
        return;
    case VirginWool::denied:
        warn(base.spot, claimed + ", and denied in the same record",
             "keep “virgin wool: yes” only if none of its wool was ever in another product", "8(1)", "300.20");
        return;
    case VirginWool::in_part:
        warn(base.spot, claimed + ", but of a part of its wool only",
             "it prints as “wool”; add “virgin wool: yes” if the mill says so of all of it", "8(2)(a)", "300.20");
        return;
    case VirginWool::too_little:
        warn(base.spot, claimed + ", but less than 25 % of it is wool", "it prints as “wool”; leave “virgin wool” out",
             "8(2)(b)", "300.20");
        return;
    case VirginWool::among_many:
        warn(
            base.spot, claimed + ", but there is more than one other fibre in it",
            "it prints as “wool”: where fibres are carded together the claim allows one other; leave “virgin wool” out",
            "8(2)(c)", "300.20");
        return;
    }
}

void Check::check_name_of_base() const {
    if (!speaks_of_one_fibre(base.name) || stated_fibres(base, market).size() < 2) return;
    warn(base.spot, "the name " + in_quotes(base.name) + " speaks of one fibre, and the yarn has several",
         "“100 %”, “pure” and “all” are for yarns of one fibre: choose another name", "7(1)", "303.27");
}

} // namespace

void check_fibres(const Base& base, Market market, Diagnostics& diagnostics) {
    if (market == Market::none) return;
    const Check check{base, market, diagnostics};
    for (const Fibre& fibre : base.fibres)
        check.check_name(fibre);
    check.check_merged();
    check.check_small_shares();
    check.check_virgin_wool();
    check.check_name_of_base();
}

} // namespace dyeleaf
