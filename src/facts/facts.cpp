#include "facts/facts.h"

#include <algorithm>

namespace dyeleaf {

const FactRow* Vocabulary::find(std::string_view wanted) const {
    const auto row = std::ranges::find(rows, wanted, &FactRow::name);
    return row == rows.end() ? nullptr : &*row;
}

Facts Facts::within(const Facts& outer) const {
    Facts result = *this;
    result.scopes_.insert(result.scopes_.end(), outer.scopes_.begin(), outer.scopes_.end());
    return result;
}

std::optional<FactValue> Facts::find(std::string_view name) const {
    for (const Scope& scope : scopes_) {
        if (const FactRow* row = scope.vocabulary->find(name)) return row->derive(scope.subject.get());
    }
    return std::nullopt;
}

std::vector<const Vocabulary*> Facts::vocabularies() const {
    std::vector<const Vocabulary*> result;
    result.reserve(scopes_.size());
    for (const Scope& scope : scopes_)
        result.push_back(scope.vocabulary);
    return result;
}

} // namespace dyeleaf
