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
inline Node as_scalar(const std::uint8_t* data, std::size_t size, bool quoted) {
    Node node;
    node.kind = Node::Kind::scalar;
    node.text.assign(data, data + size);
    node.quoted = quoted;
    node.spot = {as_file(data, size), 1, 1};
    return node;
}

// Complaints are shown as well: they quote the file.
inline void tell(const Diagnostics& diagnostics) {
    (void)describe_all(diagnostics);
    (void)count_problems(diagnostics);
}

} // namespace dyeleaf
