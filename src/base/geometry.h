// Points, sizes and rectangles in millimetres; x runs right, y runs down, as on a page that is read.
#pragma once

#include "base/length.h"

#include <string>

namespace dyeleaf {

struct Point {
    Length x, y;
    friend constexpr bool operator==(Point, Point) = default;
    friend constexpr Point operator+(Point a, Point b) { return {a.x + b.x, a.y + b.y}; }
    friend constexpr Point operator-(Point a, Point b) { return {a.x - b.x, a.y - b.y}; }
};

struct Size {
    Length width, height;
    friend constexpr bool operator==(Size, Size) = default;
};

struct Insets {
    Length top, right, bottom, left;
    static constexpr Insets all(Length length) { return {length, length, length, length}; }
    [[nodiscard]] constexpr Length across() const { return left + right; }
    [[nodiscard]] constexpr Length down() const { return top + bottom; }
    friend constexpr Insets operator+(Insets a, Insets b) {
        return {a.top + b.top, a.right + b.right, a.bottom + b.bottom, a.left + b.left};
    }
};

struct Rect {
    Point origin;
    Size size;

    [[nodiscard]] constexpr Length left() const { return origin.x; }
    [[nodiscard]] constexpr Length top() const { return origin.y; }
    [[nodiscard]] constexpr Length right() const { return origin.x + size.width; }
    [[nodiscard]] constexpr Length bottom() const { return origin.y + size.height; }
    [[nodiscard]] constexpr Point centre() const { return {left() + size.width / 2, top() + size.height / 2}; }
    friend constexpr bool operator==(Rect, Rect) = default;
};

constexpr Rect shrunk(Rect rect, Insets by) {
    return {{rect.left() + by.left, rect.top() + by.top},
            {larger(rect.size.width - by.across(), Length{}), larger(rect.size.height - by.down(), Length{})}};
}
constexpr Rect grown(Rect rect, Length by) {
    return {{rect.left() - by, rect.top() - by}, {rect.size.width + by * 2, rect.size.height + by * 2}};
}
// Whether the insides of the two share any area beyond the length tolerance.
constexpr bool overlap(Rect a, Rect b) {
    return !fits(a.right(), b.left()) && !fits(b.right(), a.left()) && !fits(a.bottom(), b.top()) &&
           !fits(b.bottom(), a.top());
}
constexpr bool contains(Rect outer, Rect inner) {
    return fits(outer.left(), inner.left()) && fits(outer.top(), inner.top()) && fits(inner.right(), outer.right()) &&
           fits(inner.bottom(), outer.bottom());
}

// x' = a x + c y + dx, y' = b x + d y + dy; a to d are pure numbers.
struct Transform {
    double a = 1, b = 0, c = 0, d = 1;
    Length dx, dy;

    [[nodiscard]] constexpr Point apply(Point p) const { return {p.x * a + p.y * c + dx, p.x * b + p.y * d + dy}; }
    // The rectangle around the four corners of a turned one.
    [[nodiscard]] Rect bounds(Rect rect) const;
    // First `inner`, then this.
    [[nodiscard]] Transform after(const Transform& inner) const;

    static constexpr Transform move(Point by) { return {1, 0, 0, 1, by.x, by.y}; }
};

enum class Turn { none, right, half, left };

// Maps a box of `size` at the origin, turned clockwise, onto the rectangle that starts at the origin and holds it.
Transform turned(Turn turn, Size size);
// The size of that rectangle.
Size turned_size(Turn turn, Size size);

// "12,3.5 40x20", in millimetres.
std::string to_string(Rect rect);

} // namespace dyeleaf
