#include "facts/hazard_wording.h"

#include "base/words.h"

namespace dyeleaf {

namespace {

std::string as_sentence(std::string text) {
    if (!text.ends_with('.') && !text.ends_with('!') && !text.ends_with("…")) text += '.';
    return text;
}

std::vector<std::string> parts_of(const std::string& combination) {
    std::vector<std::string> parts;
    std::size_t begin = 0;
    while (begin <= combination.size()) {
        const std::size_t end = std::min(combination.find('+', begin), combination.size());
        parts.push_back(combination.substr(begin, end - begin));
        begin = end + 1;
    }
    return parts;
}

// What the sheets do not say: "" where there is nothing that they do not.
std::string missing_words(const Language& language, const HazardSummary& hazards) {
    if (hazards.not_on_file.empty()) return {};
    if (!hazards.any_on_file) return language.say("hazards.not on file");
    // Beside something that has a sheet it must be said whose data are missing.
    return language.say("hazards.not on file for", {{"names", joined(hazards.not_on_file, ", ")}});
}

std::string signed_words(const Language& language, const HazardLabel& label, std::string words) {
    if (!label.signal) return words;
    return language.say("hazards.signed", {{"signal", signal_words(language, *label.signal)}, {"words", words}});
}

} // namespace

StatementWording statement_wording(Market market) {
    return market == Market::eu || market == Market::uk ? StatementWording::eu : StatementWording::un;
}

std::string statement_words(const Language& language, StatementWording wording, const Hazard& hazard) {
    if (hazard.says) return *hazard.says;
    const std::string eu = "statements.eu." + hazard.code;
    const std::string un = "statements.un." + hazard.code;
    const bool in_english = language.code() == "en";
    if (wording == StatementWording::eu || !in_english) return language.say(language.has(eu) ? eu : un);
    return language.say(language.has(un) ? un : eu);
}

std::string statement_words(const Language& language, StatementWording, const Precaution& precaution) {
    if (precaution.says) return *precaution.says;
    const std::string key = "statements.precaution." + precaution.code;
    if (language.has(key)) return language.say(key);
    std::vector<std::string> texts;
    for (const std::string& part : parts_of(precaution.code))
        texts.push_back(language.say("statements.precaution." + part));
    return joined(texts, " ");
}

template <class Statement>
std::string statements_words(const Language& language, StatementWording wording,
                             const std::vector<Statement>& statements) {
    std::vector<std::string> sentences;
    for (const Statement& one : statements)
        sentences.push_back(as_sentence(statement_words(language, wording, one)));
    return joined(sentences, " ");
}
template std::string statements_words(const Language&, StatementWording, const std::vector<Hazard>&);
template std::string statements_words(const Language&, StatementWording, const std::vector<Precaution>&);

std::string code_words(const std::vector<Hazard>& hazards) {
    std::vector<std::string> codes;
    for (const Hazard& hazard : hazards) {
        if (codes.empty() || codes.back() != hazard.code) codes.push_back(hazard.code);
    }
    return joined(codes, " ");
}

std::string signal_words(const Language& language, SignalWord signal) {
    return language.say(signal == SignalWord::danger ? "hazards.danger" : "hazards.warning");
}

std::string pictogram_code(Pictogram pictogram) {
    return "GHS0" + std::to_string(static_cast<int>(pictogram));
}

std::string pictogram_words(const Language& language, Pictogram pictogram) {
    return language.say("pictograms." + pictogram_code(pictogram));
}

std::string hazard_words(const Language& language, StatementWording wording, const HazardSummary& hazards) {
    return signed_words(language, hazards.label, unsigned_hazard_words(language, wording, hazards));
}

std::string unsigned_hazard_words(const Language& language, StatementWording wording, const HazardSummary& hazards) {
    const std::string missing = missing_words(language, hazards);
    if (hazards.label.statements.empty()) return missing.empty() ? language.say("hazards.none on sheet") : missing;
    const std::string statements = statements_words(language, wording, hazards.label.statements);
    return missing.empty() ? statements : statements + " " + as_sentence(missing);
}

std::string hazard_words_brief(const Language& language, const HazardSummary& hazards) {
    std::string codes = code_words(hazards.label.statements);
    if (codes.empty()) {
        const bool all_on_file = hazards.not_on_file.empty();
        return language.say(all_on_file ? "hazards.none on sheet brief" : "hazards.not on file brief");
    }
    codes = signed_words(language, hazards.label, std::move(codes));
    if (hazards.not_on_file.empty()) return codes;
    return language.say("hazards.others not on file brief", {{"codes", codes}});
}

} // namespace dyeleaf
