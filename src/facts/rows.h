// How vocabularies are written down: one row a fact, each a small function of the subject's view.
#pragma once

#include "facts/facts.h"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace dyeleaf {

// Rows about a `View`. The functions take a `const View&` and give the value or an optional of it. An empty text and
// an empty list count as not recorded, so that `with:` asks one question.
template <class View> struct Rows {
    template <class Derive> static FactRow text(std::string name, std::string meaning, Derive derive) {
        return row(std::move(name), FactKind::text, std::move(meaning), nullptr,
                   [derive](const View& view) -> std::optional<FactValue> {
                       const std::optional<std::string> words{derive(view)};
                       if (!words || words->empty()) return std::nullopt;
                       return *words;
                   });
    }
    template <class Derive> static FactRow patch(std::string name, std::string meaning, Derive derive) {
        return row(std::move(name), FactKind::patch, std::move(meaning), nullptr,
                   [derive](const View& view) -> std::optional<FactValue> {
                       std::optional<Patch> patch{derive(view)};
                       if (!patch) return std::nullopt;
                       return std::move(*patch);
                   });
    }
    template <class Derive> static FactRow length(std::string name, std::string meaning, Derive derive) {
        return row(std::move(name), FactKind::length, std::move(meaning), nullptr,
                   [derive](const View& view) -> std::optional<FactValue> {
                       const std::optional<Length> length{derive(view)};
                       if (!length) return std::nullopt;
                       return *length;
                   });
    }
    // Each of the views that `derive` gives becomes an item, asked by way of `items`.
    template <class Derive>
    static FactRow list(std::string name, std::string meaning, const Vocabulary& items, Derive derive) {
        return row(std::move(name), FactKind::list, std::move(meaning), &items,
                   [derive, &items](const View& view) -> std::optional<FactValue> {
                       std::vector<Facts> facts;
                       for (auto& item : derive(view))
                           facts.push_back(Facts::of(std::move(item), items));
                       if (facts.empty()) return std::nullopt;
                       return facts;
                   });
    }

  private:
    template <class Derive>
    static FactRow row(std::string name, FactKind kind, std::string meaning, const Vocabulary* items, Derive derive) {
        return {std::move(name), kind, std::move(meaning), items,
                [derive](const void* subject) { return derive(*static_cast<const View*>(subject)); }};
    }
};

} // namespace dyeleaf
