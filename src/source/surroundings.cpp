#include "source/surroundings.h"

#include "base/words.h"
#include "source/lines.h"

#include <algorithm>
#include <vector>

namespace dyeleaf {

namespace {

// "#c0685c}": a closing bracket in it has its opening one before it.
bool takes_a_bracket(std::string_view remark) {
    int open = 0;
    for (const char c : remark) {
        if (c == '[' || c == '{') ++open;
        if (c == ']' || c == '}') --open;
        if (open < 0) return true;
    }
    return false;
}

// Walks over a text from its beginning.
class Walk {
  public:
    explicit Walk(std::string_view text) : text_(text) {}

    Surroundings to(std::size_t offset) {
        while (at_ < offset)
            step();
        Surroundings found;
        for (const Bracket& one : open_) {
            found.bracket = one.offset;
            if (one.remark) found.remark = one.remark;
        }
        if (quote_ && went_too_far(*quote_, offset)) found.quote = quote_->begin;
        return found;
    }

  private:
    struct Bracket {
        std::size_t offset = 0;
        std::optional<std::size_t> remark;
    };
    struct Quote {
        std::size_t begin = 0;
        std::size_t end = 0; // its closing mark, or the end of the text
        bool in_brackets = false;
    };

    void step() {
        const char c = text_[at_];
        const bool behind_blank = at_ == 0 || is_blank(text_[at_ - 1]);
        if (c == '\n') {
            may_begin_ = may_begin_ || open_.empty();
        } else if (is_blank(c)) {
            // nothing changes
        } else if (c == '#' && behind_blank) {
            return remark();
        } else if (may_begin_ && is_quotation_mark(c) && begins_quote()) {
            return quote();
        } else if (may_begin_ && (c == '&' || c == '!')) {
            at_ = std::min(text_.find_first_of(" \n", at_), text_.size());
            return;
        } else if (may_begin_ && open_.empty() && (c == '|' || c == '>')) {
            return block();
        } else if ((c == '[' || c == '{') && (may_begin_ || !open_.empty())) {
            open_.push_back({at_, {}});
            may_begin_ = true;
        } else if ((c == ']' || c == '}') && !open_.empty()) {
            open_.pop_back();
            may_begin_ = false;
        } else {
            const bool before_blank = at_ + 1 >= text_.size() || is_blank(text_[at_ + 1]);
            const bool separates = c == ':' || (c == '-' && may_begin_);
            may_begin_ = (c == ',' && !open_.empty()) || (separates && before_blank);
        }
        ++at_;
    }

    // A mark that begins a line may also stand in a text that runs on.
    [[nodiscard]] bool begins_quote() const {
        const Line line = line_at(text_, at_);
        if (!open_.empty() || line.is_item() || at_ != line.start + line.indent()) return true;
        const std::size_t end = closing_mark(text_, at_);
        return end != nowhere && text_.substr(end + 1).starts_with(':');
    }

    void quote() {
        const std::size_t end = closing_mark(text_, at_);
        quote_ = Quote{at_, std::min(end, text_.size()), !open_.empty()};
        at_ = std::min(quote_->end + 1, text_.size());
        may_begin_ = false;
    }

    void remark() {
        const std::size_t end = std::min(text_.find('\n', at_), text_.size());
        const std::string_view remark = text_.substr(at_, end - at_);
        const bool in_place_of_a_value = may_begin_ && remark.size() > 1 && !is_blank(remark[1]);
        if (!open_.empty() && !open_.back().remark && (in_place_of_a_value || takes_a_bracket(remark)))
            open_.back().remark = at_;
        at_ = end;
    }

    // Steps over the lines of a text that | or > begins: those further in than its key.
    void block() {
        const Line head = line_at(text_, at_);
        const std::size_t key = head.start + head.content() == at_ ? head.indent() : head.content();
        at_ = std::min(text_.find('\n', at_), text_.size());
        while (at_ + 1 < text_.size()) {
            const Line line = line_at(text_, at_ + 1);
            if (!trimmed(line.whole).empty() && line.indent() <= key) return;
            at_ = line.start + line.whole.size();
        }
        at_ = text_.size();
    }

    // Its closing mark is one that was meant to open the next text, or it has swallowed lines that look like keys.
    [[nodiscard]] bool went_too_far(const Quote& one, std::size_t offset) const {
        if (one.end == text_.size()) return true;
        if (offset <= one.end) return false;
        const std::string_view inside = text_.substr(one.begin + 1, one.end - one.begin - 1);
        const std::string_view after = text_.substr(one.end + 1, offset - one.end - 1);
        if (after.find('\n') != nowhere) return false;
        const std::size_t line_end = inside.find('\n');
        if (line_end != nowhere) return one.in_brackets || inside.find(": ", line_end) != nowhere;
        const std::string_view within = trimmed(inside);
        const bool opens_next = !within.empty() && std::string_view{":,[{"}.find(within.back()) != nowhere;
        return one.in_brackets && opens_next && trimmed(after).empty();
    }

    std::string_view text_;
    std::size_t at_ = 0;
    bool may_begin_ = true; // a text here, with a mark that means something
    std::vector<Bracket> open_;
    std::optional<Quote> quote_;
};

} // namespace

Surroundings look_around(std::string_view text, std::size_t offset) {
    return Walk{text}.to(std::min(offset, text.size()));
}

} // namespace dyeleaf
