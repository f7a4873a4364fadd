#include "source/document.h"

#include "base/controls.h"
#include "base/words.h"
#include "source/check_text.h"
#include "source/explain.h"
#include "source/lines.h"
#include "source/places.h"
#include "source/written_value.h"

#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/exceptions.h>
#include <yaml-cpp/parser.h>

#include <algorithm>
#include <array>
#include <istream>
#include <map>
#include <streambuf>
#include <string_view>
#include <utility>

namespace dyeleaf {

namespace {

const Node::Inside& inside_of(const Node& node) {
    static const Node::Inside none;
    return node.inside ? *node.inside : none;
}

// Thrown to leave the YAML reader in the middle of a file that is refused.
struct Refused {};

// Reads a text in place.
class TextBuffer : public std::streambuf {
  public:
    explicit TextBuffer(std::string_view text) {
        // The stream only reads; its interface was made before const.
        char* start = const_cast<char*>(text.data());
        setg(start, start, start + text.size());
    }
};

// How a scalar stands in the file.
struct Written {
    std::size_t begin = 0;
    std::size_t end = 0; // behind its closing quotation mark; of a text of several lines, of its first
    char mark = 0;       // what it begins with, where that means something: " ' | >
    bool closed = true;
    bool several_lines = false;
};

// A tag or an anchor before the value is stepped over.
std::size_t after_properties(std::string_view text, std::size_t at) {
    while (at < text.size() && (text[at] == '&' || text[at] == '!')) {
        at = std::min(text.find_first_of(" \t\r\n", at), text.size());
        at = std::min(text.find_first_not_of(" \t\r\n", at), text.size());
    }
    return at;
}

// The reader takes an unclosed quotation mark at the end of a file for a closed one, so this looks for itself.
Written find_quoted(std::string_view text, Written written) {
    const std::size_t mark = closing_mark(text, written.begin);
    written.closed = mark != std::string_view::npos;
    if (!written.closed) return written;
    written.end = mark + 1;
    const std::string_view inside = text.substr(written.begin, mark - written.begin);
    written.several_lines = inside.find('\n') != std::string_view::npos;
    return written;
}

Written find_written(std::string_view text, std::size_t offset, std::string_view value) {
    Written written;
    written.begin = after_properties(text, std::min(offset, text.size()));
    const std::string_view rest = text.substr(written.begin);
    if (rest.starts_with(value) && !value.empty()) {
        written.end = written.begin + value.size();
        return written;
    }
    const std::string_view line = rest.substr(0, rest.find('\n'));
    written.end = written.begin + trimmed(line).size();
    written.several_lines = true;
    if (!rest.empty() && std::string_view{"\"'|>"}.find(rest.front()) != std::string_view::npos)
        written.mark = rest.front();
    return is_quotation_mark(written.mark) ? find_quoted(text, written) : written;
}

bool says_nothing(std::string_view text) {
    constexpr std::array words = {"~", "null", "Null", "NULL"};
    return std::ranges::any_of(words, [&](std::string_view word) { return first_word(text) == word; });
}

// Builds the tree from the reader's events.
class Builder : public YAML::EventHandler {
  public:
    Builder(Places& places, KnownKeys keys, const DocumentLimits& limits, Diagnostics& diagnostics)
        : places_(places), text_(places.text()), keys_(keys), limits_(limits), diagnostics_(diagnostics) {}

    // Nothing where the file holds nothing.
    std::optional<Node> take() {
        refuse_unused_anchors();
        for (Diagnostic& warning : warnings_)
            diagnostics_.add(std::move(warning));
        return std::move(root_);
    }

    void OnDocumentStart(const YAML::Mark& mark) override {
        if (!started_) {
            started_ = true;
            return;
        }
        if (text_.substr(offset_of(mark)).starts_with("---")) {
            refuse(offset_of(mark), "three dashes begin a second document here",
                   "take the line out, or make what follows a file of its own");
        }
        complain(about_second_root(text_, offset_of(mark), keys_));
        throw Refused{};
    }
    void OnDocumentEnd() override {}

    void OnNull(const YAML::Mark& mark, YAML::anchor_t anchor) override {
        const std::size_t offset = offset_of(mark);
        const bool explicitly = says_nothing(text_.substr(offset));
        Node node;
        node.spot = places_.at(offset);
        if (open_.empty()) {
            refuse_odd_start(offset);
        } else if (open_.back().key) {
            Open& parent = open_.back();
            if (!explicitly) node.spot = parent.key->key_spot; // the reader's mark is at what comes next
            if (!has_colon(parent) || is_remark(parent) || (anchor != YAML::NullAnchor && is_ampersand(parent))) {
                parent.node.insides().refused.push_back(parent.key->key); // its complaint has been made
                parent.key.reset();
                return;
            }
        }
        finish(std::move(node), 1, offset, anchor);
    }

    void OnAlias(const YAML::Mark& mark, YAML::anchor_t anchor) override {
        const auto known = anchored_.find(anchor);
        if (known == anchored_.end())
            refuse(offset_of(mark), "this refers back to a place that it stands in itself", "write it out");
        known->second.used = true;
        if (open_.size() + known->second.depth > limits_.depth) refuse_depth(offset_of(mark));
        finish(Node{known->second.node}, known->second.nodes, offset_of(mark), YAML::NullAnchor);
    }

    void OnScalar(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                  const std::string& value) override {
        refuse_tag(mark, tag);
        const Written written = find_written(text_, offset_of(mark), value);
        if (!written.closed) refuse_unclosed(written);
        Node node;
        node.kind = Node::Kind::scalar;
        node.spot = places_.at(written.begin, written.end - written.begin);
        node.quoted = is_quotation_mark(written.mark);
        node.text = value;
        check_scalar(node, written);
        const bool is_key = !open_.empty() && open_.back().node.kind == Node::Kind::map && !open_.back().key;
        if (is_key)
            open_.back().key_end = written.end;
        else
            warn_of_remark(written);
        finish(std::move(node), 1, offset_of(mark), anchor);
    }

    void OnSequenceStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                         YAML::EmitterStyle::value style) override {
        refuse_tag(mark, tag);
        open(Node::Kind::list, mark, anchor, style);
    }
    void OnSequenceEnd() override { close(); }
    void OnMapStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                    YAML::EmitterStyle::value style) override {
        refuse_tag(mark, tag);
        open(Node::Kind::map, mark, anchor, style);
    }
    void OnMapEnd() override { close(); }

  private:
    struct Open {
        Node node;
        std::size_t offset = 0;
        bool in_brackets = false;
        std::size_t nodes = 1; // with everything inside
        std::size_t depth = 1;
        YAML::anchor_t anchor = YAML::NullAnchor;
        std::optional<Entry> key;         // read, its value not yet
        std::size_t key_end = 0;          // where it ends in the text
        std::map<std::string, int> lines; // of the keys seen
        bool second_record = false;       // for want of a dash, its keys come a second time
    };
    struct Anchored {
        Node node;
        std::size_t nodes = 1;
        std::size_t depth = 0;
        std::size_t offset = 0; // of the & before it
        bool in_brackets = false;
        bool used = false;
    };

    [[nodiscard]] std::size_t offset_of(const YAML::Mark& mark) const {
        return std::min(static_cast<std::size_t>(std::max(mark.pos, 0)), text_.size());
    }

    [[noreturn]] void refuse(std::size_t offset, const std::string& message, const std::string& help) {
        diagnostics_.error(places_.at(offset), message, help);
        throw Refused{};
    }

    void complain(const Explanation& why) {
        diagnostics_.error(places_.at(why.offset, why.bytes), why.message, why.help);
    }

    // A warning about a file that cannot be read would only distract.
    void warn(const Spot& spot, const std::string& message, const std::string& help) {
        warnings_.push_back({Severity::warning, spot, message, help});
    }

    [[nodiscard]] bool in_brackets() const { return !open_.empty() && open_.back().in_brackets; }

    [[noreturn]] void refuse_depth(std::size_t offset) {
        refuse(offset, "lists and keys stand inside one another too deeply here",
               "records need no more than a few levels");
    }

    // A file that holds nothing is empty; one that begins with a stray comma also looks like nothing to the reader.
    void refuse_odd_start(std::size_t offset) {
        const std::string_view rest = text_.substr(offset);
        if (rest.empty() || says_nothing(rest) || rest.starts_with("---") || rest.starts_with("...") ||
            rest.starts_with('&'))
            return;
        refuse(offset, "this cannot be read", "a file begins with a key and a colon, such as “dyes:”");
    }

    void refuse_tag(const YAML::Mark& mark, const std::string& tag) {
        if (tag.empty() || tag == "?" || (tag == "!" && !text_.substr(offset_of(mark)).starts_with('!'))) return;
        const std::size_t at = std::min(text_.find('!', offset_of(mark)), text_.size());
        complain(about_first_character(text_, at, in_brackets()));
        throw Refused{};
    }

    [[noreturn]] void refuse_unclosed(const Written& written) {
        const WrittenValue value = value_at(text_, written.begin, in_brackets());
        const auto quoted = in_yaml_quotes(shortened(value.text, 40));
        const bool apostrophe = written.mark == '\'' && quoted;
        refuse(written.begin, "this quotation mark is never closed",
               apostrophe ? "close it at the end of its text; a text that begins with an apostrophe needs the other "
                            "marks: " +
                                *quoted
                          : how_to_close(value));
    }

    void check_scalar(const Node& node, const Written& written) {
        if (node.text.size() > limits_.scalar_bytes) {
            refuse(written.begin, "a single text of " + std::to_string(node.text.size() >> 10U) + " KiB",
                   "a quotation mark that is never closed may have swallowed what follows");
        }
        if (find_control(node.text)) {
            diagnostics_.error(node.spot, "this text has an invisible control character in it",
                               "a backslash has made it: use 'single quotes' to keep backslashes as they are");
        }
        if (!node.quoted || !written.several_lines) return;
        const std::string_view inside = text_.substr(written.begin, written.end - written.begin);
        if (inside.find(": ", inside.find('\n')) == std::string_view::npos) return;
        warn(node.spot, "this text in quotes runs on over lines that look like keys",
             "if it should end on this line, close the quotation mark here");
    }

    // "Blue #4" without quotes is "Blue" to the reader.
    void warn_of_remark(const Written& written) {
        if (written.mark != 0 || written.several_lines) return;
        const std::size_t at = std::min(text_.find_first_not_of(' ', written.end), text_.size());
        const std::string_view remark = first_word(text_.substr(at));
        if (at == written.end || remark.size() < 2 || remark[0] != '#' || remark[1] == '#') return;
        warn(places_.at(at, remark.size()), in_quotes(shortened(remark, 40)) + " is taken for a remark and left out",
             "if it belongs to the text, put all of it in quotes; if it is a remark, leave a space after the #");
    }

    // `name Sloe` and `name:Sloe` are keys without a value to the reader.
    bool has_colon(Open& parent) {
        const std::size_t at = std::min(text_.find_first_not_of(" \t", parent.key_end), text_.size());
        if (text_.substr(at).starts_with(':')) return true;
        const Spot& spot = parent.key->key_spot;
        const std::string& key = parent.key->key;
        if (const auto number = split_number(parent)) {
            diagnostics_.error(spot, "the comma before " + in_quotes(shortened(key, 40)) + " parts two entries",
                               "write a decimal point: " + *number);
            parent.node.insides().refused.push_back(parent.node.entries().back().key);
            parent.node.insides().entries.pop_back();
            return false;
        }
        const Explanation why = about_words_without_colon(key, 0, keys_);
        diagnostics_.error(spot, why.message,
                           !why.help.empty()    ? why.help
                           : parent.in_brackets ? "in { } stand keys with a colon, as in {name: Sloe}; a list goes "
                                                  "in [ ], and a text that begins with { in quotes"
                                                : "after a key come a colon and a space, as in name: Sloe");
        return false;
    }

    // `{holds: 3,5 mL}` is a 3 and a key `5 mL` to the reader: the number as it was meant.
    [[nodiscard]] std::optional<std::string> split_number(const Open& parent) const {
        const std::string& key = parent.key->key;
        const std::size_t begin = parent.key_end - std::min(parent.key_end, key.size());
        const std::string_view before = text_.substr(0, begin);
        const auto is_digit = [](char c) { return c >= '0' && c <= '9'; };
        if (!parent.in_brackets || key.empty() || !is_digit(key.front()) || !before.ends_with(',')) return std::nullopt;
        if (parent.node.entries().empty()) return std::nullopt;
        const std::string& whole = parent.node.entries().back().value.text;
        if (whole.empty() || !std::ranges::all_of(whole, is_digit)) return std::nullopt;
        return whole + "." + shortened(key, 40);
    }

    // `colour: #8d7fa8` is a key and a remark.
    bool is_remark(const Open& parent) {
        const std::size_t colon = text_.find(':', parent.key_end);
        const std::size_t at = std::min(text_.find_first_not_of(" \t", colon + 1), text_.size());
        const std::string_view value = first_word(text_.substr(at));
        if (value.size() < 2 || value[0] != '#' || value[1] == '#') return false;
        if (parent.in_brackets) {
            complain(about_remark(text_, at));
            return true;
        }
        diagnostics_.error(places_.at(at, value.size()),
                           "nothing stands after " + in_quotes(parent.key->key) + ": what follows # is a remark",
                           "put it in quotes: " + parent.key->key + ": " +
                               in_yaml_quotes(shortened(value, 40)).value_or("\"#…\""));
        return true;
    }

    // `colourway: &Red` is a key and a name for its missing value.
    bool is_ampersand(const Open& parent) {
        const std::size_t at = text_.find('&', parent.key_end);
        if (at == std::string_view::npos) return false;
        complain(about_first_character(text_, at, parent.in_brackets));
        return true;
    }

    void refuse_unused_anchors() {
        for (const auto& [anchor, one] : anchored_) {
            if (!one.used && one.depth == 0) complain(about_first_character(text_, one.offset, one.in_brackets));
        }
    }

    void count(std::size_t nodes, const Spot& at) {
        if (nodes > limits_.nodes - seen_) {
            diagnostics_.error(at, "there is too much in this file to be records", "split it");
            throw Refused{};
        }
        seen_ += nodes;
    }

    void open(Node::Kind kind, const YAML::Mark& mark, YAML::anchor_t anchor, YAML::EmitterStyle::value style) {
        if (open_.size() >= limits_.depth) refuse_depth(offset_of(mark));
        Open one;
        one.offset = after_properties(text_, offset_of(mark));
        one.in_brackets = style == YAML::EmitterStyle::Flow;
        one.node.kind = kind;
        one.node.spot = places_.at(one.offset);
        one.anchor = anchor;
        count(1, one.node.spot);
        open_.push_back(std::move(one));
    }

    void close() {
        Open one = std::move(open_.back());
        open_.pop_back();
        place(std::move(one.node), one.nodes, one.depth, one.offset, one.anchor);
    }

    // A scalar, nothing, or the copy that an alias asks for.
    void finish(Node node, std::size_t nodes, std::size_t offset, YAML::anchor_t anchor) {
        count(nodes, node.spot);
        place(std::move(node), nodes, 0, offset, anchor);
    }

    void place(Node node, std::size_t nodes, std::size_t depth, std::size_t offset, YAML::anchor_t anchor) {
        if (anchor != YAML::NullAnchor) anchored_[anchor] = {node, nodes, depth, offset, in_brackets(), false};
        if (open_.empty()) {
            root_ = std::move(node);
            return;
        }
        Open& parent = open_.back();
        parent.nodes += nodes;
        parent.depth = std::max(parent.depth, depth + 1);
        if (parent.node.kind == Node::Kind::list) {
            parent.node.insides().items.push_back(std::move(node));
        } else if (!parent.key) {
            take_key(parent, node);
        } else {
            add_entry(parent, std::move(node));
        }
    }

    void take_key(Open& parent, const Node& node) {
        if (node.kind == Node::Kind::nothing) {
            diagnostics_.error(node.spot, "a key is missing here", "write a word before the colon, as in name: Sloe");
            throw Refused{};
        }
        if (node.kind != Node::Kind::scalar) {
            diagnostics_.error(node.spot, "a key is a word or a few, followed by a colon",
                               R"(a text that starts with { or [ needs quotes, like "{dye.name}")");
            throw Refused{};
        }
        refuse_dash(node);
        Entry entry;
        entry.key_spot = node.spot;
        entry.key = node.text;
        parent.key = std::move(entry);
    }

    // `-id: sloe`, and the long dashes that word processors make of short ones.
    void refuse_dash(const Node& key) {
        if (key.quoted) return;
        constexpr std::array long_dashes = {"\u2013", "\u2014", "\u2212"};
        for (const std::string_view dash : long_dashes) {
            if (!key.text.starts_with(dash)) continue;
            diagnostics_.error(key.spot, "a long dash begins this line", "type the short dash of the keyboard, “-”");
            throw Refused{};
        }
        if (!key.text.starts_with('-') || key.text.size() < 2) return;
        diagnostics_.error(key.spot, "a space is missing after the dash",
                           "write - " + shortened(key.text.substr(1), 40) + ":");
        throw Refused{};
    }

    void add_entry(Open& parent, Node value) {
        Entry entry = std::move(*parent.key);
        parent.key.reset();
        const auto [known, is_new] = parent.lines.emplace(entry.key, entry.key_spot.line);
        if (!is_new) {
            const bool begins_record = entry.key == "id" && value.kind == Node::Kind::scalar;
            std::string help = "the first stands on line " + std::to_string(known->second);
            help += begins_record
                        ? "; if another record begins here, write a dash before it: - id: " + shortened(value.text, 40)
                        : "; keep one of the two";
            if (!parent.second_record)
                diagnostics_.error(entry.key_spot, in_quotes(shortened(entry.key, 40)) + " stands here a second time",
                                   help);
            parent.second_record = parent.second_record || begins_record;
            parent.node.insides().refused.push_back(entry.key);
            return;
        }
        entry.value = std::move(value);
        parent.node.insides().entries.push_back(std::move(entry));
    }

    Places& places_;
    std::string_view text_;
    KnownKeys keys_;
    const DocumentLimits& limits_;
    Diagnostics& diagnostics_;
    std::vector<Diagnostic> warnings_;
    std::vector<Open> open_;
    std::map<YAML::anchor_t, Anchored> anchored_;
    std::optional<Node> root_;
    std::size_t seen_ = 0;
    bool started_ = false;
};

// Whether the reader came to the end.
bool build(Builder& builder, Places& places, KnownKeys keys, Diagnostics& diagnostics) {
    try {
        TextBuffer buffer{places.text()};
        std::istream stream{&buffer};
        YAML::Parser parser{stream};
        // A second document is one too many, and the builder says so.
        if (parser.HandleNextDocument(builder)) parser.HandleNextDocument(builder);
        return true;
    } catch (const YAML::Exception& exception) {
        const auto offset = static_cast<std::size_t>(std::max(exception.mark.pos, 0));
        const Explanation why = explain(places.text(), {exception.msg, std::min(offset, places.text().size())}, keys);
        diagnostics.error(places.at(why.offset, why.bytes), why.message, why.help);
    } catch (const Refused&) {
        // The builder has complained.
    }
    return false;
}

} // namespace

const std::vector<Node>& Node::items() const {
    return inside_of(*this).items;
}
const std::vector<Entry>& Node::entries() const {
    return inside_of(*this).entries;
}
const std::vector<std::string>& Node::refused() const {
    return inside_of(*this).refused;
}
Node::Inside& Node::insides() {
    if (!inside) inside = Inside{};
    return *inside;
}

std::optional<Node> parse_document(std::shared_ptr<const SourceFile> file, Diagnostics& diagnostics,
                                   std::span<const std::string_view> keys, const DocumentLimits& limits) {
    if (file->text.size() > limits.bytes) {
        diagnostics.error({file, 0, 0, 1}, "the file is larger than " + std::to_string(limits.bytes >> 20U) + " MiB",
                          "records are small texts: split it, or take out what does not belong");
        return std::nullopt;
    }
    Places places{file};
    if (!is_sound_text(places, limits, diagnostics)) return std::nullopt;
    Builder builder{places, keys, limits, diagnostics};
    if (!build(builder, places, keys, diagnostics)) return std::nullopt;
    auto root = builder.take();
    if (root && root->kind != Node::Kind::nothing) return root;
    diagnostics.error(places.nowhere(), "the file is empty", "write something into it, or take it away");
    return std::nullopt;
}

} // namespace dyeleaf
