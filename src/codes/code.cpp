#include "codes/code.h"

#include "base/gtin.h"
#include "base/words.h"
#include "codes/encode.h"

#include <algorithm>
#include <optional>
#include <utility>

namespace dyeleaf {

namespace {

// Bars of one row, from left to right; squares joined into the widest runs, and equal runs of rows below each other
// into one, so that no seam shows between them.
std::vector<DarkModules> joined_modules(const Modules& modules) {
    std::vector<DarkModules> all;
    std::vector<std::size_t> above; // those that end in the row before
    for (int y = 0; y < modules.rows; ++y) {
        std::vector<std::size_t> here;
        for (int x = 0; x < modules.columns; ++x) {
            if (!modules.is_dark(x, y)) continue;
            DarkModules run{x, y, 1, 1};
            while (x + 1 < modules.columns && modules.is_dark(x + 1, y)) {
                ++run.width;
                ++x;
            }
            const auto same = std::ranges::find_if(
                above, [&](std::size_t i) { return all[i].x == run.x && all[i].width == run.width; });
            if (same != above.end()) {
                ++all[*same].height;
                here.push_back(*same);
            } else {
                here.push_back(all.size());
                all.push_back(run);
            }
        }
        above = std::move(here);
    }
    return all;
}

// GS1 General Specifications, 5.2.1 and 5.2.2: the guards at both ends and in the middle reach down, in a UPC-A those
// of its first and last digit with them.
bool is_guard(CodeKind kind, int x) {
    const int end = kind == CodeKind::upc_a ? 10 : 3;
    return x < end || (x >= 45 && x < 50) || x >= 95 - end;
}

std::vector<CodeCaption> captions(CodeKind kind, const std::string& text, int columns) {
    switch (kind) {
    case CodeKind::qr: return {};
    case CodeKind::code_128: return {{text, columns / 2.0}};
    // Digits are seven modules wide: one or two beside the bars, the others below them between the guards.
    case CodeKind::ean_13: return {{text.substr(0, 1), -6}, {text.substr(1, 6), 24}, {text.substr(7), 71}};
    case CodeKind::upc_a:
        return {
            {text.substr(0, 1), -5.5}, {text.substr(1, 5), 27.5}, {text.substr(6, 5), 67.5}, {text.substr(11), 100.5}};
    }
    return {};
}

std::optional<CodeFault> fault_of(CodeKind kind, std::string& text) {
    if (kind == CodeKind::ean_13 || kind == CodeKind::upc_a) {
        auto number = parse_gtin(text, kind == CodeKind::ean_13 ? Gtin::ean_13 : Gtin::upc_a);
        if (const auto* fault = std::get_if<GtinFault>(&number)) return CodeFault{fault->message, fault->help};
        text = std::get<std::string>(std::move(number));
        return std::nullopt;
    }
    if (kind != CodeKind::code_128) return std::nullopt;
    // GS1 General Specifications, 5.4.4.3: 48 characters; a longer one is too wide for a hand-held scanner.
    constexpr int most = 48;
    const auto plain = [](char c) { return c >= ' ' && c <= '~'; };
    if (!std::ranges::all_of(text, plain)) {
        return CodeFault{in_quotes(shortened(text, 40)) + " cannot be a Code 128: that has letters without accents, "
                                                          "digits and plain signs",
                         "write it otherwise, or place it with as: qr"};
    }
    if (code_points(text) > most) {
        return CodeFault{in_quotes(shortened(text, 40)) + " is too long for a Code 128: " +
                             std::to_string(code_points(text)) + " characters, and it takes " + std::to_string(most),
                         "shorten it, or place it with as: qr"};
    }
    return std::nullopt;
}

} // namespace

bool is_linear(CodeKind kind) {
    return kind != CodeKind::qr;
}

// Numbers of clauses, save 5.12.3.1, from memory.
CodeRules code_rules(CodeKind kind) {
    switch (kind) {
    // Quiet zone: ISO/IEC 18004, 9.1. Modules: GS1 General Specifications, 5.12.3.1, for a QR code at a till.
    case CodeKind::qr: return {{4, 4, 4, 4}, mm(0.396), mm(0.495), mm(0.99)};
    // GS1 General Specifications, 5.2.3: 80 % to 200 % of 0.33 mm.
    case CodeKind::ean_13: return {{11, 7, 0, 0}, mm(0.264), mm(0.33), mm(0.66)};
    case CodeKind::upc_a: return {{9, 9, 0, 0}, mm(0.264), mm(0.33), mm(0.66)};
    // Quiet zone: ISO/IEC 15417. Modules from a quarter of a millimetre for a scanner held in the hand: common
    // practice.
    case CodeKind::code_128: return {{10, 10, 0, 0}, mm(0.25), mm(0.33), mm(1.016)};
    }
    return {};
}

std::variant<Code, CodeFault> make_code(CodeKind kind, std::string_view text) {
    std::string content{trimmed(text)};
    if (content.empty())
        return CodeFault{"there is nothing to put into the code", "write a text or a fact after “code”"};
    if (auto fault = fault_of(kind, content)) return std::move(*fault);
    const auto modules = encode(kind, content);
    if (!modules) {
        return CodeFault{in_quotes(shortened(content, 40)) +
                             " is too long for a code to scan: " + std::to_string(code_points(content)) + " characters",
                         "shorten it"};
    }
    Code code{kind, content, modules->columns, modules->rows, joined_modules(*modules), {}};
    if (kind == CodeKind::ean_13 || kind == CodeKind::upc_a) {
        for (DarkModules& bar : code.dark)
            bar.is_guard = is_guard(kind, bar.x);
    }
    code.captions = captions(kind, content, code.columns);
    return code;
}

} // namespace dyeleaf
