#include "records/read_statement.h"

namespace dyeleaf {

namespace {

// `P280: wear gloves`, with the code where a key belongs.
bool refuse_code_as_key(const Node& node, Diagnostics& diagnostics) {
    if (node.entries().size() != 1) return false;
    const Entry& entry = node.entries().front();
    const bool a_code = std::ranges::any_of(std::string_view{"0123456789"}, [&](char digit) {
        return entry.key.find(digit) != std::string::npos; // no key has a figure
    });
    if (!a_code || entry.value.kind != Node::Kind::scalar) return false;
    diagnostics.error(entry.key_spot, quoted_code(entry.key) + " stands where the word “code” belongs",
                      "write {code: " + shortened(entry.key, 40) + ", says: \"" + shortened(entry.value.text, 60) +
                          "\"}; the code alone prints the published words");
    return true;
}

} // namespace

std::optional<WrittenStatement> read_statement(const Node& node, const std::string& what, const std::string& example,
                                               Diagnostics& diagnostics) {
    if (node.kind != Node::Kind::map) {
        const auto text = read_word(node, what + " code", diagnostics);
        return text ? std::optional{WrittenStatement{*text, {}, node.spot}} : std::nullopt;
    }
    if (refuse_code_as_key(node, diagnostics)) return std::nullopt;
    constexpr int longest = 300;
    Fields fields{node, what, diagnostics};
    const Node* code = fields.need("code", "code: " + example);
    const auto text = code != nullptr ? read_word(*code, "code", diagnostics) : std::nullopt;
    const Node* words = fields.need("says", "says: \"the words of the sheet\"");
    const auto says = words != nullptr ? read_prose(*words, "says", diagnostics, longest) : std::nullopt;
    fields.refuse_the_rest();
    if (!text) return std::nullopt;
    return WrittenStatement{*text, says, code->spot};
}

std::string quoted_code(std::string_view text) {
    constexpr int most = 40;
    return in_quotes(shortened(text, most));
}

std::vector<std::string> split_at(std::string_view text, char mark) {
    std::vector<std::string> parts;
    while (true) {
        const std::size_t end = std::min(text.find(mark), text.size());
        parts.emplace_back(trimmed(text.substr(0, end)));
        if (end == text.size()) return parts;
        text.remove_prefix(end + 1);
    }
}

std::string closed_up(std::string_view code) {
    return joined(split_at(code, '+'), "+");
}

std::string tidied(std::string_view text) {
    std::string code;
    for (const char c : text) {
        if (c == ' ' || c == '-' || c == '.') continue;
        code += c >= 'a' && c <= 'z' ? static_cast<char>(c - 32) : c;
    }
    return code;
}

std::string first_word_tidied(std::string_view text) {
    return tidied(text.substr(0, text.find(' ')));
}

std::vector<std::string> codes_among(std::string_view text, bool (*exists)(std::string_view)) {
    std::vector<std::string> codes;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find_first_of(" ,;./&()[]"), text.size());
        std::string word = tidied(text.substr(0, end));
        if (!word.empty() && exists(word)) codes.push_back(std::move(word));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return codes;
}

std::string write_alone(const std::string& code) {
    return "write " + code + "; for the sheet's own words write {code: " + code + ", says: \"…\"}";
}

bool looks_like_precaution(std::string_view text) {
    return std::ranges::all_of(split_at(text, '+'), [](const std::string& part) {
        const auto is_digit = [](char c) { return c >= '0' && c <= '9'; };
        return part.size() == 4 && (part[0] == 'P' || part[0] == 'p') &&
               std::ranges::all_of(std::string_view{part}.substr(1), is_digit);
    });
}

std::string look_again(std::string_view code, std::span<const std::string_view> known, const std::string& otherwise) {
    std::vector<std::string> near;
    for (const std::string_view one : known) {
        const bool alike =
            code.size() > 3 && one.size() == code.size() && one.starts_with(code.substr(0, code.size() - 1));
        if (alike) near.emplace_back(one);
    }
    return near.empty() ? otherwise : "look at the sheet again; the nearest codes are " + joined(near, ", ");
}

} // namespace dyeleaf
