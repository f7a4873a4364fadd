// What a fuzzer makes up, as the readers meet it.
#pragma once

#include "base/diagnostic.h"
#include "cli/report.h"
#include "source/document.h"

#include <cstddef>
#include <cstdint>
#include <memory>
#include <string>

namespace dyeleaf {

inline std::shared_ptr<const SourceFile> as_file(const std::uint8_t* data, std::size_t size) {
    return std::make_shared<const SourceFile>(SourceFile{"input.yaml", std::string(data, data + size)});
}

// A value as it would stand in a record, plain or in quotes.
inline Node as_scalar(const std::shared_ptr<const SourceFile>& file, bool quoted) {
    Node node;
    node.kind = Node::Kind::scalar;
    node.text = file->text;
    node.quoted = quoted;
    node.spot = {file, 1, 1};
    return node;
}

// Complaints are shown as well: they quote the file.
inline void tell(const Diagnostics& diagnostics) {
    (void)describe_all(diagnostics);
    (void)count_problems(diagnostics);
}

// Calls `read` with a value of a record in each of the ways to write one: as plain text, in quotes, as a list or a map.
template <class Read> int read_as_value(const std::uint8_t* data, std::size_t size, const Read& read) {
    const auto file = as_file(data, size);
    for (const bool quoted : {false, true}) {
        Diagnostics diagnostics;
        read(as_scalar(file, quoted), diagnostics);
        tell(diagnostics);
    }
    Diagnostics diagnostics;
    if (const auto node = parse_document(file, diagnostics)) read(*node, diagnostics);
    tell(diagnostics);
    return 0;
}

} // namespace dyeleaf
