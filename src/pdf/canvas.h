// The operators of a page or a form (ISO 32000-1, 8 and 9), written one after the other; what is set already is not
// set again. x runs right and y runs down, in points.
#pragma once

#include "display/display_list.h"
#include "pdf/page_matrix.h"

#include <initializer_list>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace dyeleaf {

// Objects that operators name: "/F12" is the font that is object 12.
struct Resources {
    std::set<int> fonts, drawings;
    [[nodiscard]] std::string dictionary() const;
};

class Canvas {
  public:
    // First of all on a page: its file counts up from the foot. `matrix()` is from there.
    void start_at_top(double page_height);
    void save();
    void restore();
    void transform(const PageMatrix& by);
    [[nodiscard]] const PageMatrix& matrix() const { return state_.matrix; }

    void fill(const Path& path, Rgb colour);
    void fill_exactly(const Path& path, Rgb colour); // every digit that may matter
    void stroke(const StrokePath& stroke);
    void clip(const Path& path);
    void draw(int object); // an image in the unit square, or a form
    // Opens a text whose matrix is `matrix`; what shows it goes to `text()`, before the end.
    void begin_text(int font, double size, const PageMatrix& matrix, Rgb colour);
    void end_text();
    std::string& text() { return operators_; }

    void begin_mark(std::string_view words); // "/P <</MCID 3>> BDC"
    void end_mark();

    [[nodiscard]] const Resources& resources() const { return resources_; }
    [[nodiscard]] const std::string& operators() const { return operators_; }

  private:
    struct State {
        PageMatrix matrix;
        std::optional<Rgb> fill, stroke;
        double width = 1;
        bool round = false;
        std::vector<Length> dash;
        int font = 0;
        double size = 0;
    };

    void trace(const Path& path, int decimals);
    void set_colour(std::optional<Rgb>& known, Rgb wanted, std::string_view name);
    void set_ends(bool round);
    void set_dash(const std::vector<Length>& dash);
    void numbers(std::initializer_list<double> values, int decimals);
    void word(std::string_view name);
    void write_transform(const PageMatrix& by);

    std::string operators_;
    State state_;
    std::vector<State> saved_;
    Resources resources_;
};

} // namespace dyeleaf
