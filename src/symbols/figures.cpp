#include "symbols/figures.h"

#include "symbols/pen.h"

#include <algorithm>
#include <array>
#include <stdexcept>
#include <string>

namespace dyeleaf::drawing {

namespace {

// Lines of the figure's middle, from its top left corner; all are 32 units high.
struct Figure {
    char name;
    double width;
    std::string_view path;
};
constexpr double height = 32;
constexpr double gap = 11; // between the lines of two figures: as much white as inside them

constexpr std::array known = {
    Figure{'0', 19, "M 9.5 0 C 15.6 0 19 6 19 16 C 19 26 15.6 32 9.5 32 C 3.4 32 0 26 0 16 C 0 6 3.4 0 9.5 0 Z"},
    Figure{'3', 19,
           "M 1.2 3.6 C 3.2 1.2 6 0 9.4 0 C 14.8 0 17.8 3 17.8 7.4 C 17.8 12 14.4 14.8 9 14.8 "
           "C 15.2 14.8 19 18 19 23.2 C 19 28.6 15 32 9.2 32 C 5.2 32 2 30.6 0 27.8"},
    Figure{'4', 20, "M 15 32 V 0 L 0 22.5 H 20"},
    Figure{'5', 19,
           "M 17 0 H 3.6 L 2 15 C 4 13 6.6 12 9.6 12 C 15.4 12 19 15.8 19 21.8 C 19 28 15 32 9.2 32 "
           "C 5.4 32 2.2 30.6 0 27.8"},
    Figure{'6', 19,
           "M 14.6 0 C 6.6 4 0 11.6 0 21.8 C 0 28 3.8 32 9.5 32 C 15.2 32 19 28 19 22.2 C 19 16.4 15.2 12.8 9.9 12.8 "
           "C 4.8 12.8 0.6 16 0 21.8"},
    Figure{'7', 19, "M 0 0 H 19 C 12.6 9 8.4 20 6.6 32"},
    Figure{'9', 19,
           "M 4.4 32 C 12.4 28 19 20.4 19 10.2 C 19 4 15.2 0 9.5 0 C 3.8 0 0 4 0 9.8 C 0 15.6 3.8 19.2 9.1 19.2 "
           "C 14.2 19.2 18.4 16 19 10.2"},
    Figure{'P', 19, "M 0 32 V 0 H 9.6 C 15.6 0 19 3.6 19 9 C 19 14.4 15.6 18 9.6 18 H 0"},
    Figure{'F', 17, "M 17 0 H 0 V 32 M 0 15.2 H 14.4"},
    Figure{'W', 36, "M 0 0 L 9 32 L 18 15 L 27 32 L 36 0"},
};

const Figure& figure_of(char name) {
    const auto* const found = std::ranges::find(known, name, &Figure::name);
    if (found == known.end()) throw std::logic_error(std::string{"no drawing of the figure "} + name);
    return *found;
}

} // namespace

Path figures_path(std::string_view figures, Point centre) {
    double width = gap * static_cast<double>(figures.size() - 1);
    for (const char name : figures)
        width += figure_of(name).width;
    Point corner = centre - at(width / 2, height / 2);
    Path path;
    for (const char name : figures) {
        const Figure& figure = figure_of(name);
        const Path one = transformed(outline(figure.path), Transform::move(corner));
        path.insert(path.end(), one.begin(), one.end());
        corner.x += units(figure.width + gap);
    }
    return path;
}

} // namespace dyeleaf::drawing
