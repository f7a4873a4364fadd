// YAML text becomes a tree of nodes that know where they were written. The only room that includes yaml-cpp.
#pragma once

#include "base/boxed.h"
#include "base/diagnostic.h"

#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace dyeleaf {

struct Entry;

// A scalar is always text: nothing turns `No` into false or `0077` into 77.
struct Node {
    enum class Kind { nothing, scalar, list, map };
    struct Inside;

    Kind kind = Kind::nothing; // nothing: a key with no value, `~` or `null` unquoted
    bool quoted = false;       // whether the scalar stood in quotes
    Spot spot;
    std::string text;     // of a scalar
    Boxed<Inside> inside; // of a list or map; most nodes are neither

    [[nodiscard]] const std::vector<Node>& items() const;    // of a list
    [[nodiscard]] const std::vector<Entry>& entries() const; // of a map, in the order written; keys are unique
    // Of a map: what begins entries that were refused, so that nobody misses them a second time.
    [[nodiscard]] const std::vector<std::string>& refused() const;
    // To be changed; made where there is none.
    Inside& insides();
};

struct Entry {
    std::string key;
    Spot key_spot;
    Node value;
};

struct Node::Inside {
    std::vector<Node> items;
    std::vector<Entry> entries;
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
