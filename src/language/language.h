// One language of print: every word that a label or a sheet carries, from a file in layouts/languages.
#pragma once

#include <functional>
#include <initializer_list>
#include <map>
#include <string>
#include <string_view>

namespace dyeleaf {

// What takes the place of {name} in a phrase.
struct Filling {
    std::string_view name;
    std::string_view value;
};

using Phrases = std::map<std::string, std::string, std::less<>>;

class Language {
  public:
    // `code` is the language's own after ISO 639-1: "en".
    Language(std::string code, std::string name, Phrases phrases);

    [[nodiscard]] const std::string& code() const { return code_; }
    [[nodiscard]] const std::string& name() const { return name_; }
    [[nodiscard]] const Phrases& phrases() const { return phrases_; }

    // The phrase under this key ("jar.mixed") with its holes filled. Requires: a key that English has; reading sees to
    // it that every language has all of those. Throws std::out_of_range for another.
    [[nodiscard]] std::string say(std::string_view key, std::initializer_list<Filling> fillings = {}) const;
    [[nodiscard]] bool has(std::string_view key) const { return phrases_.contains(key); }

    // With the language's decimal mark: number(2.50, 2) is "2.5" or "2,5".
    [[nodiscard]] std::string number(double value, int places) const;
    // The same for a number that is text already: "2.50" stays "2.50" or becomes "2,50".
    [[nodiscard]] std::string number(std::string_view plain) const;

  private:
    std::string code_;
    std::string name_;
    Phrases phrases_;
};

} // namespace dyeleaf
