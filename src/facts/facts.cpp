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
    if (language_ == nullptr) {
        result.language_ = outer.language_;
        result.second_ = outer.second_;
        result.ink_ = outer.ink_;
    }
    return result;
}

Facts Facts::printed(const Manner& manner, const Language* second) const {
    Facts result = *this;
    result.language_ = &manner.language;
    result.second_ = second;
    result.ink_ = manner.ink;
    return result;
}

std::optional<FactValue> Facts::find(std::string_view name) const {
    const Language* language = language_;
    if (name.starts_with(second_language)) {
        name.remove_prefix(second_language.size());
        language = second_;
    }
    if (language == nullptr) return std::nullopt;
    const Manner manner{*language, ink_};
    for (const Scope& scope : scopes_) {
        const FactRow* row = scope.vocabulary->find(name);
        if (row == nullptr) continue;
        auto value = row->derive(scope.subject.get(), manner);
        if (auto* items = value ? std::get_if<std::vector<Facts>>(&*value) : nullptr) {
            for (Facts& item : *items)
                item = item.printed(manner, second_);
        }
        return value;
    }
    return std::nullopt;
}

std::string Facts::say(std::string_view key, std::initializer_list<Filling> fillings) const {
    return language_ == nullptr ? std::string{} : language_->say(key, fillings);
}

std::vector<const Vocabulary*> Facts::vocabularies() const {
    std::vector<const Vocabulary*> result;
    result.reserve(scopes_.size());
    for (const Scope& scope : scopes_)
        result.push_back(scope.vocabulary);
    return result;
}

} // namespace dyeleaf
