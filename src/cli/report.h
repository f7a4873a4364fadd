// How things are said in the terminal.
#pragma once

#include "base/diagnostic.h"

#include <chrono>
#include <iosfwd>
#include <string>
#include <vector>

namespace dyeleaf {

// Every complaint in order of its place, as text. Labels of which the same is to be said at the same place share one:
// "“26-117:1”, “26-117:2” and 3 more: the text …".
std::string describe_all(const Diagnostics& diagnostics);
// "2 errors, 1 warning", counted as they are told; "no problems" where there are none.
std::string count_problems(const Diagnostics& diagnostics);

// Rows of cells as columns, two spaces apart, each line indented by two; characters count, not bytes.
std::string table(std::vector<std::vector<std::string>> rows);

// A folder or file as it must be typed in a command: in quotation marks where it holds spaces.
std::string as_typed(const std::string& name);

// One line that is written over again and again while work takes longer than a second, and is gone in the end. Only
// for terminals: otherwise it says nothing.
class ProgressLine {
  public:
    ProgressLine(std::ostream& stream, bool is_terminal) : stream_(&stream), is_terminal_(is_terminal) {}
    ~ProgressLine();
    ProgressLine(const ProgressLine&) = delete;
    ProgressLine& operator=(const ProgressLine&) = delete;

    void show(const std::string& text);

  private:
    using Clock = std::chrono::steady_clock;
    std::ostream* stream_;
    bool is_terminal_;
    bool shown_ = false;
    Clock::time_point next_ = Clock::now() + std::chrono::seconds{1};
};

} // namespace dyeleaf
