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
    return braced.empty() ? "no holes" : joined(braced, " and ");
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
            for (const Entry& entry : node.entries)
                read(entry.node(), key.empty() ? entry.key : key + "." + entry.key, entry.key_spot);
        } else if (node.kind == Node::Kind::list) {
            for (std::size_t i = 0; i < node.items.size(); ++i)
                read(node.items[i], key + "." + std::to_string(i + 1), node.items[i].spot);
        } else {
            read_phrase(node, key, key_spot);
        }
    }

    Phrases phrases;

  private:
    void read_phrase(const Node& node, const std::string& key, const Spot& key_spot) {
        if (beneath_ != nullptr && !beneath_->has(key)) {
            diagnostics_.error(key_spot, "there is no phrase " + in_quotes(key), suggest(key, keys_));
            return;
        }
        // An empty phrase is written as "".
        const auto holes = holes_of(node.text);
        if (!holes) {
            diagnostics_.error(node.spot, "this phrase has a { or } without its partner",
                               "a hole is a name between braces, as in \"mixed {date}\"");
            return;
        }
        if (beneath_ != nullptr) check_holes(node, *holes, *holes_of(beneath_->phrases().at(key)));
        phrases.emplace(key, node.text);
    }

    void check_holes(const Node& node, const Names& holes, const Names& wanted) {
        if (holes == wanted) return;
        diagnostics_.error(node.spot, "this phrase has " + listed(holes),
                           "the program fills " + listed(wanted) + " here; keep their names as they are");
    }

    const Language* beneath_;
    Diagnostics& diagnostics_;
    std::vector<std::string> keys_;
};

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
    for (const Entry& entry : node.entries) {
        if (entry.key == "language") {
            name = read_text(entry.node(), "language", diagnostics).value_or(code);
        } else {
            reader.read(entry.node(), entry.key, entry.key_spot);
        }
    }
    if (diagnostics.errors() > errors_before) return std::nullopt;
    Phrases phrases = std::move(reader.phrases);
    if (beneath != nullptr) phrases.insert(beneath->phrases().begin(), beneath->phrases().end());
    return Language{code, std::move(name), std::move(phrases)};
}

} // namespace dyeleaf
