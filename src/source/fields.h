// Takes fields out of a map and, at the end, complains about those nobody took.
#pragma once

#include "source/document.h"

#include <string>
#include <string_view>
#include <vector>

namespace dyeleaf {

class Fields {
  public:
    // `what` names the map in complaints: "dye", "cells". A node that is not a map is an error and has no fields.
    Fields(const Node& node, std::string what, Diagnostics& diagnostics);

    // The value under `key`, or null. A key with nothing after it is an error and counts as absent.
    const Node* take(std::string_view key);
    // As take; absent is an error that shows `example`, the line to write.
    const Node* need(std::string_view key, std::string_view example);
    // Lets a key pass unread, whatever stands after it.
    void ignore(std::string_view key);
    // Every key not taken is an error naming the nearest of the keys asked for; where that is a needed one which is
    // absent, this is the only complaint of the two. Call it once, last.
    void refuse_the_rest();

    // Whether the key is written, be it in an entry that was refused when the file was read.
    [[nodiscard]] bool has(std::string_view key) const;
    [[nodiscard]] const Node& node() const { return *node_; }
    [[nodiscard]] const std::string& what() const { return what_; }
    [[nodiscard]] Diagnostics& diagnostics() const { return *diagnostics_; }

  private:
    struct Missing {
        std::string key, example;
    };

    void ask_for(std::string_view key);
    [[nodiscard]] bool is_asked_for(std::string_view key) const;
    [[nodiscard]] bool is_plural() const;
    void complain_of_shape();
    void complain_of_missing(const Missing& missing);

    const Node* node_;
    std::string what_;
    Diagnostics* diagnostics_;
    std::vector<std::string> asked_; // each once
    std::vector<Missing> missing_;   // where another key may be a slip for it
};

} // namespace dyeleaf
