// The two ways of taking a field, with the reader of its value, and the readers that most fields have.
#pragma once

#include "source/fields.h"
#include "source/values.h"

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace dyeleaf {

// What a field's reader gives: an optional. It is called with the value, the key and the diagnostics.
template <class Read>
using Readable =
    decltype(std::declval<const Read&>()(std::declval<const Node&>(), std::string{}, std::declval<Diagnostics&>()));

// What stands under `key`; nothing when the key is absent or its value is refused.
template <class Read> Readable<Read> optional_field(Fields& fields, std::string_view key, const Read& read) {
    const Node* node = fields.take(key);
    return node == nullptr ? Readable<Read>{} : read(*node, std::string{key}, fields.diagnostics());
}

// As optional_field; an absent key is an error that shows `example`, the line to write.
template <class Read>
Readable<Read> needed_field(Fields& fields, std::string_view key, std::string_view example, const Read& read) {
    const Node* node = fields.need(key, example);
    return node == nullptr ? Readable<Read>{} : read(*node, std::string{key}, fields.diagnostics());
}

// A field's reader out of one that wants a range: within(read_mass, {grams(1), grams(5000)}).
template <class T>
auto within(std::optional<T> (*read)(const Node&, const std::string&, Range<T>, Diagnostics&),
            std::type_identity_t<Range<T>> range) {
    return [=](const Node& node, const std::string& what, Diagnostics& diagnostics) {
        return read(node, what, range, diagnostics);
    };
}

// A field's reader out of a set of words.
template <class T> auto one_of(std::vector<std::pair<std::string, T>> choices) {
    return [choices = std::move(choices)](const Node& node, const std::string& what, Diagnostics& diagnostics) {
        return read_choice<T>(node, what, choices, diagnostics);
    };
}

// Text that may run over lines.
inline std::optional<std::string> read_notes(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    return read_prose(node, what, diagnostics);
}

} // namespace dyeleaf
