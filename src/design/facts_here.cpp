#include "design/facts_here.h"

#include "base/nearest.h"
#include "base/words.h"
#include "source/values.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace dyeleaf {

namespace {

struct KindName {
    ItemKind kind;
    const char* name;
};
constexpr std::array item_kinds = {KindName{ItemKind::dyes, "dyes"}, KindName{ItemKind::jars, "jars"},
                                   KindName{ItemKind::skeins, "skeins"}, KindName{ItemKind::lots, "lots"},
                                   KindName{ItemKind::bases, "bases"}};

// Without the prefix that asks for it in the second language.
std::string_view plain_name(std::string_view name) {
    return name.starts_with(second_language) ? name.substr(second_language.size()) : name;
}

// Says so when the fact is one that layouts for something else can place.
bool belongs_elsewhere(const std::string& name, const Spot& spot, const BoxContext& context) {
    const std::string own = std::ranges::find(item_kinds, context.items, &KindName::kind)->name;
    for (const KindName& other : item_kinds) {
        const auto known = vocabularies(other.kind, false);
        if (std::ranges::none_of(known, [&](const Vocabulary* one) { return one->find(plain_name(name)) != nullptr; }))
            continue;
        context.styles.diagnostics.error(
            spot, in_quotes(name) + " is a fact of " + other.name + ", and this layout is for " + own,
            "place a fact of " + own + ", or change what stands after “for”");
        return true;
    }
    return false;
}

} // namespace

const FactRow* find_fact(const std::string& name, const Spot& spot, const std::vector<FactKind>& wanted,
                         const BoxContext& context) {
    std::vector<std::string> names;
    const auto suits = [&](const FactRow& row) {
        return wanted.empty() || std::ranges::find(wanted, row.kind) != wanted.end();
    };
    for (const Vocabulary* vocabulary : context.facts) {
        if (const FactRow* row = vocabulary->find(plain_name(name))) {
            if (suits(*row)) return row;
            constexpr std::array what = {"a text",   "a colour",  "a length", "a list",
                                         "a symbol", "a picture", "speckles"};
            context.styles.diagnostics.error(
                spot,
                in_quotes(name) + " is " + what.at(static_cast<std::size_t>(row->kind)) +
                    ", which cannot be placed here",
                "a text goes into text, a colour into swatch, a list into repeat or table, a symbol into symbol, a "
                "picture into picture, speckles into speckles");
            return nullptr;
        }
        for (const FactRow& row : vocabulary->rows) {
            if (suits(row)) names.push_back(row.name);
        }
    }
    if (!nearest(name, names) && belongs_elsewhere(name, spot, context)) return nullptr;
    context.styles.diagnostics.error(spot, "there is no fact called " + in_quotes(name) + " here",
                                     names.empty()
                                         ? "what is placed in this way stands in lists: put it into a repeat, as in "
                                           "{repeat: jar.pictograms, holds: [{symbol: pictogram.symbol, height: 10 "
                                           "mm}]}"
                                         : suggest(name, names));
    return nullptr;
}

std::optional<LengthOrFact> read_length_or_fact(const Node& node, const std::string& what, const BoxContext& context) {
    const std::string_view text = trimmed(node.text);
    const bool is_name = node.kind == Node::Kind::scalar && !text.empty() && text.front() >= 'a' && text.front() <= 'z';
    if (is_name) {
        if (find_fact(std::string{text}, node.spot, {FactKind::length}, context) == nullptr) return std::nullopt;
        return LengthOrFact{std::string{text}, node.spot};
    }
    const auto length = read_length(node, what, {mm(1), metres(2)}, context.styles.diagnostics);
    if (!length) return std::nullopt;
    return LengthOrFact{*length, node.spot};
}

} // namespace dyeleaf
