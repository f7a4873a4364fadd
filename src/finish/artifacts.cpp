#include "finish/artifacts.h"

#include <algorithm>
#include <array>
#include <memory>
#include <string_view>

namespace dyeleaf {

namespace {

// Operators that begin something which leaves ink: a path, a text, a drawing, a picture, a shading.
constexpr std::array<std::string_view, 6> inking = {"m", "re", "BT", "Do", "BI", "sh"};

// Copies a content stream, holding each operator's operands back until it is known what it does.
class ArtifactMarker : public PdfObject::TokenFilter {
  public:
    void handleToken(QPDFTokenizer::Token const& token) override {
        held_ += token.getRawValue();
        if (token.getType() != QPDFTokenizer::tt_word) return;
        before(token.getValue());
        write(held_);
        held_.clear();
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
            --depth_;
        } else if (depth_ == 0 && !open_ && std::ranges::find(inking, word) != inking.end()) {
            write("\n/Artifact BMC");
            open_ = true;
        }
    }

    std::string held_;
    int depth_ = 0;
    bool open_ = false; // an artifact
};

} // namespace

void mark_artifacts(PdfObject page) {
    QPDFObjectHandle contents = page.getKey("/Contents");
    contents.addTokenFilter(std::make_shared<ArtifactMarker>());
}

} // namespace dyeleaf
