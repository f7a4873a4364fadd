#include "facts/studio_facts.h"

#include "base/words.h"
#include "facts/rows.h"
#include "facts/wording.h"

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
constexpr Rgb paper{1, 1, 1};

} // namespace

const Vocabulary& studio_vocabulary() {
    using Row = Rows<StudioView>;
    static const Vocabulary vocabulary{
        "studio",
        {
            Row::text("studio.name", "the studio's name", [](const StudioView& v) { return v.studio->name; }),
            Row::text("studio.tagline", "the words under its name",
                      [](const StudioView& v) { return v.studio->tagline; }),
            Row::text("studio.contact", "the contact on one line",
                      [](const StudioView& v) { return joined(v.studio->contact, dot); }),
            Row::list("studio.contact.lines", "the contact line by line", contact_vocabulary(), contact_lines),
            Row::text("studio.made_in", "where the yarn is dyed",
                      [](const StudioView& v) { return v.studio->made_in; }),
            Row::text("printed.date", "the day of printing", [](const StudioView& v) { return short_date(v.today); }),
            Row::text("printed.month", "the month of printing",
                      [](const StudioView& v) { return month_date(v.today); }),
            Row::patch("key.recorded", "for a key: how a recorded colour looks",
                       [](const StudioView&) {
                           return Patch{Patch::Kind::recorded, sample, "sample of a recorded colour"};
                       }),
            Row::patch("key.estimated", "for a key: how an estimated colour looks",
                       [](const StudioView&) {
                           return Patch{Patch::Kind::estimated, sample, "sample of an estimated colour"};
                       }),
            Row::patch("key.not_recorded", "for a key: how a colour that is not recorded looks",
                       [](const StudioView&) {
                           return Patch{Patch::Kind::not_recorded, paper, "sample of a colour not recorded"};
                       }),
            Row::patch("key.not_printable", "for a key: how a colour that no ink shows looks",
                       [](const StudioView&) {
                           return Patch{Patch::Kind::not_printable, sample, "sample of a colour not printable"};
                       }),
        }};
    return vocabulary;
}

} // namespace dyeleaf
