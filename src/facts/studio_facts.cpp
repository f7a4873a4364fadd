#include "facts/studio_facts.h"

#include "base/words.h"
#include "facts/date_rows.h"
#include "facts/illustration.h"
#include "facts/rows.h"
#include "facts/wording.h"

#include <algorithm>
#include <array>

namespace dyeleaf {

namespace {

struct ContactLine {
    std::string text;
};

const Vocabulary& contact_vocabulary() {
    using Row = Rows<ContactLine>;
    static const Vocabulary vocabulary{
        "contact line",
        {Row::text("line.text", "one line of the contact", [](const ContactLine& line) { return line.text; })}};
    return vocabulary;
}

std::vector<ContactLine> contact_lines(const StudioView& view) {
    std::vector<ContactLine> lines;
    for (const std::string& text : view.studio->contact)
        lines.push_back({text});
    return lines;
}

// A colour that nobody could take for a dye's, to explain the marks with.
constexpr Rgb sample{0.62, 0.60, 0.57};
constexpr Rgb bare_paper{1, 1, 1};

FactRow key_row(std::string name, std::string meaning, Patch::Kind kind, Rgb colour, const char* phrase) {
    using Row = Rows<StudioView>;
    return Row::patch(std::move(name), std::move(meaning),
                      [=](const StudioView&, const Manner& m) {
                          return Patch{kind, colour, m.language.say(phrase)};
                      },
                      {"", "drawn for the key of a card", ""});
}

// A family of hues in a key to the patterns.
struct PatternView {
    const char* phrase;
    Rgb sample;
};

const Vocabulary& pattern_vocabulary() {
    using PatternRow = Rows<PatternView>;
    static const Derivation drawn{"", "drawn for the key of a card", ""};
    static const Vocabulary vocabulary{
        "pattern",
        {PatternRow::patch(
             "pattern.patch", "for a key: the pattern of a family of hues",
             [](const PatternView& v, const Manner& m) {
                 return Patch{Patch::Kind::recorded, v.sample, m.language.say(v.phrase)};
             },
             drawn),
         PatternRow::text(
             "pattern.name", "for a key: the family of hues that has the pattern",
             [](const PatternView& v, const Manner& m) { return m.language.say(v.phrase); }, drawn)}};
    return vocabulary;
}

// Only where patches have patterns.
std::vector<PatternView> patterns(const StudioView&, const Manner& manner) {
    if (!manner.ink.mono && !manner.ink.sparing) return {};
    return {{"hue.pink", {0.85, 0.50, 0.66}},         {"hue.red", {0.80, 0.30, 0.27}},
            {"hue.orange brown", {0.85, 0.52, 0.25}}, {"hue.yellow", {0.84, 0.72, 0.25}},
            {"hue.green", {0.37, 0.62, 0.35}},        {"hue.turquoise", {0.25, 0.64, 0.64}},
            {"hue.blue", {0.33, 0.50, 0.78}},         {"hue.violet", {0.58, 0.42, 0.75}},
            {"hue.grey", {0.60, 0.60, 0.60}},         {"hue.black", {0.15, 0.15, 0.15}}};
}

// What layouts put before or beside a fact, so that they hold no language of their own. A phrase's key in the
// language's file is the name with spaces in place of underscores.
constexpr std::array words_beside{"acid",
                                  "actual",
                                  "all_colours",
                                  "amount",
                                  "bath",
                                  "by",
                                  "card",
                                  "colour",
                                  "date_not_recorded",
                                  "date_unknown",
                                  "done_differently",
                                  "dye",
                                  "dye_by_weight",
                                  "dye_in_all",
                                  "dye_lot",
                                  "dye_lot_not_recorded",
                                  "dye_or_jar",
                                  "dyed",
                                  "dyed_by",
                                  "dyed_in",
                                  "empty_jar",
                                  "finished",
                                  "in_all",
                                  "index",
                                  "jar_and_all",
                                  "key_beyond_print",
                                  "key_code",
                                  "key_estimated",
                                  "key_look_alike",
                                  "key_not_printable",
                                  "key_not_recorded",
                                  "key_recorded",
                                  "leave_a_third_empty",
                                  "left",
                                  "lot",
                                  "mix_in_this_order",
                                  "needles",
                                  "next_time",
                                  "no_recipe",
                                  "pots",
                                  "precautions_on_sheet",
                                  "printed",
                                  "result",
                                  "skein",
                                  "skein_alone",
                                  "skein_takes",
                                  "started",
                                  "stock",
                                  "stock_short",
                                  "stock_under_depth",
                                  "strength_unknown",
                                  "supplier_name",
                                  "supplier_sheet",
                                  "swatched",
                                  "swatching_date_not_recorded",
                                  "to_weaken_it",
                                  "trust_the_yarn",
                                  "use_by",
                                  "water_from",
                                  "weather",
                                  "weighed_on",
                                  "yarn"};

std::vector<FactRow> word_rows() {
    using Row = Rows<StudioView>;
    std::vector<FactRow> rows;
    for (const char* word : words_beside) {
        const std::string name = std::string{"words."} + word;
        std::string key = name;
        std::ranges::replace(key, '_', ' ');
        rows.push_back(Row::phrase(name, "words to put beside a fact, in the language of print", key,
                                   {"", "from the language's file", ""}));
    }
    return rows;
}

constexpr const char* how_dated = "today, or the date that --date gives";

std::optional<Date> day_printed(const StudioView& view) {
    return view.today;
}

std::optional<Illustration> logo(const StudioView& view, const Manner& manner) {
    const std::string& name = view.studio->name;
    return illustration(view.studio->logo, manner.language.say("studio.logo", {{"name", name}}), name);
}

std::vector<FactRow> studio_rows() {
    using Row = Rows<StudioView>;
    return together({
        Row::text("studio.name", "the studio's name", [](const StudioView& v) { return v.studio->name; }),
        Row::text("studio.tagline", "the words under its name", [](const StudioView& v) { return v.studio->tagline; }),
        Row::picture("studio.logo", "the studio's logo", logo),
        Row::text("studio.contact", "the contact on one line",
                  [](const StudioView& v) { return joined(v.studio->contact, dot); }),
        Row::list("studio.contact.lines", "the contact line by line", contact_vocabulary(), contact_lines),
        Row::text("studio.made_in", "where the yarn is dyed", [](const StudioView& v) { return v.studio->made_in; }),
        Row::length("printer.dot", "the width of one dot of the printer",
                    [](const StudioView& v) { return v.studio->dot; },
                    {"mm", "an inch over the studio's “resolution”; 300 dpi where none is recorded", ""}),
        Row::text("printed.date", "the day of printing",
                  [](const StudioView& v, const Manner& m) { return short_date(m.language, v.today); },
                  {"", how_dated, ""}),
        date_rows<StudioView>("printed.date", day_printed, how_dated),
        Row::text("printed.month", "the month of printing",
                  [](const StudioView& v, const Manner& m) { return month_date(m.language, v.today); },
                  {"", how_dated, ""}),
        key_row("key.recorded", "for a key: how a recorded colour looks", Patch::Kind::recorded, sample,
                "key.recorded"),
        key_row("key.estimated", "for a key: how an estimated colour looks", Patch::Kind::estimated, sample,
                "key.estimated"),
        Row::patch("key.beyond_print", "for a key: how a colour looks that is stronger than print can show",
                   [](const StudioView&, const Manner& m) {
                       return Patch{Patch::Kind::recorded, sample, m.language.say("key.beyond print"), {}, true};
                   },
                   {"", "drawn for the key of a card", ""}),
        key_row("key.not_recorded", "for a key: how a colour that is not recorded looks", Patch::Kind::not_recorded,
                bare_paper, "key.not recorded"),
        key_row("key.not_printable", "for a key: how a colour that no ink shows looks", Patch::Kind::not_printable,
                sample, "key.not printable"),
        Row::list("key.patterns", "for a key: the patterns of patches that are printed without solid colour",
                  pattern_vocabulary(), patterns, {"", "in mono and with sparing ink", ""}),
    });
}

} // namespace

const Vocabulary& studio_vocabulary() {
    static const Vocabulary vocabulary{"studio", together({studio_rows(), word_rows()})};
    return vocabulary;
}

} // namespace dyeleaf
