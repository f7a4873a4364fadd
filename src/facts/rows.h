// How vocabularies are written down: one row a fact, each a small function of the subject's view.
#pragma once

#include "facts/facts.h"

#include <concepts>
#include <initializer_list>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace dyeleaf {

// Rows about a `View`. The functions take a `const View&`, and after it a `const Manner&` where they put words
// together, and give the value or an optional of it. An empty text and an empty list count as not recorded, so that
// `with:` asks one question.
template <class View> struct Rows {
    template <class Derive>
    static FactRow text(std::string name, std::string meaning, Derive derive, Derivation derivation = {}) {
        return row(std::move(name), FactKind::text, std::move(meaning), nullptr, std::move(derivation),
                   [derive](const View& view, const Manner& manner) -> std::optional<FactValue> {
                       const std::optional<std::string> words{ask(derive, view, manner)};
                       if (!words || words->empty()) return std::nullopt;
                       return *words;
                   });
    }
    // The same of every subject: what this phrase says.
    static FactRow phrase(std::string name, std::string meaning, std::string_view key, Derivation derivation = {}) {
        return text(
            std::move(name), std::move(meaning),
            [key = std::string{key}](const View&, const Manner& manner) { return manner.language.say(key); },
            std::move(derivation));
    }
    template <class Derive>
    static FactRow patch(std::string name, std::string meaning, Derive derive, Derivation derivation = {}) {
        return value<Patch>(std::move(name), FactKind::patch, std::move(meaning), derive, std::move(derivation));
    }
    template <class Derive>
    static FactRow length(std::string name, std::string meaning, Derive derive, Derivation derivation = {}) {
        return value<Length>(std::move(name), FactKind::length, std::move(meaning), derive, std::move(derivation));
    }
    template <class Derive>
    static FactRow symbol(std::string name, std::string meaning, Derive derive, Derivation derivation = {}) {
        return value<Symbol>(std::move(name), FactKind::symbol, std::move(meaning), derive, std::move(derivation));
    }
    template <class Derive>
    static FactRow picture(std::string name, std::string meaning, Derive derive, Derivation derivation = {}) {
        return value<Illustration>(std::move(name), FactKind::picture, std::move(meaning), derive,
                                   std::move(derivation));
    }
    template <class Derive>
    static FactRow speckles(std::string name, std::string meaning, Derive derive, Derivation derivation = {}) {
        return value<Speckled>(std::move(name), FactKind::speckles, std::move(meaning), derive, std::move(derivation));
    }
    // Each of the views that `derive` gives becomes an item, asked by way of `items`.
    template <class Derive>
    static FactRow list(std::string name, std::string meaning, const Vocabulary& items, Derive derive,
                        Derivation derivation = {}) {
        return row(std::move(name), FactKind::list, std::move(meaning), &items, std::move(derivation),
                   [derive, &items](const View& view, const Manner& manner) -> std::optional<FactValue> {
                       std::vector<Facts> facts;
                       for (auto& item : ask(derive, view, manner))
                           facts.push_back(Facts::of(std::move(item), items));
                       if (facts.empty()) return std::nullopt;
                       return facts;
                   });
    }

  private:
    template <class Derive> static decltype(auto) ask(const Derive& derive, const View& view, const Manner& manner) {
        if constexpr (std::invocable<const Derive&, const View&, const Manner&>) {
            return derive(view, manner);
        } else {
            return derive(view);
        }
    }

    template <class Value, class Derive>
    static FactRow value(std::string name, FactKind kind, std::string meaning, Derive derive, Derivation derivation) {
        return row(std::move(name), kind, std::move(meaning), nullptr, std::move(derivation),
                   [derive](const View& view, const Manner& manner) -> std::optional<FactValue> {
                       std::optional<Value> found{ask(derive, view, manner)};
                       if (!found) return std::nullopt;
                       return std::move(*found);
                   });
    }

    template <class Derive>
    static FactRow row(std::string name, FactKind kind, std::string meaning, const Vocabulary* items,
                       Derivation derivation, Derive derive) {
        return {std::move(name),
                kind,
                std::move(meaning),
                items,
                [derive](const void* subject, const Manner& manner) {
                    return derive(*static_cast<const View*>(subject), manner);
                },
                std::move(derivation)};
    }
};

// A row, or a table of rows that several vocabularies share.
struct RowOrTable {
    RowOrTable(FactRow row) : rows{std::move(row)} {}
    RowOrTable(std::vector<FactRow> table) : rows(std::move(table)) {}
    std::vector<FactRow> rows;
};

// All of them in this order.
inline std::vector<FactRow> together(std::initializer_list<RowOrTable> parts) {
    std::vector<FactRow> rows;
    for (const RowOrTable& part : parts)
        rows.insert(rows.end(), part.rows.begin(), part.rows.end());
    return rows;
}

} // namespace dyeleaf
