#include "language/read_language.h"

#include "base/nearest.h"
#include "base/words.h"
#include "source/values.h"

#include <set>
#include <utility>
#include <vector>

namespace dyeleaf {

namespace {

using Names = std::set<std::string, std::less<>>;

// The names of the holes in a phrase; nothing where a brace has no partner.
std::optional<Names> holes_of(std::string_view phrase) {
    Names names;
    while (true) {
        const std::size_t brace = phrase.find_first_of("{}");
        if (brace == std::string_view::npos) return names;
        const std::size_t close = phrase.find_first_of("{}", brace + 1);
        if (phrase[brace] == '}' || close == std::string_view::npos || phrase[close] == '{') return std::nullopt;
        names.emplace(phrase.substr(brace + 1, close - brace - 1));
        phrase.remove_prefix(close + 1);
    }
}

std::string listed(const Names& names) {
    std::vector<std::string> braced;
    for (const std::string& name : names)
        braced.push_back("{" + name + "}");
    return joined(braced, " and ");
}

class Reader {
  public:
    Reader(const Language* beneath, Diagnostics& diagnostics) : beneath_(beneath), diagnostics_(diagnostics) {
        if (beneath == nullptr) return;
        for (const auto& [key, phrase] : beneath->phrases())
            keys_.push_back(key);
    }

    void read(const Node& node, const std::string& key, const Spot& key_spot) {
        if (node.kind == Node::Kind::map) {
            for (const Entry& entry : node.entries())
                read(entry.value, key.empty() ? entry.key : key + "." + entry.key, entry.key_spot);
        } else if (node.kind == Node::Kind::list) {
            for (std::size_t i = 0; i < node.items().size(); ++i)
                read(node.items()[i], key + "." + std::to_string(i + 1), node.items()[i].spot);
        } else {
            read_phrase(node, key, key_spot);
        }
    }

    Phrases phrases;

  private:
    void read_phrase(const Node& node, const std::string& key, const Spot& key_spot) {
        if (beneath_ != nullptr && !beneath_->has(key)) {
            const auto meant = diagnostics_.is_full() ? std::nullopt : nearest(key, keys_);
            diagnostics_.error(key_spot, "there is no phrase " + in_quotes(key),
                               meant
                                   ? "did you mean " + in_quotes(*meant) + "?"
                                   : "every phrase stands in en.yaml, in the program's folder layouts/languages; keep "
                                     "its headings and the spaces before its lines");
            return;
        }
        // An empty phrase is written as "".
        const auto holes = holes_of(node.text);
        if (!holes) {
            diagnostics_.error(node.spot, "this phrase has a { or } without its partner",
                               "a hole is a name between braces, as in \"mixed {date}\"");
            return;
        }
        if (beneath_ != nullptr) check_holes(node, key_spot, *holes, *holes_of(beneath_->phrases().at(key)));
        phrases.emplace(key, node.text);
    }

    void check_holes(const Node& node, const Spot& key_spot, const Names& holes, const Names& wanted) {
        if (node.kind == Node::Kind::nothing) {
            diagnostics_.error(key_spot, "nothing stands after this phrase's name",
                               "write its words, or leave the line out");
            return;
        }
        if (holes == wanted) return;
        diagnostics_.error(node.spot,
                           holes.empty() ? "this phrase lacks " + listed(wanted) : "this phrase has " + listed(holes),
                           wanted.empty() ? "the program fills nothing in here: take the braces out"
                                          : "the program fills " + listed(wanted) +
                                                " here; keep what stands in braces "
                                                "as it is");
    }

    const Language* beneath_;
    Diagnostics& diagnostics_;
    std::vector<std::string> keys_;
};

// What is left out prints as in the language beneath. Not every statement has been published in every language.
void warn_of_missing(const Node& node, const Phrases& phrases, const Language& beneath, Diagnostics& diagnostics) {
    std::vector<std::string> missing;
    for (const auto& [key, phrase] : beneath.phrases()) {
        if (!phrases.contains(key) && !key.starts_with("statements.")) missing.push_back(key);
    }
    if (missing.empty()) return;
    diagnostics.warning(node.spot,
                        counted(static_cast<int>(missing.size()), "phrase is missing here and prints",
                                "phrases are missing here and print") +
                            " in " + beneath.name() + ", the first of them " + in_quotes(missing.front()),
                        "copy them from the program's file of that language and change their words");
}

} // namespace

std::optional<Language> read_language(const Node& node, const std::string& code, const Language* beneath,
                                      Diagnostics& diagnostics) {
    const int errors_before = diagnostics.errors();
    Reader reader{beneath, diagnostics};
    std::string name = code;
    if (node.kind != Node::Kind::map) {
        diagnostics.error(node.spot, "this file of phrases has no headings",
                          "copy a language from the folder layouts/languages and change its words");
        return std::nullopt;
    }
    for (const Entry& entry : node.entries()) {
        if (entry.key == "language") {
            name = read_text(entry.value, "language", diagnostics).value_or(code);
        } else {
            reader.read(entry.value, entry.key, entry.key_spot);
        }
    }
    if (diagnostics.errors() > errors_before) return std::nullopt;
    Phrases phrases = std::move(reader.phrases);
    if (beneath != nullptr && beneath->code() != code) warn_of_missing(node, phrases, *beneath, diagnostics);
    if (beneath != nullptr) phrases.insert(beneath->phrases().begin(), beneath->phrases().end());
    return Language{code, std::move(name), std::move(phrases)};
}

} // namespace dyeleaf
