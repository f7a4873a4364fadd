#include "source/fields.h"

#include "base/nearest.h"
#include "base/words.h"

#include <algorithm>
#include <utility>

namespace dyeleaf {

namespace {

// What to write where a map belongs; `name:Sloe` is a text to the reader, for want of a space.
std::string how_to_write_keys(const Node& node) {
    const std::size_t colon = node.text.find(':');
    if (colon == std::string::npos || colon == 0 || colon + 1 == node.text.size() || node.quoted)
        return "put each key on a line of its own, like name: Sloe";
    return "a space belongs after each colon: " + node.text.substr(0, colon) + ": " +
           shortened(node.text.substr(colon + 1), 40);
}

} // namespace

Fields::Fields(const Node& node, std::string what, Diagnostics& diagnostics)
    : node_(&node), what_(std::move(what)), diagnostics_(&diagnostics) {
    if (node.kind == Node::Kind::map) return;
    const std::string found = node.kind == Node::Kind::list      ? "a list"
                              : node.kind == Node::Kind::nothing ? "nothing"
                                                                 : in_quotes(shortened(node.text, 40));
    diagnostics.error(node.spot, "the " + what_ + " is written as keys with a colon, and here stands " + found,
                      how_to_write_keys(node));
}

bool Fields::has(std::string_view key) const {
    return std::ranges::any_of(node_->entries, [&](const Entry& entry) { return entry.key == key; });
}

const Node* Fields::take(std::string_view key) {
    asked_.emplace_back(key);
    const auto entry = std::ranges::find(node_->entries, key, &Entry::key);
    if (entry == node_->entries.end()) return nullptr;
    const Node& value = entry->node();
    if (value.kind != Node::Kind::nothing) return &value;
    diagnostics_->error(entry->key_spot, "nothing stands after " + in_quotes(key),
                        "write its value after the colon, or leave the line out");
    return nullptr;
}

const Node* Fields::need(std::string_view key, std::string_view example) {
    const Node* value = take(key);
    if (value == nullptr && node_->kind == Node::Kind::map && !has(key)) {
        diagnostics_->error(node_->spot, "this " + what_ + " has no " + in_quotes(key),
                            "add a line such as " + in_quotes(example));
    }
    return value;
}

void Fields::ignore(std::string_view key) {
    asked_.emplace_back(key);
}

void Fields::refuse_the_rest() {
    for (const Entry& entry : node_->entries) {
        if (std::ranges::find(asked_, entry.key) != asked_.end()) continue;
        diagnostics_->error(entry.key_spot, "a " + what_ + " has no " + in_quotes(entry.key),
                            suggest(entry.key, asked_));
    }
}

} // namespace dyeleaf
