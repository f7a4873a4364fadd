#include "cli/fact_list.h"

#include "base/nearest.h"
#include "base/overloaded.h"
#include "base/words.h"

#include <algorithm>
#include <string_view>
#include <variant>

namespace dyeleaf {

namespace {

constexpr int name_width = 28;

std::string padded(std::string text, int width) {
    const int missing = width - code_points(text);
    return missing > 0 ? text.append(static_cast<std::size_t>(missing), ' ') : text;
}

std::string colour_words(const Patch& patch) {
    const bool has_colour = patch.kind == Patch::Kind::recorded || patch.kind == Patch::Kind::estimated;
    return (has_colour ? to_hex(patch.colour) + ", " : "") + patch.description;
}

std::string derivation_words(const Derivation& derivation) {
    std::string text = derivation.unit.empty() ? "" : "in " + derivation.unit + ": ";
    text += derivation.how;
    if (!derivation.source.empty()) text += " [" + derivation.source + "]";
    return text;
}

bool is_as_recorded(const Derivation& derivation) {
    return derivation.how == Derivation{}.how && derivation.source.empty();
}

class Lister {
  public:
    // Of a list, the first item alone says how its facts are derived.
    void add(const Facts& facts, const Vocabulary& vocabulary, int depth, bool explained) {
        std::vector<std::string> absent;
        for (const FactRow& row : vocabulary.rows) {
            if (row.name.starts_with("words.") || row.name.starts_with("key.")) continue;
            const auto value = facts.find(row.name);
            if (value) {
                add_fact(row, *value, depth, explained);
            } else {
                absent.push_back(row.name);
            }
        }
        // Items of a list differ in what they lack; only the record itself is worth the words.
        if (!absent.empty() && depth == 0) text_ += "  not recorded, or not so here: " + joined(absent, ", ") + "\n";
    }

    void heading(const std::string& words) { text_ += (text_.empty() ? "" : "\n") + words + "\n"; }

    [[nodiscard]] std::string text() { return std::move(text_); }

  private:
    void add_fact(const FactRow& row, const FactValue& value, int depth, bool explained) {
        const std::string indent(static_cast<std::size_t>(2 + 4 * depth), ' ');
        const std::string head = indent + padded(row.name, name_width) + "  ";
        std::visit(Overloaded{
                       [&](const std::string& words) { text_ += head + words + "\n"; },
                       [&](const Patch& patch) { text_ += head + colour_words(patch) + "\n"; },
                       [&](const Length& length) { text_ += head + to_string(length) + "\n"; },
                       [&](const Symbol& symbol) { text_ += head + symbol.key + ", " + symbol.description + "\n"; },
                       [&](const Speckled& speckled) { text_ += head + speckled.description + "\n"; },
                       [&](const Illustration& picture) { text_ += head + picture.description + "\n"; },
                       [&](const std::vector<Facts>& items) {
                           text_ += head + counted(static_cast<int>(items.size()), "item", "items") + "\n";
                       },
                   },
                   value);
        if (explained && !is_as_recorded(row.derivation)) {
            const std::string below(indent.size() + name_width + 2, ' ');
            text_ += below + "= " + derivation_words(row.derivation) + "\n";
        }
        if (const auto* items = std::get_if<std::vector<Facts>>(&value)) {
            for (std::size_t i = 0; i < items->size(); ++i) {
                text_ += indent + "  " + std::to_string(i + 1) + "\n";
                add((*items)[i], *row.items, depth + 1, explained && i == 0);
            }
        }
    }

    std::string text_;
};

struct KindOfRecord {
    ItemKind kind;
    std::string_view name;
};

template <class Records> bool has_id(const Records& records, std::string_view id) {
    return std::ranges::any_of(records, [&](const auto& record) { return record.id.value == id; });
}

std::vector<KindOfRecord> kinds_with(const Records& records, const std::string& id) {
    std::vector<KindOfRecord> kinds;
    if (has_id(records.dyes, id)) kinds.push_back({ItemKind::dyes, "Dye"});
    if (has_id(records.jars, id)) kinds.push_back({ItemKind::jars, "Jar"});
    if (has_id(records.bases, id)) kinds.push_back({ItemKind::bases, "Base"});
    if (has_id(records.lots, id)) kinds.push_back({ItemKind::lots, "Lot"});
    const std::size_t colon = id.rfind(':');
    if (kinds.empty() && colon != std::string::npos && has_id(records.lots, id.substr(0, colon)))
        kinds.push_back({ItemKind::skeins, "Skein"});
    return kinds;
}

std::vector<std::string> all_ids(const Records& records) {
    std::vector<std::string> ids;
    const auto add = [&](const auto& list) {
        for (const auto& record : list)
            ids.push_back(record.id.value);
    };
    add(records.dyes);
    add(records.jars);
    add(records.bases);
    add(records.lots);
    return ids;
}

} // namespace

std::string list_facts(const Records& records, const std::string& id, const Printing& printing,
                       Diagnostics& diagnostics) {
    const auto kinds = kinds_with(records, id);
    if (kinds.empty()) {
        diagnostics.error({}, "there is no record with the id " + in_quotes(shortened(id, 40)),
                          suggest(id, all_ids(records)) + " (`dyeleaf list` shows them all)");
    }
    Lister lister;
    for (const KindOfRecord& kind : kinds) {
        for (const Item& item : make_items(records, kind.kind, {}, Selection{{id}}, printing, diagnostics)) {
            lister.heading(std::string{kind.name} + " " + item.id + ", " + item.spot.file->name + " on line " +
                           std::to_string(item.spot.line));
            for (const Vocabulary* vocabulary : item.facts.vocabularies()) {
                lister.heading("Facts of the " + vocabulary->name);
                lister.add(item.facts, *vocabulary, 0, true);
            }
        }
    }
    return lister.text();
}

} // namespace dyeleaf
