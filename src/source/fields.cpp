#include "source/fields.h"

#include "base/nearest.h"
#include "base/words.h"
#include "source/explain.h"

#include <algorithm>
#include <utility>

namespace dyeleaf {

Fields::Fields(const Node& node, std::string what, Diagnostics& diagnostics)
    : node_(&node), what_(std::move(what)), diagnostics_(&diagnostics) {}

bool Fields::has(std::string_view key) const {
    const auto begins_with_key = [&](const std::string& text) {
        return text.starts_with(key) &&
               (text.size() == key.size() || text[key.size()] == ' ' || text[key.size()] == ':');
    };
    return std::ranges::find(node_->entries(), key, &Entry::key) != node_->entries().end() ||
           std::ranges::any_of(node_->refused(), begins_with_key);
}

const Node* Fields::take(std::string_view key) {
    ask_for(key);
    const auto entry = std::ranges::find(node_->entries(), key, &Entry::key);
    if (entry == node_->entries().end()) return nullptr;
    const Node& value = entry->value;
    if (value.kind != Node::Kind::nothing) return &value;
    diagnostics_->error(entry->key_spot, "nothing stands after " + in_quotes(key),
                        "write its value after the colon, or leave the line out");
    return nullptr;
}

const Node* Fields::need(std::string_view key, std::string_view example) {
    const Node* value = take(key);
    const bool nothing_read = node_->entries().empty() && !node_->refused().empty(); // and that was complained of
    if (value != nullptr || node_->kind != Node::Kind::map || nothing_read || has(key)) return value;
    const Missing missing{std::string{key}, std::string{example}};
    const bool may_be_a_slip = std::ranges::any_of(node_->entries(), [&](const Entry& entry) {
        return !is_asked_for(entry.key) && nearest(entry.key, {missing.key}).has_value();
    });
    if (may_be_a_slip) {
        missing_.push_back(missing); // which of the two, only refuse_the_rest can tell
    } else {
        complain_of_missing(missing);
    }
    return nullptr;
}

void Fields::ignore(std::string_view key) {
    ask_for(key);
}

void Fields::refuse_the_rest() {
    if (node_->kind != Node::Kind::map) complain_of_shape();
    for (const Entry& entry : node_->entries()) {
        if (is_asked_for(entry.key)) continue;
        const auto meant = diagnostics_->is_full() ? std::nullopt : nearest(entry.key, asked_);
        diagnostics_->error(entry.key_spot, in_quotes(entry.key) + " is not a key of the " + what_,
                            meant ? "did you mean " + in_quotes(*meant) + "?"
                                  : "known here: " + joined(asked_, ", ")); // all: the one she means is among them
        if (meant) std::erase_if(missing_, [&](const Missing& one) { return one.key == *meant; });
    }
    for (const Missing& one : missing_)
        complain_of_missing(one);
    missing_.clear();
}

void Fields::ask_for(std::string_view key) {
    if (!is_asked_for(key)) asked_.emplace_back(key);
}

bool Fields::is_asked_for(std::string_view key) const {
    return std::ranges::find(asked_, key) != asked_.end();
}

// "cells", "layers".
bool Fields::is_plural() const {
    return what_.ends_with('s');
}

// A single line such as `name:Sloe` is a text to the reader, for want of a space.
void Fields::complain_of_shape() {
    const std::vector<std::string_view> keys{asked_.begin(), asked_.end()};
    const auto why = about_words_without_colon(node_->text, 0, keys);
    if (node_->kind == Node::Kind::scalar && !node_->quoted && !why.help.empty()) {
        diagnostics_->error(node_->spot, why.message, why.help);
        return;
    }
    const std::string found = node_->kind == Node::Kind::list      ? "a list"
                              : node_->kind == Node::Kind::nothing ? "nothing"
                                                                   : in_quotes(shortened(node_->text, 40));
    diagnostics_->error(node_->spot,
                        "the " + what_ + (is_plural() ? " are" : " is") +
                            " written as keys with a colon, and here stands " + found,
                        "put each key on a line of its own, like name: Sloe");
}

void Fields::complain_of_missing(const Missing& missing) {
    diagnostics_->error(node_->spot,
                        (is_plural() ? "these " : "this ") + what_ + (is_plural() ? " have no " : " has no ") +
                            in_quotes(missing.key),
                        "add a line such as " + in_quotes(missing.example));
}

} // namespace dyeleaf
