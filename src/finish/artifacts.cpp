#include "finish/artifacts.h"

#include <algorithm>
#include <array>
#include <memory>
#include <string_view>
#include <utility>
#include <vector>

namespace dyeleaf {

namespace {

// Operators that begin something which leaves ink: a path, a text, a drawing, a picture, a shading.
constexpr std::array<std::string_view, 6> inking = {"m", "re", "BT", "Do", "BI", "sh"};

// Copies a content stream, holding each operator's operands back until it is known what it does.
class ContentMarker : public PdfObject::TokenFilter {
  public:
    explicit ContentMarker(std::vector<Tag> parts) : parts_(std::move(parts)) {}

    void handleToken(QPDFTokenizer::Token const& token) override {
        held_ += token.getRawValue();
        if (token.getType() != QPDFTokenizer::tt_word) return;
        before(token.getValue());
        write(held_);
        held_.clear();
        if (token.getValue() == "BDC") spell();
    }

    void handleEOF() override {
        write(held_);
        if (open_) write("\nEMC\n");
    }

  private:
    void before(std::string_view word) {
        if (word == "BDC" || word == "BMC") {
            if (open_) write("\nEMC");
            open_ = false;
            ++depth_;
        } else if (word == "EMC") {
            if (std::exchange(spelling_, false)) write("\nEMC");
            --depth_;
        } else if (depth_ == 0 && !open_ && std::ranges::find(inking, word) != inking.end()) {
            write("\n/Artifact BMC");
            open_ = true;
        }
    }

    // Behind the begin of a part.
    void spell() {
        if (begun_ >= parts_.size()) return;
        const Tag& part = parts_[begun_++];
        if (!part.spelled) return;
        write("\n/Span <</ActualText " + pdf_text(part.words).unparse() + ">> BDC");
        spelling_ = true;
    }

    std::vector<Tag> parts_;
    std::size_t begun_ = 0; // parts, so far
    bool spelling_ = false;
    std::string held_;
    int depth_ = 0;
    bool open_ = false; // an artifact
};

} // namespace

void mark_content(PdfObject page, const TaggedPage& tagged) {
    std::vector<Tag> parts;
    for (const TaggedLabel& label : tagged)
        parts.insert(parts.end(), label.parts.begin(), label.parts.end());
    QPDFObjectHandle contents = page.getKey("/Contents");
    contents.addTokenFilter(std::make_shared<ContentMarker>(std::move(parts)));
}

} // namespace dyeleaf
