#include "design/read_template.h"

#include "base/words.h"
#include "source/values.h"

#include <string_view>

namespace dyeleaf {

namespace {

class Scanner {
  public:
    Scanner(const Node& node, std::string text, const BoxContext& context)
        : node_(node), text_(std::move(text)), context_(context) {}

    Template scan() {
        while (at_ < text_.size()) {
            const std::string_view rest = std::string_view{text_}.substr(at_);
            if (rest.starts_with("{{") || rest.starts_with("}}")) {
                literal_ += rest.front();
                at_ += 2;
            } else if (rest.front() == '{') {
                scan_hole(rest);
            } else if (rest.front() == '}') {
                complain("a } without its {", "write }} to print a brace");
                ++at_;
            } else {
                literal_ += rest.front();
                ++at_;
            }
        }
        flush();
        return std::move(result_);
    }

  private:
    void scan_hole(std::string_view rest) {
        const auto end = rest.find('}');
        if (end == std::string_view::npos) {
            complain("a { without its }", "write the fact's name and then }, or {{ to print a brace");
            at_ = text_.size();
            return;
        }
        flush();
        const std::string name{trimmed(rest.substr(1, end - 1))};
        Spot spot = here();
        spot.length = static_cast<int>(end) + 1;
        if (find_fact(name, spot, {FactKind::text}, context_) != nullptr) result_.pieces.push_back({true, name});
        at_ += end + 1;
    }

    void flush() {
        if (!literal_.empty()) result_.pieces.push_back({false, literal_});
        literal_.clear();
    }

    // Exact for a text on one line without escapes, which is how layouts are written.
    [[nodiscard]] Spot here() const {
        Spot spot = node_.spot;
        spot.column += code_points(std::string_view{text_}.substr(0, at_)) + (node_.quoted ? 1 : 0);
        spot.length = 1;
        return spot;
    }

    void complain(const std::string& message, const std::string& help) {
        context_.styles.diagnostics.error(here(), message, help);
    }

    const Node& node_;
    std::string text_;
    const BoxContext& context_;
    std::size_t at_ = 0;
    std::string literal_;
    Template result_;
};

} // namespace

Template read_template(const Node& node, const BoxContext& context) {
    if (node.kind == Node::Kind::map) {
        context.styles.diagnostics.error(node.spot, "a text that starts with { must stand in quotes",
                                         R"(write it as "{dye.name}")");
        return {};
    }
    const auto text = read_text(node, "text", context.styles.diagnostics);
    if (!text) return {};
    Template result = Scanner{node, *text, context}.scan();
    result.spot = node.spot;
    return result;
}

} // namespace dyeleaf
