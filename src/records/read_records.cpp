#include "records/read_records.h"

#include "records/check_records.h"
#include "records/read_items.h"
#include "source/document.h"
#include "source/fields.h"

#include <algorithm>
#include <array>
#include <deque>
#include <map>

namespace dyeleaf {

namespace {

struct Heading {
    std::string_view list;
    std::string_view item;
    std::string_view telling_key; // that only items of this list have
};

constexpr std::array headings = {Heading{"ingredients", "ingredient", ""}, Heading{"dyes", "dye", "line"},
                                 Heading{"jars", "jar", "parts"},          Heading{"bases", "base", "fibre"},
                                 Heading{"lots", "lot", "colourway"},      Heading{"printers", "printer", "tray"}};

// Every key that records may hold, so that one which lacks its colon can be told.
constexpr auto known_keys = std::to_array<std::string_view>({
    "a little",
    "acid",
    "across",
    "added",
    "alternate",
    "back",
    "backs",
    "base",
    "bases",
    "batch",
    "bleeds",
    "breaks into",
    "bulk density",
    "by",
    "care",
    "care from",
    "circumference",
    "class",
    "code",
    "colour",
    "colour from",
    "colourway",
    "contact",
    "crocks",
    "currency",
    "customer",
    "density",
    "depth",
    "diameter",
    "down",
    "dry weight",
    "dye",
    "dye lot",
    "dyed",
    "dyes",
    "ean",
    "fibre",
    "fluorescent",
    "form",
    "from",
    "from stock",
    "front",
    "gauge",
    "grade",
    "grey",
    "gross",
    "halo",
    "hazards",
    "height",
    "holds",
    "id",
    "in stock",
    "ingredients",
    "jar",
    "jars",
    "jars keep",
    "keeps",
    "language",
    "left",
    "length",
    "lid",
    "light fastness",
    "lightness",
    "line",
    "lines",
    "link",
    "liquor",
    "logo",
    "lot codes",
    "lots",
    "lots differ",
    "made in",
    "market",
    "mixed",
    "mixed by",
    "name",
    "name the breed",
    "needles",
    "note",
    "notes",
    "odd skeins",
    "on",
    "opened",
    "origin",
    "paper",
    "parts",
    "per skein",
    "photo",
    "picture",
    "pot holds",
    "pots",
    "precautions",
    "price",
    "printer",
    "printers",
    "private notes",
    "product",
    "put up",
    "recipe",
    "reflectance",
    "replaced by",
    "resolution",
    "rinses clear",
    "salt",
    "says",
    "scale step",
    "second language",
    "skein",
    "skein weight",
    "skeins",
    "speckle",
    "spoilt",
    "spread",
    "spun",
    "status",
    "status note",
    "step",
    "steps",
    "strength",
    "strip",
    "studio",
    "superwash",
    "swatch",
    "swatches",
    "tagline",
    "tare",
    "too much",
    "topped up",
    "tray",
    "tried on",
    "unit price",
    "units",
    "upc",
    "use by",
    "virgin wool",
    "visibly",
    "weighed",
    "weight",
    "white",
    "yarn weight",
});

// What the files hold, by heading; the nodes stay in the files' trees.
struct Headings {
    bool complete = true; // whether all that the files hold could be found
    const Node* studio = nullptr;
    std::map<std::string_view, std::vector<Node*>> lists;
};

bool has_key(const Node& node, std::string_view key) {
    return std::ranges::find(node.entries(), key, &Entry::key) != node.entries().end();
}

// A list without a heading: its first item may tell which one was meant.
std::string missing_heading(const Node& list) {
    const Node* first = list.items().empty() ? nullptr : &list.items().front();
    const auto meant = std::ranges::find_if(headings, [&](const Heading& heading) {
        return first != nullptr && !heading.telling_key.empty() && has_key(*first, heading.telling_key);
    });
    if (meant != headings.end()) return "write “" + std::string{meant->list} + ":” on a line of its own above it";
    return "write what it lists on a line of its own above it: “dyes:”, “jars:”, “bases:”, “lots:” or “ingredients:”";
}

void gather_list(Node& node, const Heading& heading, Headings& found, Diagnostics& diagnostics) {
    if (node.kind != Node::Kind::list) {
        diagnostics.error(node.spot, std::string{heading.list} + " is a list, and nothing here begins with a dash",
                          "begin each " + std::string{heading.item} + " with a dash: “- id: …”");
        return;
    }
    for (Node& item : node.insides().items)
        found.lists[heading.list].push_back(&item);
}

void gather(Node& root, Headings& found, Diagnostics& diagnostics) {
    if (root.kind != Node::Kind::map || !root.refused().empty()) found.complete = false;
    if (root.kind == Node::Kind::list) {
        diagnostics.error(root.spot, "this list has no heading", missing_heading(root));
        return;
    }
    if (root.kind != Node::Kind::map) {
        diagnostics.error(root.spot, "this file has no heading",
                          "records begin with a word and a colon on a line of their own, such as “dyes:”");
        return;
    }
    const int errors_before = diagnostics.errors();
    Fields fields{root, "file of records", diagnostics};
    const Node* studio = fields.take("studio");
    for (const Heading& heading : headings)
        fields.take(heading.list); // complains of one that holds nothing
    fields.refuse_the_rest();
    for (Entry& entry : root.insides().entries) {
        const auto* heading = std::ranges::find(headings, entry.key, &Heading::list);
        if (heading != headings.end() && entry.value.kind != Node::Kind::nothing)
            gather_list(entry.value, *heading, found, diagnostics);
    }
    if (diagnostics.errors() > errors_before) found.complete = false;
    if (studio == nullptr) return;
    if (found.studio == nullptr) {
        found.studio = studio;
    } else {
        diagnostics.error(studio->spot, "there is a second studio here",
                          "the first stands in " + found.studio->spot.file->name + " on line " +
                              std::to_string(found.studio->spot.line) + "; keep one of the two");
    }
}

// Reads every item of one list; says in `lost` whether any of them was not usable. Of many lots, the records and the
// trees that they are read from would fill much memory together: what is read leaves its tree.
template <class Items, class Read> Items read_all(const std::vector<Node*>& nodes, bool& lost, const Read& read) {
    Items items;
    for (Node* node : nodes) {
        if (auto item = read(*node)) items.push_back(std::move(*item));
        *node = {};
    }
    lost = lost || items.size() < nodes.size();
    return items;
}

// A currency that nobody gives is not missed while it may stand in what could not be read.
Studio read_studio_if_any(const Headings& found, Diagnostics& diagnostics) {
    Studio studio = found.studio == nullptr ? Studio{} : read_studio(*found.studio, diagnostics);
    if (!found.complete && studio.currency.code.empty()) studio.currency = unread_currency();
    return studio;
}

void warn_of_missing_studio(const Headings& found, Diagnostics& diagnostics) {
    const bool anything = std::ranges::any_of(found.lists, [](const auto& list) { return !list.second.empty(); });
    if (found.studio != nullptr || !anything) return;
    diagnostics.warning({}, "no file has a “studio”, so tags and cards will carry no maker's name",
                        "write studio: {name: Quillmoor Yarn Works} on a line of its own, with your own name");
}

} // namespace

Records read_records(const std::vector<std::shared_ptr<const SourceFile>>& files, Diagnostics& diagnostics) {
    std::vector<Node> roots;
    Headings found;
    found.complete = diagnostics.errors() == 0; // else some file could not even be opened
    for (const auto& file : files) {
        if (auto root = parse_document(file, diagnostics, known_keys)) {
            roots.push_back(std::move(*root));
        } else {
            found.complete = false;
        }
    }
    for (Node& root : roots)
        gather(root, found, diagnostics);

    Records records;
    records.studio = read_studio_if_any(found, diagnostics);
    const Currency& currency = records.studio.currency;
    Unread unread{!found.complete, !found.complete, !found.complete, !found.complete};
    bool nobody_refers_to_it = false;
    const auto with = [&](auto read) {
        return [&diagnostics, read](const Node& node) { return read(node, diagnostics); };
    };
    records.ingredients =
        read_all<std::vector<Ingredient>>(found.lists["ingredients"], unread.ingredients, with(read_ingredient));
    records.dyes = read_all<std::vector<Dye>>(found.lists["dyes"], unread.dyes, with(read_dye));
    records.jars = read_all<std::vector<Jar>>(found.lists["jars"], unread.jars, with(read_jar));
    records.bases = read_all<std::vector<Base>>(found.lists["bases"], unread.bases, with(read_base));
    records.lots = read_all<std::deque<Lot>>(found.lists["lots"], nobody_refers_to_it,
                                             [&](const Node& node) { return read_lot(node, currency, diagnostics); });
    records.printers = read_all<std::vector<Printer>>(found.lists["printers"], nobody_refers_to_it, with(read_printer));
    check_records(records, unread, diagnostics);
    if (diagnostics.errors() == 0) warn_of_missing_studio(found, diagnostics);
    return records;
}

} // namespace dyeleaf
