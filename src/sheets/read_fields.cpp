#include "sheets/read_fields.h"

namespace dyeleaf {

std::optional<Length> need_length(Fields& fields, std::string_view key, LengthRange range) {
    const std::string name{key};
    const Node* node = fields.need(key, name + ": 60 mm");
    return node == nullptr ? std::nullopt : read_length(*node, name, range, fields.diagnostics());
}

Length take_length(Fields& fields, std::string_view key, LengthRange range, Length otherwise) {
    const Node* node = fields.take(key);
    if (node == nullptr) return otherwise;
    return read_length(*node, std::string{key}, range, fields.diagnostics()).value_or(otherwise);
}

bool take_yes_no(Fields& fields, std::string_view key, bool otherwise) {
    const Node* node = fields.take(key);
    if (node == nullptr) return otherwise;
    return read_yes_no(*node, std::string{key}, fields.diagnostics()).value_or(otherwise);
}

void refuse(Fields& fields, std::string_view key, const std::string& why) {
    const Node* node = fields.take(key);
    if (node != nullptr)
        fields.diagnostics().error(node->spot, in_quotes(key) + " says nothing here: " + why, "take it out");
}

} // namespace dyeleaf
