// A value or none, kept apart from what holds it: that stays small where most have none. Copies are copies of the
// value.
#pragma once

#include <memory>
#include <optional>
#include <utility>

namespace dyeleaf {

template <class T> class Boxed {
  public:
    Boxed() = default;
    Boxed(T value) : value_(std::make_unique<T>(std::move(value))) {}
    Boxed(std::optional<T> value) {
        if (value) *this = Boxed{std::move(*value)};
    }
    Boxed(const Boxed& other) : value_(other ? std::make_unique<T>(*other) : nullptr) {}
    Boxed(Boxed&&) noexcept = default;
    Boxed& operator=(Boxed other) noexcept {
        value_ = std::move(other.value_);
        return *this;
    }
    ~Boxed() = default;

    explicit operator bool() const { return value_ != nullptr; }
    // Requires: a value.
    T& operator*() { return *value_; }
    const T& operator*() const { return *value_; }
    T* operator->() { return value_.get(); }
    const T* operator->() const { return value_.get(); }

  private:
    std::unique_ptr<T> value_;
};

} // namespace dyeleaf
