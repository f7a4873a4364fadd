#include "bench/floor.h"

#include <charconv>
#include <cmath>
#include <fstream>
#include <iterator>
#include <map>
#include <stdexcept>
#include <string_view>
#include <vector>

namespace bench {

namespace {

// The words of one instruction.
class Words {
  public:
    explicit Words(std::string_view line) : rest_(line) {}

    [[nodiscard]] bool none() const { return rest_.empty(); }
    [[nodiscard]] std::string_view rest() const { return rest_; }

    std::string_view next() {
        const auto end = rest_.find(' ');
        const std::string_view word = rest_.substr(0, end);
        rest_.remove_prefix(end == std::string_view::npos ? rest_.size() : end + 1);
        return word;
    }

    double number() {
        double value = 0;
        const auto [end, fault] = std::from_chars(rest_.data(), rest_.data() + rest_.size(), value);
        if (fault != std::errc{}) throw std::runtime_error("no number in the list: " + std::string{rest_});
        rest_.remove_prefix(static_cast<std::size_t>(end - rest_.data()));
        if (!rest_.empty()) rest_.remove_prefix(1);
        return value;
    }

  private:
    std::string_view rest_;
};

class Replay {
  public:
    Replay(const std::string& fonts, const std::string& out, bool tagged)
        : shaper_(fonts), canvas_(out, tagged), context_(canvas_.context()) {}

    void follow(std::string_view list) {
        while (!list.empty()) {
            const auto end = list.find('\n');
            instruction(Words{list.substr(0, end)});
            list.remove_prefix(end == std::string_view::npos ? list.size() : end + 1);
        }
        if (open_) canvas_.end_page();
        canvas_.finish();
    }

  private:
    void instruction(Words words) {
        const std::string_view verb = words.next();
        if (verb == "text") {
            text(words);
        } else if (verb == "fill") {
            colour(words);
            trace(words);
            cairo_fill(context_);
        } else if (verb == "stroke") {
            stroke(words);
        } else if (verb == "begin") {
            if (!recording_) canvas_.begin(words.rest() == "P" ? "P" : "Figure");
        } else if (verb == "end") {
            words.rest() == "form" ? end_form() : canvas_.end(words.rest() == "P" ? "P" : "Figure");
        } else if (verb == "clip") {
            cairo_save(context_);
            trace(words);
            cairo_clip(context_);
        } else if (verb == "unclip") {
            cairo_restore(context_);
            canvas_.forget_colour();
        } else if (verb == "form") {
            begin_form(words);
        } else if (verb == "use") {
            use(words);
        } else if (verb == "page") {
            if (open_) canvas_.end_page();
            open_ = true;
            const double width = words.number();
            canvas_.page(width, words.number());
        } else {
            throw std::runtime_error("no instruction: " + std::string{verb});
        }
    }

    void colour(Words& words) {
        const Colour colour = colour_of(std::string{words.next()});
        recording_ ? cairo_set_source_rgb(context_, colour.red, colour.green, colour.blue) : canvas_.colour(colour);
    }

    void trace(Words& words) {
        cairo_new_path(context_);
        while (!words.none()) {
            const char step = words.next().front();
            if (step == 'z') {
                cairo_close_path(context_);
                continue;
            }
            const double x = words.number();
            const double y = words.number();
            if (step == 'm') {
                cairo_move_to(context_, x, y);
            } else if (step == 'l') {
                cairo_line_to(context_, x, y);
            } else {
                const double x2 = words.number();
                const double y2 = words.number();
                const double x3 = words.number();
                cairo_curve_to(context_, x, y, x2, y2, x3, words.number());
            }
        }
    }

    void stroke(Words& words) {
        colour(words);
        cairo_set_line_width(context_, words.number());
        const bool round = words.number() != 0;
        cairo_set_line_cap(context_, round ? CAIRO_LINE_CAP_ROUND : CAIRO_LINE_CAP_BUTT);
        cairo_set_line_join(context_, round ? CAIRO_LINE_JOIN_ROUND : CAIRO_LINE_JOIN_MITER);
        std::vector<double> dashes(static_cast<std::size_t>(words.number()));
        for (double& dash : dashes)
            dash = words.number();
        cairo_set_dash(context_, dashes.data(), static_cast<int>(dashes.size()), 0);
        trace(words);
        cairo_stroke(context_);
    }

    void text(Words& words) {
        if (recording_) throw std::runtime_error("the list has a text in a form");
        const Colour ink = colour_of(std::string{words.next()});
        const double size = words.number();
        double x = words.number();
        double y = words.number();
        const double turn = words.number();
        const std::string key{words.rest()};
        const auto [found, is_new] = shaped_.try_emplace(key);
        if (is_new) {
            const std::string family{words.next()};
            const int weight = static_cast<int>(words.number());
            const bool italic = words.number() != 0;
            const bool tabular = words.number() != 0;
            found->second = shaper_.shape(std::string{words.rest()}, {family.c_str(), weight, italic, tabular});
        }
        if (turn == 0) return canvas_.text(found->second, x, y, size, ink);
        cairo_save(context_);
        cairo_translate(context_, x, y);
        cairo_rotate(context_, turn);
        canvas_.text(found->second, 0, 0, size, ink);
        cairo_restore(context_);
        canvas_.forget_colour();
    }

    void begin_form(Words& words) {
        words.next();
        cairo_rectangle_t extent{};
        for (double* side : {&extent.x, &extent.y, &extent.width, &extent.height})
            *side = words.number();
        forms_.push_back(cairo_recording_surface_create(CAIRO_CONTENT_COLOR_ALPHA, &extent));
        context_ = cairo_create(forms_.back());
        recording_ = true;
    }

    void end_form() {
        cairo_destroy(context_);
        context_ = canvas_.context();
        recording_ = false;
    }

    void use(Words& words) {
        cairo_surface_t* form = forms_.at(static_cast<std::size_t>(words.number()));
        cairo_matrix_t matrix{};
        for (double* part : {&matrix.xx, &matrix.yx, &matrix.xy, &matrix.yy, &matrix.x0, &matrix.y0})
            *part = words.number();
        cairo_save(context_);
        cairo_transform(context_, &matrix);
        cairo_set_source_surface(context_, form, 0, 0);
        cairo_paint(context_);
        cairo_restore(context_);
        canvas_.forget_colour();
    }

    Shaper shaper_;
    Canvas canvas_;
    cairo_t* context_; // of the page or of the form that is open
    bool open_ = false;
    bool recording_ = false;
    std::map<std::string, Shaped> shaped_;
    std::vector<cairo_surface_t*> forms_;
};

} // namespace

void draw_list(const std::string& fonts, const std::string& list, const std::string& out, bool tagged) {
    std::ifstream file{list, std::ios::binary};
    if (!file) throw std::runtime_error("there is no " + list);
    const std::string text{std::istreambuf_iterator<char>{file}, {}};
    Replay{fonts, out, tagged}.follow(text);
}

} // namespace bench
