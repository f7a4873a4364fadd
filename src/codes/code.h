// Codes to scan as plain values: which modules are dark. A module is the narrowest bar, or one square of a matrix.
#pragma once

#include "base/length.h"

#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace dyeleaf {

enum class CodeKind { qr, ean_13, upc_a, code_128 };

// Bars all as tall as the code, or squares.
bool is_linear(CodeKind kind);

// Modules that stay white around a code.
struct QuietZone {
    int left = 0, right = 0, above = 0, below = 0;
};

// What scanners ask of a kind.
struct CodeRules {
    QuietZone quiet;
    Length least_module;
    Length usual_module; // where nothing else is said
    Length most_module;
};
CodeRules code_rules(CodeKind kind);

// A dark rectangle in modules from the top left one; of a linear code, a bar over its whole height.
struct DarkModules {
    int x = 0, y = 0, width = 1, height = 1;
    bool is_guard = false; // reaches down between the digits
    friend bool operator==(const DarkModules&, const DarkModules&) = default;
};

// What people read below the bars.
struct CodeCaption {
    std::string text;
    double centre = 0; // in modules from the first bar
};

struct Code {
    CodeKind kind = CodeKind::qr;
    std::string text; // as a scanner gives it
    int columns = 0, rows = 0;
    std::vector<DarkModules> dark; // none overlap
    std::vector<CodeCaption> captions;
};

struct CodeFault {
    std::string message; // what is wrong, in the dyer's words
    std::string help;
};

// QR with error correction M or better, the smallest that holds the text; beyond ASCII it says that it is UTF-8. EAN-13
// and UPC-A take their digits with the check digit, Code 128 printable ASCII.
std::variant<Code, CodeFault> make_code(CodeKind kind, std::string_view text);

} // namespace dyeleaf
