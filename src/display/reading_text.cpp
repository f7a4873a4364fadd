#include "display/display_list.h"

#include <optional>

namespace dyeleaf {

namespace {

class Reader {
  public:
    void read(const DisplayList& list) {
        for (const DisplayItem& item : list.items)
            std::visit([&](const auto& kind) { hear(kind); }, item);
    }

    std::string text;

  private:
    void hear(const BeginTag& begin) {
        if (begin.tag.joined && text.ends_with('\n')) text.pop_back();
        inside_ = begin.tag.role == Tag::Role::paragraph && !begin.tag.spelled;
        if (inside_ || begin.tag.words.empty()) return;
        text += begin.tag.words + "\n";
    }

    void hear(const EndTag& /*end*/) {
        if (inside_) text += "\n";
        inside_ = false;
        line_.reset();
    }

    void hear(const DrawRun& draw) {
        if (!inside_) return;
        if (line_ && !near(*line_, draw.baseline.y)) text += " ";
        text += draw.run->text;
        line_ = draw.baseline.y;
    }

    void hear(const Group& group) { read(*group.list); }

    template <class Silent> void hear(const Silent& /*item*/) {}

    bool inside_ = false;        // a paragraph
    std::optional<Length> line_; // the baseline of what was read last in it
};

} // namespace

std::string reading_text(const DisplayList& list) {
    Reader reader;
    reader.read(list);
    return reader.text;
}

} // namespace dyeleaf
