// Where something was written, so that a complaint can point at it.
#pragma once

#include <memory>
#include <string>

namespace dyeleaf {

// A text file as it was read: the name that complaints print, and the bytes.
struct SourceFile {
    std::string name;
    std::string text;
};

struct Spot {
    std::shared_ptr<const SourceFile> file; // none: the command line, or the folder as a whole
    int line = 0;                           // from 1; 0: the file as a whole
    int column = 0;                         // from 1, in characters (Unicode code points)
    int length = 1;                         // characters to underline
};

template <class T> struct Sourced {
    T value{};
    Spot spot{};
};

} // namespace dyeleaf
