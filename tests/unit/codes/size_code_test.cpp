#include "codes/draw_code.h"
#include "codes/size_code.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace dyeleaf;

namespace {

Code code_of(CodeKind kind, const char* text) {
    return std::get<Code>(make_code(kind, text));
}

const Code qr = code_of(CodeKind::qr, "https://quillmoor.example/lot/26-117"); // 29 modules
const Code ean = code_of(CodeKind::ean_13, "6291041500213");
const Code bars = code_of(CodeKind::code_128, "26-117");

CodeRoom room(std::optional<Length> width, std::optional<Length> height, double dpi = 300) {
    return {width, height, !width && !height, inches(1) / dpi, {}, mm(3)};
}

double dots(Length length, double dpi = 300) {
    return length / (inches(1) / dpi);
}

bool is_whole(double number) {
    return std::abs(number - std::round(number)) < 1e-6;
}

Rect bounds(const Path& path) {
    Rect all{std::get<MoveTo>(path.front()).to, {}};
    const auto add = [&](Point p) {
        const Point end{larger(all.right(), p.x), larger(all.bottom(), p.y)};
        all.origin = {smaller(all.left(), p.x), smaller(all.top(), p.y)};
        all.size = {end.x - all.left(), end.y - all.top()};
    };
    for (const auto& step : path) {
        if (const auto* move = std::get_if<MoveTo>(&step)) add(move->to);
        if (const auto* line = std::get_if<LineTo>(&step)) add(line->to);
    }
    return all;
}

} // namespace

TEST_CASE("a module is a whole number of dots at every resolution", "[codes]") {
    for (const Code* code : {&qr, &ean, &bars}) {
        for (const double dpi : {72.0, 150.0, 203.0, 300.0, 600.0, 720.0, 1200.0, 2400.0}) {
            INFO(static_cast<int>(code->kind) << " at " << dpi);
            const auto size = largest_size(*code, room(mm(60), mm(60), dpi));
            REQUIRE(size);
            CHECK(is_whole(dots(size->module, dpi)));
            CHECK(is_whole(dots(size->bars, dpi)));
            CHECK(fits(code_rules(code->kind).least_module, size->module));
            CHECK(fits(size->module, larger(code_rules(code->kind).most_module, inches(1) / dpi * 2)));
        }
    }
}

// 29 modules and 4 + 4 of white: 37 of 5 dots, 0.4233 mm each, and one dot of play.
TEST_CASE("a QR code takes the largest module that fits", "[codes]") {
    const auto size = largest_size(qr, room(mm(18), mm(18)));
    REQUIRE(size);
    CHECK(dots(size->module) == Approx(5));
    CHECK(dots(size->whole.width) == Approx(37 * 5 + 1));
    CHECK(dots(size->whole.height) == Approx(37 * 5 + 1));
    CHECK(dots(largest_size(qr, room(mm(19), mm(30)))->module) == Approx(6)); // 18.9 mm
    CHECK(dots(largest_size(qr, room(mm(200), {}))->module) == Approx(11));   // no more than 0.99 mm
    CHECK_FALSE(largest_size(qr, room(mm(15.7), mm(15.7))));
    CHECK(largest_size(qr, room(mm(15.75), mm(15.75))));
    CHECK(dots(least_size(qr, room(mm(1), mm(1))).whole.width) == Approx(37 * 5 + 1));
}

TEST_CASE("where the layout asks for more than the least module, that is kept", "[codes]") {
    CodeRoom asked = room(mm(20), mm(20));
    asked.least_module = mm(0.6);
    CHECK_FALSE(largest_size(qr, asked));
    asked.width = asked.height = mm(26);
    CHECK(dots(largest_size(qr, asked)->module) == Approx(8)); // 0.6 mm is 7.09 dots
}

// GS1 General Specifications, 5.2.3: modules of 0.33 mm beside bars of 22.85 mm; here 4 dots, 0.339 mm.
TEST_CASE("without a size an EAN has its usual one", "[codes]") {
    const auto size = largest_size(ean, room({}, {}));
    REQUIRE(size);
    CHECK(dots(size->module) == Approx(4));
    CHECK(dots(size->whole.width) == Approx((11 + 95 + 7) * 4 + 1));
    CHECK(size->bars.in_mm() == Approx(23.5).margin(0.1));
    // Three dots would be 0.254 mm, and 0.264 is the least.
    CHECK_FALSE(largest_size(ean, room(mm(38.2), mm(30))));
    CHECK(largest_size(ean, room(mm(38.4), mm(30))));
    CHECK(dots(largest_size(ean, room(mm(38), mm(30), 600))->module, 600) == Approx(7)); // 0.296 mm
}

TEST_CASE("bars are as tall as the room, and never too low to be scanned", "[codes]") {
    CHECK(largest_size(ean, room(mm(40), mm(20)))->whole.height <= mm(20));
    CHECK(largest_size(ean, room(mm(40), mm(20)))->bars > mm(16));
    CHECK_FALSE(largest_size(ean, room(mm(40), mm(9))));
    const CodeSize least = least_size(bars, room(mm(1), mm(1)));
    CHECK(least.bars >= mm(6.35));
    CHECK(least.whole.height.in_mm() == Approx(6.35 + 3).margin(0.2));
}

TEST_CASE("the ink of a code keeps its quiet zone white and lies on whole dots", "[codes]") {
    const Length dot = inches(1) / 300;
    for (const Code* code : {&qr, &ean, &bars}) {
        const CodeSize size = *largest_size(*code, room(mm(60), mm(40)));
        const auto items = draw_code(*code, size, dot, {mm(7.3), mm(11.9)});
        REQUIRE(items.size() == 2);
        const auto& ground = std::get<FillPath>(items[0]);
        const auto& ink = std::get<FillPath>(items[1]);
        CHECK(ground.colour == Rgb{1, 1, 1});
        CHECK(ink.colour == Rgb{0, 0, 0});
        CHECK(near(ink.dot, dot));
        const Rect whole = bounds(ground.path);
        const Rect black = bounds(ink.path);
        const QuietZone quiet = code_rules(code->kind).quiet;
        CHECK(fits(whole.left() + size.module * quiet.left, black.left()));
        CHECK(fits(black.right(), whole.right() - size.module * quiet.right));
        CHECK(fits(whole.top() + size.module * quiet.above, black.top()));
        CHECK(fits(black.bottom(), whole.bottom() - size.module * quiet.below));
        // A tenth of a dot is taken off every edge.
        const Point first = std::get<MoveTo>(ink.path.front()).to;
        const auto is_an_edge = [&](Length from_first) {
            const double place = dots(from_first);
            return is_whole(place - 0.1) || is_whole(place + 0.1);
        };
        for (const auto& step : ink.path) {
            const auto* line = std::get_if<LineTo>(&step);
            if (line == nullptr) continue;
            CHECK(is_an_edge(line->to.x - first.x));
            CHECK(is_an_edge(line->to.y - first.y));
        }
    }
}
