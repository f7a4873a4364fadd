// What a layout is made for: one label a dye, a jar, a skein …, or several dyes together on one.
#pragma once

#include "base/date.h"
#include "base/diagnostic.h"
#include "facts/card_facts.h"
#include "facts/facts.h"
#include "records/records.h"

#include <cstddef>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace dyeleaf {

enum class ItemKind { dyes, jars, skeins, lots, bases };

// Which of the records are wanted. Each selector is the id of one, or else what several may have in common: for dyes a
// code or a line; for jars a code, or the id, code or line of a dye in them; for lots and skeins a colourway or the id
// of a base. `LOT:FIRST-LAST` names skeins. Ids are exact; codes and names ignore case.
struct Selection {
    std::vector<std::string> only; // empty: all
};

// How the labels print. The languages must outlive the items.
struct Printing {
    Manner manner;
    const Language* second = nullptr; // beside the first, where a layout asks for it
    Date today;                       // what "date printed" says
    bool counted = true;              // cards know their place in the set; no: to compare one with an older one
};

struct Item {
    std::string id; // names it in complaints and lists: "sloe", "26-117:3"
    Facts facts;
    Spot spot; // where its record stands
};

// What is to be printed, each made when it is asked for: a run may hold very many.
class Items {
  public:
    Items() = default;
    // `make` gives the n-th, the same each time.
    Items(std::size_t count, std::function<Item(std::size_t)> make) : count_(count), make_(std::move(make)) {}
    explicit Items(std::vector<Item> all) : count_(all.size()) {
        make_ = [kept = std::make_shared<const std::vector<Item>>(std::move(all))](std::size_t i) {
            return kept->at(i);
        };
    }

    [[nodiscard]] std::size_t size() const { return count_; }
    [[nodiscard]] bool empty() const { return count_ == 0; }
    [[nodiscard]] Item operator[](std::size_t index) const { return make_(index); }
    [[nodiscard]] Item front() const { return make_(0); }
    [[nodiscard]] Item back() const { return make_(count_ - 1); }
    // Those with these numbers, in this order.
    [[nodiscard]] Items only(std::vector<std::size_t> numbers) const {
        const std::size_t count = numbers.size();
        return {count, [make = make_, kept = std::make_shared<const std::vector<std::size_t>>(std::move(numbers))](
                           std::size_t i) { return make(kept->at(i)); }};
    }

    class Iterator {
      public:
        Iterator(const Items* items, std::size_t index) : items_(items), index_(index) {}
        Item operator*() const { return (*items_)[index_]; }
        Iterator& operator++() {
            ++index_;
            return *this;
        }
        friend bool operator==(const Iterator&, const Iterator&) = default;

      private:
        const Items* items_;
        std::size_t index_;
    };
    [[nodiscard]] Iterator begin() const { return {this, 0}; }
    [[nodiscard]] Iterator end() const { return {this, count_}; }

  private:
    std::size_t count_ = 0;
    std::function<Item(std::size_t)> make_;
};

// The vocabularies that a layout for `kind` may draw on, innermost first. `grouped` adds the facts of a card that holds
// several dyes (`card.dyes` is then the list, and `dye.…` stands only inside it).
std::vector<const Vocabulary*> vocabularies(ItemKind kind, bool grouped);

// The items in the order in which they print: dyes by line as first recorded and by hue within it, jars and lots as
// recorded, skeins by number with spoilt ones left out. A selector that names nothing is an error with the nearest
// name. The records must outlive the items.
Items make_items(const Records& records, ItemKind kind, const std::optional<Grouping>& grouping,
                 const Selection& selection, const Printing& printing, Diagnostics& diagnostics);

} // namespace dyeleaf
