// What is wrong, where, and what to write instead. Printing is the command line's business.
#pragma once

#include "base/spot.h"

#include <set>
#include <string>
#include <vector>

namespace dyeleaf {

enum class Severity { error, warning };

struct Diagnostic {
    Severity severity = Severity::error;
    Spot spot;
    std::string message; // what is wrong, in the dyer's words; no full stop
    std::string help;    // what to do about it; may be empty
};

// Every complaint of a run. Errors stop files from being written; warnings do not. All are counted, and the first
// `most` of either kind are kept: nobody reads on, and a file gone wrong can give a hundred thousand.
class Diagnostics {
  public:
    static constexpr int most = 1000;

    void error(Spot spot, std::string message, std::string help = {});
    void warning(Spot spot, std::string message, std::string help = {});
    // The same complaint about the same place is kept once.
    void add(Diagnostic diagnostic);

    [[nodiscard]] int errors() const { return errors_; }
    [[nodiscard]] int warnings() const { return warnings_; }
    // Whether further errors are only counted, so that nobody needs to find out how to help.
    [[nodiscard]] bool is_full() const { return errors_ >= most; }
    // By file, line and column; those without a place first; last, how many more there were.
    [[nodiscard]] std::vector<Diagnostic> sorted() const;

  private:
    std::vector<Diagnostic> kept_;
    std::set<std::string> known_; // what each of them says, and where
    int errors_ = 0;
    int warnings_ = 0;
};

// file:line:column: error: message, the source line, a caret under the place, and the help line.
std::string describe(const Diagnostic& diagnostic);

} // namespace dyeleaf
