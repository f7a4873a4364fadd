#include "facts/hazard_facts.h"

namespace dyeleaf {

const Vocabulary& pictogram_vocabulary() {
    using Row = Rows<Pictogram>;
    static const Vocabulary vocabulary{
        "pictogram",
        {
            Row::symbol("pictogram.symbol", "the drawing in its red frame",
                        [](const Pictogram& v, const Manner& m) {
                            return Symbol{"ghs/" + pictogram_code(v), pictogram_words(m.language, v), m.ink.mono};
                        },
                        {"", "its number in the list of pictograms", "UN GHS, annex 3"}),
            Row::text("pictogram.code", "its number: GHS08", [](const Pictogram& v) { return pictogram_code(v); }),
            Row::text("pictogram.name", "its name: health hazard",
                      [](const Pictogram& v, const Manner& m) { return pictogram_words(m.language, v); },
                      {"", "its name in the list of pictograms", "UN GHS, annex 3"}),
            Row::text("pictogram.word", "its name, only where black ink alone is printed",
                      [](const Pictogram& v, const Manner& m) {
                          return m.ink.mono ? pictogram_words(m.language, v) : std::string{};
                      },
                      {"", "without its red frame a pictogram needs a word", "common practice"}),
        }};
    return vocabulary;
}

const Vocabulary& statement_vocabulary() {
    using Row = Rows<StatementView>;
    static const Vocabulary vocabulary{
        "statement",
        {
            Row::text("statement.code", "its code: H317, P305+P351+P338",
                      [](const StatementView& v) {
                          return std::visit([](const auto& one) { return one.code; }, v.statement);
                      }),
            Row::text(
                "statement.text", "what it says",
                [](const StatementView& v, const Manner& m) {
                    return std::visit([&](const auto& one) { return statement_words(m.language, v.wording, one); },
                                      v.statement);
                },
                worded),
        }};
    return vocabulary;
}

std::vector<StatementView> hazard_views(StatementWording wording, const HazardSummary& hazards) {
    std::vector<StatementView> views;
    for (const Hazard& hazard : hazards.label.statements)
        views.push_back({wording, hazard});
    return views;
}

std::vector<StatementView> precaution_views(StatementWording wording, const HazardSummary& hazards) {
    std::vector<StatementView> views;
    for (const Precaution& precaution : hazards.precautions)
        views.push_back({wording, precaution});
    return views;
}

} // namespace dyeleaf
