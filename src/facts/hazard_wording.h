// The words for hazards: those of the suppliers' sheets, and those for what is not on file.
#pragma once

#include "facts/hazards.h"
#include "language/language.h"
#include "records/records.h"

#include <string>
#include <vector>

namespace dyeleaf {

// Whose wording of the hazard statements: the EU's where the studio sells in the EU or the UK, else the UN's. A code
// that only one of the two has is worded by that one. The UN's is at hand in English alone; in other languages the EU's
// stands.
enum class StatementWording { un, eu };
StatementWording statement_wording(Market market);

// As published, or as the record says it in the sheet's own words: "May cause an allergic skin reaction."
std::string statement_words(const Language& language, StatementWording wording, const Hazard& hazard);
// A combination that has no text of its own is the texts of its parts.
std::string statement_words(const Language& language, StatementWording wording, const Precaution& precaution);
// All of them, each a sentence.
template <class Statement>
std::string statements_words(const Language& language, StatementWording wording,
                             const std::vector<Statement>& statements);

std::string code_words(const std::vector<Hazard>& hazards);                 // "H317 H334"
std::string signal_words(const Language& language, SignalWord signal);      // "Danger"
std::string pictogram_words(const Language& language, Pictogram pictogram); // "health hazard"
std::string pictogram_code(Pictogram pictogram);                            // "GHS08"

// Signal word, statements, and whose data are missing.
std::string hazard_words(const Language& language, StatementWording wording, const HazardSummary& hazards);
// The same without the signal word.
std::string unsigned_hazard_words(const Language& language, StatementWording wording, const HazardSummary& hazards);
// "Danger: H317 H334".
std::string hazard_words_brief(const Language& language, const HazardSummary& hazards);

} // namespace dyeleaf
