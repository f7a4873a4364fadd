// YAML text becomes a tree of nodes that know where they were written. The only room that includes yaml-cpp.
#pragma once

#include "base/diagnostic.h"

#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace dyeleaf {

struct Node;

struct Entry {
    std::string key;
    Spot key_spot;
    std::vector<Node> value; // exactly one; a vector because Node is not complete here
    [[nodiscard]] const Node& node() const { return value.front(); }
};

// A scalar is always text: nothing turns `No` into false or `0077` into 77.
struct Node {
    enum class Kind { nothing, scalar, list, map };
    Kind kind = Kind::nothing; // nothing: a key with no value, `~` or `null` unquoted
    Spot spot;
    std::string text;           // of a scalar
    bool quoted = false;        // whether the scalar stood in quotes
    std::vector<Node> items;    // of a list
    std::vector<Entry> entries; // of a map, in the order written; keys are unique
    // Of a map: what begins entries that were refused, so that nobody misses them a second time.
    std::vector<std::string> refused;
};

// Bounds on what is read, generous for any studio; beyond them a file is refused, never half read.
struct DocumentLimits {
    std::size_t bytes = 16U << 20U;
    std::size_t depth = 40;
    std::size_t nodes = 500'000; // counted with aliases written out
    std::size_t line_bytes = 64U << 10U;
    std::size_t scalar_bytes = 64U << 10U;
};

// The tree of one file, or nothing when the file is empty or cannot be read as YAML; then, and for duplicate keys,
// tabs, bad UTF-8, NULs, a second document or a bound overrun, there is an error with its place. `keys`, in small
// letters, are those that such a file may hold: they help to tell where a colon is missing.
std::optional<Node> parse_document(std::shared_ptr<const SourceFile> file, Diagnostics& diagnostics,
                                   std::span<const std::string_view> keys = {}, const DocumentLimits& limits = {});

} // namespace dyeleaf
