#include "source/document.h"

#include "base/words.h"
#include "source/check_text.h"
#include "source/explain.h"

#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/exceptions.h>
#include <yaml-cpp/parser.h>

#include <istream>
#include <map>
#include <streambuf>
#include <string_view>
#include <utility>

namespace dyeleaf {

namespace {

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

// Builds the tree from the reader's events.
class Builder : public YAML::EventHandler {
  public:
    Builder(std::shared_ptr<const SourceFile> file, const DocumentLimits& limits, Diagnostics& diagnostics)
        : file_(std::move(file)), places_(file_), limits_(limits), diagnostics_(diagnostics) {}

    std::optional<Node> take() { return std::move(root_); }

    void OnDocumentStart(const YAML::Mark& /*mark*/) override {}
    void OnDocumentEnd() override {}

    void OnNull(const YAML::Mark& mark, YAML::anchor_t anchor) override {
        Node node;
        node.spot = spot(mark);
        // A colour may be called Null; only nothing at all and ~ mean nothing.
        const std::string_view text = without_mark(file_->text).substr(static_cast<std::size_t>(std::max(mark.pos, 0)));
        const std::string_view word = text.substr(0, 4);
        if (lower_case(word) == "null") {
            node.kind = Node::Kind::scalar;
            node.text = word;
            node.spot.length = 4;
        }
        finish(std::move(node), 1, anchor);
    }

    void OnAlias(const YAML::Mark& mark, YAML::anchor_t anchor) override {
        const auto known = anchored_.find(anchor);
        if (known == anchored_.end()) refuse(spot(mark), "this refers back to a place that it stands in itself", "");
        count(known->second.nodes, spot(mark));
        finish(Node{known->second.node}, known->second.nodes, YAML::NullAnchor);
    }

    void OnScalar(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                  const std::string& value) override {
        Node node;
        node.kind = Node::Kind::scalar;
        node.spot = spot(mark);
        node.quoted = tag == "!";
        node.spot.length = std::max(1, code_points(value) + (node.quoted ? 2 : 0));
        if (value.size() > limits_.scalar_bytes) {
            refuse(node.spot, "a single text of " + std::to_string(value.size() >> 10U) + " KiB",
                   "a quotation mark that is never closed may have swallowed what follows");
        }
        node.text = value;
        finish(std::move(node), 1, anchor);
    }

    void OnSequenceStart(const YAML::Mark& mark, const std::string& /*tag*/, YAML::anchor_t anchor,
                         YAML::EmitterStyle::value /*style*/) override {
        open(Node::Kind::list, mark, anchor);
    }
    void OnSequenceEnd() override { close(); }
    void OnMapStart(const YAML::Mark& mark, const std::string& /*tag*/, YAML::anchor_t anchor,
                    YAML::EmitterStyle::value /*style*/) override {
        open(Node::Kind::map, mark, anchor);
    }
    void OnMapEnd() override { close(); }

  private:
    struct Open {
        Node node;
        std::size_t nodes = 1; // with everything inside
        YAML::anchor_t anchor = YAML::NullAnchor;
        std::optional<Entry> key;         // read, its value not yet
        std::map<std::string, int> lines; // of the keys seen
    };
    struct Anchored {
        Node node;
        std::size_t nodes = 1;
    };

    [[nodiscard]] Spot spot(const YAML::Mark& mark) { return places_.at(mark.line, mark.column); }

    [[noreturn]] void refuse(const Spot& at, const std::string& message, const std::string& help) {
        diagnostics_.error(at, message, help);
        throw Refused{};
    }

    void count(std::size_t nodes, const Spot& at) {
        if (nodes > limits_.nodes - seen_) refuse(at, "there is too much in this file to be records", "split it");
        seen_ += nodes;
    }

    void open(Node::Kind kind, const YAML::Mark& mark, YAML::anchor_t anchor) {
        if (open_.size() >= limits_.depth) {
            refuse(spot(mark), "this is nested too deeply", "records need no more than a few levels");
        }
        count(1, spot(mark));
        Open one;
        one.node.kind = kind;
        one.node.spot = spot(mark);
        one.anchor = anchor;
        open_.push_back(std::move(one));
    }

    void close() {
        Open one = std::move(open_.back());
        open_.pop_back();
        place(std::move(one.node), one.nodes, one.anchor);
    }

    void finish(Node node, std::size_t nodes, YAML::anchor_t anchor) {
        if (nodes == 1) count(1, node.spot);
        place(std::move(node), nodes, anchor);
    }

    void place(Node node, std::size_t nodes, YAML::anchor_t anchor) {
        if (anchor != YAML::NullAnchor) anchored_[anchor] = {node, nodes};
        if (open_.empty()) {
            root_ = std::move(node);
            return;
        }
        Open& parent = open_.back();
        parent.nodes += nodes;
        if (parent.node.kind == Node::Kind::list) {
            parent.node.items.push_back(std::move(node));
        } else if (!parent.key) {
            take_key(parent, node);
        } else {
            add_entry(parent, std::move(node));
        }
    }

    void take_key(Open& parent, const Node& node) {
        Entry entry;
        entry.key_spot = node.spot;
        entry.key = node.text;
        if (node.kind != Node::Kind::scalar) {
            diagnostics_.error(node.spot, "a key is a word or a few, followed by a colon",
                               R"(a text that starts with { or [ needs quotes, like "{dye.name}")");
        }
        parent.key = std::move(entry);
    }

    void add_entry(Open& parent, Node value) {
        Entry entry = std::move(*parent.key);
        parent.key.reset();
        const auto [known, is_new] = parent.lines.emplace(entry.key, entry.key_spot.line);
        if (!is_new) {
            diagnostics_.error(entry.key_spot, in_quotes(shortened(entry.key, 40)) + " stands here a second time",
                               "the first stands on line " + std::to_string(known->second) + "; keep one of the two");
            return;
        }
        entry.value.push_back(std::move(value));
        parent.node.entries.push_back(std::move(entry));
    }

    std::shared_ptr<const SourceFile> file_;
    Places places_;
    const DocumentLimits& limits_;
    Diagnostics& diagnostics_;
    std::vector<Open> open_;
    std::map<YAML::anchor_t, Anchored> anchored_;
    std::optional<Node> root_;
    std::size_t seen_ = 0;
};

// Where a second document starts, if one does. A closing `...` and a bare `---` at the end are none.
void refuse_second_document(YAML::Parser& parser, const std::shared_ptr<const SourceFile>& file,
                            Diagnostics& diagnostics) {
    class Watcher : public YAML::EventHandler {
      public:
        std::optional<YAML::Mark> found;
        void OnDocumentStart(const YAML::Mark&) override {}
        void OnDocumentEnd() override {}
        void OnNull(const YAML::Mark&, YAML::anchor_t) override {}
        void OnAlias(const YAML::Mark& mark, YAML::anchor_t) override { note(mark); }
        void OnScalar(const YAML::Mark& mark, const std::string&, YAML::anchor_t, const std::string&) override {
            note(mark);
        }
        void OnSequenceStart(const YAML::Mark& mark, const std::string&, YAML::anchor_t,
                             YAML::EmitterStyle::value) override {
            note(mark);
        }
        void OnSequenceEnd() override {}
        void OnMapStart(const YAML::Mark& mark, const std::string&, YAML::anchor_t,
                        YAML::EmitterStyle::value) override {
            note(mark);
        }
        void OnMapEnd() override {}

      private:
        void note(const YAML::Mark& mark) {
            found = mark;
            throw Refused{};
        }
    } watcher;
    try {
        while (!watcher.found && parser.HandleNextDocument(watcher)) {
        }
    } catch (const Refused&) {
        diagnostics.error(Places{file}.at(watcher.found->line, watcher.found->column),
                          "a line of three dashes starts something new here",
                          "take the --- out, or make it a file of its own");
    }
}

} // namespace

std::optional<Node> parse_document(std::shared_ptr<const SourceFile> file, Diagnostics& diagnostics,
                                   const DocumentLimits& limits) {
    if (file->text.size() > limits.bytes) {
        diagnostics.error({file, 0, 0, 1}, "the file is too large", "split it");
        return std::nullopt;
    }
    if (!is_sound_text(file, diagnostics)) return std::nullopt;
    Builder builder{file, limits, diagnostics};
    try {
        TextBuffer buffer{without_mark(file->text)};
        std::istream stream{&buffer};
        YAML::Parser parser{stream};
        parser.HandleNextDocument(builder);
        refuse_second_document(parser, file, diagnostics);
    } catch (const YAML::Exception& exception) {
        const Explanation said = explain(exception.msg);
        diagnostics.error(Places{file}.at(exception.mark.line, exception.mark.column), said.message, said.help);
        return std::nullopt;
    } catch (const Refused&) {
        return std::nullopt;
    }
    auto root = builder.take();
    if (!root || root->kind == Node::Kind::nothing) {
        diagnostics.error({file, 0, 0, 1}, "the file is empty", "write records into it, or take it away");
        return std::nullopt;
    }
    return root;
}

} // namespace dyeleaf
