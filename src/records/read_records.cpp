#include "records/read_records.h"

#include "base/words.h"
#include "records/check_records.h"
#include "records/read_items.h"
#include "source/document.h"
#include "source/fields.h"

#include <algorithm>
#include <array>
#include <map>

namespace dyeleaf {

namespace {

struct Heading {
    std::string_view list;
    std::string_view item;
    std::string_view telling_key; // that only items of this list have
};

constexpr std::array headings = {Heading{"ingredients", "ingredient", ""}, Heading{"dyes", "dye", "line"},
                                 Heading{"jars", "jar", "parts"}, Heading{"bases", "base", "fibre"},
                                 Heading{"lots", "lot", "colourway"}};

// What the files hold, by heading; the nodes stay in the files' trees.
struct Headings {
    const Node* studio = nullptr;
    std::map<std::string_view, std::vector<const Node*>> lists;
};

bool has_key(const Node& node, std::string_view key) {
    return std::ranges::find(node.entries, key, &Entry::key) != node.entries.end();
}

// A list without a heading: its first item may tell which one was meant.
std::string missing_heading(const Node& list) {
    const Node* first = list.items.empty() ? nullptr : &list.items.front();
    const auto meant = std::ranges::find_if(headings, [&](const Heading& heading) {
        return first != nullptr && !heading.telling_key.empty() && has_key(*first, heading.telling_key);
    });
    if (meant != headings.end()) return "write “" + std::string{meant->list} + ":” on a line of its own above it";
    return "write what it lists on a line of its own above it: “dyes:”, “jars:”, “bases:”, “lots:” or “ingredients:”";
}

void gather_list(const Node& node, const Heading& heading, Headings& found, Diagnostics& diagnostics) {
    if (node.kind != Node::Kind::list) {
        diagnostics.error(node.spot, std::string{heading.list} + " is a list, and nothing here begins with a dash",
                          "begin each " + std::string{heading.item} + " with a dash: “- id: …”");
        return;
    }
    for (const Node& item : node.items)
        found.lists[heading.list].push_back(&item);
}

void gather(const Node& root, Headings& found, Diagnostics& diagnostics) {
    if (root.kind == Node::Kind::list) {
        diagnostics.error(root.spot, "this list has no heading", missing_heading(root));
        return;
    }
    if (root.kind != Node::Kind::map) {
        diagnostics.error(root.spot, "this file has no heading",
                          "records begin with a word and a colon on a line of their own, such as “dyes:”");
        return;
    }
    Fields fields{root, "file of records", diagnostics};
    if (const Node* studio = fields.take("studio")) {
        if (found.studio == nullptr) {
            found.studio = studio;
        } else {
            diagnostics.error(studio->spot, "there is a second studio here",
                              "the first stands in " + found.studio->spot.file->name + " on line " +
                                  std::to_string(found.studio->spot.line) + "; keep one of the two");
        }
    }
    for (const Heading& heading : headings) {
        if (const Node* list = fields.take(heading.list)) gather_list(*list, heading, found, diagnostics);
    }
    fields.refuse_the_rest();
}

template <class Item, class Read> std::vector<Item> read_all(const std::vector<const Node*>& nodes, Read read) {
    std::vector<Item> items;
    for (const Node* node : nodes) {
        if (std::optional<Item> item = read(*node)) items.push_back(std::move(*item));
    }
    return items;
}

} // namespace

Records read_records(const std::vector<std::shared_ptr<const SourceFile>>& files, Diagnostics& diagnostics) {
    std::vector<Node> roots;
    for (const auto& file : files) {
        if (auto root = parse_document(file, diagnostics)) roots.push_back(std::move(*root));
    }
    Headings found;
    for (const Node& root : roots)
        gather(root, found, diagnostics);

    Records records;
    if (found.studio != nullptr) records.studio = read_studio(*found.studio, diagnostics);
    const Currency& currency = records.studio.currency;
    const auto with = [&](auto read) {
        return [&diagnostics, read](const Node& node) { return read(node, diagnostics); };
    };
    records.ingredients = read_all<Ingredient>(found.lists["ingredients"], with(read_ingredient));
    records.dyes = read_all<Dye>(found.lists["dyes"], with(read_dye));
    records.jars = read_all<Jar>(found.lists["jars"], with(read_jar));
    records.bases = read_all<Base>(found.lists["bases"], with(read_base));
    records.lots =
        read_all<Lot>(found.lists["lots"], [&](const Node& node) { return read_lot(node, currency, diagnostics); });
    check_records(records, diagnostics);
    return records;
}

} // namespace dyeleaf
