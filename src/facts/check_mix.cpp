#include "facts/check_mix.h"

#include "base/number.h"
#include "base/words.h"
#include "facts/jar_contents.h"
#include "facts/keeping.h"
#include "facts/mix.h"

#include <algorithm>
#include <cmath>

namespace dyeleaf {

namespace {

constexpr double fewest_steps = 10;

// Undoes the binary error of quotients such as 0.3 g / 0.1 g.
constexpr double nudge = 1e-9;

// A jar that holds so much more than was put in was weighed with another lid, or belongs to another record.
constexpr double too_full = 1.05;

// Of salt without a gap in it, and so of any mix with more salt than gaps: rock salt, 2.16 g/mL (from memory).
constexpr Density solid_salt = grams_per_millilitre(2.16);

// Figures in messages, which are not printed and so know no language.
std::string plain(Mass mass) {
    return decimal(mass.number(), 3) + " g";
}
std::string plain_share(Percent share) {
    return significant(share.number(), 2) + " %";
}

class MixCheck {
  public:
    MixCheck(const Records& records, const Jar& jar, Diagnostics& diagnostics)
        : records_(records), jar_(jar), diagnostics_(diagnostics), mixes_(mixes_of(records, jar)) {}

    void run() {
        check_rounding();
        check_small_parts();
        check_head_space();
        check_top_ups();
        check_contents();
        check_room();
        check_use();
    }

  private:
    [[nodiscard]] const Mix& first() const { return mixes_.front(); }
    [[nodiscard]] const Mass& step() const { return records_.studio.scale_step; }

    [[nodiscard]] std::string name() const { return in_quotes(jar_.id.value); }

    void warn(const std::string& message, const std::string& help) { diagnostics_.warning(jar_.spot, message, help); }

    void check_rounding() {
        if (!rounding_shows(first())) return;
        warn("weighed in steps of " + plain(step()) + ", jar " + name() + " holds " + plain_share(*first().strength) +
                 " dye instead of " + plain_share(*first().intended_strength),
             "mix a larger batch, or weigh it on a finer scale");
    }

    void check_small_parts() {
        if (first().masses_estimated || rounding_shows(first())) return;
        const MixPart* least = nullptr;
        for (const MixPart& part : first().parts) {
            if (part.mass && (least == nullptr || *part.mass < *least->mass)) least = &part;
        }
        if (least == nullptr || !first().total || !is_too_small(*least->mass, step())) return;
        const double larger = std::ceil(fewest_steps * (step() / *least->mass) - nudge);
        warn("the " + plain(*least->mass) + " of " + least->name + " in jar " + name() +
                 " are less than ten steps of a scale that shows " + plain(step()),
             "mix " + (larger > 2 ? decimal(larger, 0) + " times" : std::string{"twice"}) +
                 " as much, or weigh it on a finer scale");
    }

    void check_head_space() {
        if (!jar_.holds || first().masses_estimated || first().basis == Basis::volume) return;
        const auto fill = fill_of(mixes_.back(), *jar_.holds);
        if (!fill || *fill <= most_fill) return;
        const Mass most = *mixes_.back().total * (most_fill / *fill);
        warn("jar " + name() + " is about " + decimal(fill->number(), 0) + " % full and will not mix",
             "leave 30 to 40 % of it empty: at most " + decimal(std::floor(most.number()), 0) +
                 " g, or a larger jar; reckoned from the bulk densities");
    }

    // Its labels state what is in it now; only where nobody knows is there something to do.
    void check_top_ups() {
        for (std::size_t i = 0; i < jar_.topped_up.size(); ++i) {
            if (!mixes_[i].strength || mixes_[i + 1].strength) continue;
            warn("jar " + name() +
                     " was topped up after its strength had changed, and nobody can say how strong it is now",
                 "write how much was left in it and how much was added, as in left: 12 g, added: 20 g");
        }
    }

    void check_room() {
        if (!jar_.holds) return;
        std::vector<std::optional<Mass>> filled = {jar_.batch};
        for (const TopUp& top_up : jar_.topped_up)
            filled.push_back(top_up.added);
        for (const std::optional<Mass>& mass : filled) {
            if (!mass || mass->number() <= jar_.holds->number() * solid_salt.number()) continue;
            warn(plain(*mass) + " cannot have gone into jar " + name() + ", which holds " +
                     decimal(jar_.holds->number(), 1) + " mL",
                 "look at the weight and at “holds” again");
        }
    }

    void check_use() {
        if (!jar_.per_skein || !jar_.batch || !jar_.topped_up.empty() || *jar_.per_skein <= *jar_.batch) return;
        warn("one skein takes " + plain(*jar_.per_skein) + " of jar " + name() + ", and only " + plain(*jar_.batch) +
                 " were mixed",
             "look at “per skein” and “batch” again");
    }

    void check_contents() {
        const auto left = left_in(jar_);
        const auto& total = mixes_.back().total;
        if (!left || !total || !jar_.topped_up.empty() || mixes_.back().total_estimated) return;
        if (*left <= *total * too_full) return;
        warn("jar " + name() + " holds " + plain(*left) + ", but only " + plain(*total) + " were mixed",
             "look at “gross”, “tare” and “batch” again; lids get swapped");
    }

    const Records& records_;
    const Jar& jar_;
    Diagnostics& diagnostics_;
    std::vector<Mix> mixes_;
};

} // namespace

void check_mix(const Records& records, const Jar& jar, Diagnostics& diagnostics) {
    MixCheck{records, jar, diagnostics}.run();
}

void check_use_by(const Records& records, const Jar& jar, const Date& today, Diagnostics& diagnostics) {
    const auto date = use_by_of(records.studio, jar);
    if (jar.keeps && !date) {
        diagnostics.warning(jar.spot,
                            "jar " + in_quotes(jar.id.value) + " keeps for a time, but nobody knows since when",
                            "write the day it was mixed, or a date of your own judgement: use by: 2027-06");
    }
    if (!date || !is_over(*date, today)) return;
    diagnostics.warning(jar.spot, "jar " + in_quotes(jar.id.value) + " was to be used by " + to_iso(*date),
                        "try it on a scrap, then write a new date; or mix it anew");
}

bool is_too_small(Mass mass, Mass scale_step) {
    return mass / scale_step < fewest_steps - nudge;
}

} // namespace dyeleaf
