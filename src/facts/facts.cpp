#include "facts/facts.h"

#include <algorithm>

namespace dyeleaf {

const FactRow* Vocabulary::find(std::string_view wanted) const {
    const auto row = std::ranges::find(rows, wanted, &FactRow::name);
    return row == rows.end() ? nullptr : &*row;
}

std::shared_ptr<const Facts::Scope> Facts::joined(const std::shared_ptr<const Scope>& inner,
                                                  const std::shared_ptr<const Scope>& outer) {
    if (!inner) return outer;
    return std::make_shared<const Scope>(Scope{inner->subject, inner->vocabulary, joined(inner->outer, outer)});
}

Facts Facts::within(const Facts& outer) const {
    Facts result = *this;
    result.innermost_ = joined(innermost_, outer.innermost_);
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
    for (const Scope* scope = innermost_.get(); scope != nullptr; scope = scope->outer.get()) {
        const FactRow* row = scope->vocabulary->find(name);
        if (row == nullptr) continue;
        auto value = row->derive(scope->subject.get(), manner);
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
    for (const Scope* scope = innermost_.get(); scope != nullptr; scope = scope->outer.get())
        result.push_back(scope->vocabulary);
    return result;
}

} // namespace dyeleaf
