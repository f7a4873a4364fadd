// A fact is a name, a value and its printed text. What can be asked of a record stands in a vocabulary: a table of
// names, each with its meaning and the pure function that derives it. Layouts place facts by these names and are
// checked against the same tables, so a name that is not here cannot be printed.
#pragma once

#include "base/colour.h"
#include "base/ink.h"
#include "base/length.h"
#include "facts/speckled.h"
#include "language/language.h"
#include "pictures/picture_file.h"

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace dyeleaf {

// How one colour is to appear on paper.
struct Patch {
    enum class Kind {
        recorded,
        estimated,     // recorded by a way that is not to be trusted alone, or worked out
        not_recorded,  // an empty frame, room for a sample
        not_printable, // fluorescent: no ink shows it
    };
    Kind kind = Kind::not_recorded;
    Rgb colour{};              // where kind is recorded, estimated, or not_printable with a nearest tint
    std::string description;   // for readers who cannot see it: "Sloe at 0.5 % on Plain Sock"
    std::string code = {};     // of the dye or lot that it is a colour of; empty: of nothing that has one
    bool beyond_print = false; // the true colour is stronger: this is the nearest one that sRGB has
    // What must be said of it on paper: "from a photo", and the same in fewer letters. Empty: nothing.
    std::vector<std::string> says = {};
};

// A drawing that the program knows, by its key: "care/wash 30 gentle", "ghs/GHS07".
struct Symbol {
    std::string key;
    std::string description; // for readers who cannot see it
    bool mono = false;       // drawn without colour
};

// A picture of the dyer's.
struct Illustration {
    PictureFile picture;
    std::string description; // for readers who cannot see it
    std::string owner;       // whose record names it: "26-117"
};

class Facts;
using FactValue = std::variant<std::string, Patch, Length, std::vector<Facts>, Symbol, Illustration, Speckled>;

enum class FactKind { text, patch, length, list, symbol, picture, speckles }; // in the order of FactValue

// How facts are put on paper this time.
struct Manner {
    const Language& language;
    Ink ink = {};
};

// Where a fact comes from, for people.
struct Derivation {
    std::string unit;                // of its value: "g", "mL", "%"; empty for words
    std::string how = "as recorded"; // "share of the batch, rounded to the scale's step"
    std::string source;              // of a rule or a table: a standard and its clause, "common practice"; may be empty
};

struct Vocabulary;

struct FactRow {
    std::string name; // "dye.code"
    FactKind kind = FactKind::text;
    std::string meaning; // one line for people
    // Where kind is list: what each of its items can be asked.
    const Vocabulary* items = nullptr;
    // Nothing means not recorded. The pointer is to the vocabulary's subject.
    std::function<std::optional<FactValue>(const void*, const Manner&)> derive;
    Derivation derivation;
};

struct Vocabulary {
    std::string name; // of the subject: "dye", "swatch"
    std::vector<FactRow> rows;
    [[nodiscard]] const FactRow* find(std::string_view name) const;
};

// A name with this before it asks for the same fact in the studio's second language, where there is one.
inline constexpr std::string_view second_language = "second.";

// The facts of one subject, derived when asked, with the facts of what it belongs to behind it: a swatch's facts,
// then its dye's, then the studio's. Copies share the subjects.
class Facts {
  public:
    Facts() = default;

    template <class Subject> static Facts of(Subject subject, const Vocabulary& vocabulary) {
        Facts facts;
        facts.innermost_ = std::make_shared<const Scope>(
            Scope{std::make_shared<const Subject>(std::move(subject)), &vocabulary, nullptr});
        return facts;
    }
    // These facts first, then those of `outer`, in whose language they print unless they have one of their own.
    [[nodiscard]] Facts within(const Facts& outer) const;
    // In these languages, which must outlive the facts; the second may be null.
    [[nodiscard]] Facts printed(const Manner& manner, const Language* second) const;

    // Nothing where the record does not say. Requires: a language, and a name that one of the vocabularies has.
    [[nodiscard]] std::optional<FactValue> find(std::string_view name) const;

    // A phrase in the language of print, for what a layout adds to facts. Empty without a language.
    [[nodiscard]] std::string say(std::string_view key, std::initializer_list<Filling> fillings = {}) const;

    [[nodiscard]] std::vector<const Vocabulary*> vocabularies() const;

    [[nodiscard]] Ink ink() const { return ink_; }

  private:
    struct Scope {
        std::shared_ptr<const void> subject;
        const Vocabulary* vocabulary;
        std::shared_ptr<const Scope> outer;
    };
    static std::shared_ptr<const Scope> joined(const std::shared_ptr<const Scope>& inner,
                                               const std::shared_ptr<const Scope>& outer);

    std::shared_ptr<const Scope> innermost_;
    const Language* language_ = nullptr;
    const Language* second_ = nullptr;
    Ink ink_;
};

} // namespace dyeleaf
