// What can be asked of the hazards of a dye or a jar.
#pragma once

#include "facts/hazard_wording.h"
#include "facts/rows.h"

#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace dyeleaf {

struct PictogramView {
    Pictogram pictogram = Pictogram::none;
};
const Vocabulary& pictogram_vocabulary();

struct StatementView {
    StatementWording wording = StatementWording::un;
    std::variant<Hazard, Precaution> statement;
};
const Vocabulary& statement_vocabulary();

std::vector<PictogramView> pictogram_views(const HazardSummary& hazards);
std::vector<StatementView> hazard_views(StatementWording wording, const HazardSummary& hazards);
std::vector<StatementView> precaution_views(StatementWording wording, const HazardSummary& hazards);

inline const Derivation from_sheet = {"", "the codes as recorded from the suppliers’ sheets; rules of precedence",
                                      "EU CLP Regulation 1272/2008, articles 20 and 26 to 28"};
inline const Derivation worded = {
    "", "the published words for the codes recorded, or the sheet’s own where the record has them",
    "UN GHS, annex 3; EU CLP Regulation 1272/2008, annexes III and IV"};

// `subject` is "dye" or "jar"; `of` gives the hazards of a view, whose records say where its studio sells.
template <class View> std::vector<FactRow> hazard_rows(const std::string& subject, HazardSummary (*of)(const View&)) {
    using Row = Rows<View>;
    const auto wording = [](const View& view) { return statement_wording(view.records->studio.market); };
    return {
        Row::text(
            subject + ".signal_word", "Danger or Warning, where the codes have either",
            [=](const View& v, const Manner& m) {
                const auto signal = of(v).label.signal;
                return signal ? signal_words(m.language, *signal) : std::string{};
            },
            from_sheet),
        Row::list(
            subject + ".pictograms", "the pictograms of the codes, the gravest first", pictogram_vocabulary(),
            [=](const View& v) { return pictogram_views(of(v)); }, from_sheet),
        Row::text(
            subject + ".pictograms.many", "there only if there are more than two",
            [=](const View& v) {
                const std::size_t count = of(v).label.pictograms.size();
                return count > 2 ? std::to_string(count) : std::string{};
            },
            from_sheet),
        Row::text(
            subject + ".hazard_codes", "the codes of the sheets, where there are any",
            [=](const View& v) { return code_words(of(v).label.statements); }, from_sheet),
        Row::list(
            subject + ".hazard_statements", "what the codes say, each with its code", statement_vocabulary(),
            [=](const View& v) { return hazard_views(wording(v), of(v)); }, worded),
        Row::text(
            subject + ".hazard_statements.text", "the same in one run",
            [=](const View& v, const Manner& m) {
                return statements_words(m.language, wording(v), of(v).label.statements);
            },
            worded),
        Row::list(
            subject + ".precautions", "the precautions of the sheets, each with its code", statement_vocabulary(),
            [=](const View& v) { return precaution_views(wording(v), of(v)); }, worded),
        Row::text(
            subject + ".precautions.text", "the same in one run",
            [=](const View& v, const Manner& m) { return statements_words(m.language, wording(v), of(v).precautions); },
            worded),
    };
}

} // namespace dyeleaf
