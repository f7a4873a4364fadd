#include "bench/floor.h"

#include "symbols/symbols.h"

#include <zint.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <fstream>
#include <map>
#include <span>
#include <sstream>
#include <stdexcept>
#include <variant>

namespace bench {

namespace {

// Where everything lies on the program's own pages, taken from them once: millimetres, on a tag from its top left
// corner.
constexpr double tag_width = 60, tag_height = 90, band_height = 12;
constexpr double text_left = 4, text_width = 52, beside_code = 26;
constexpr double symbols_top = 48.9, symbol_scale = 0.6;
struct PlacedSymbol {
    const char* key;
    double left;
};
constexpr std::array symbols = {PlacedSymbol{"care/wash 30 gentle", 4}, PlacedSymbol{"care/no bleach", 11.64},
                                PlacedSymbol{"care/no tumble", 18.74}, PlacedSymbol{"care/iron low", 25.18},
                                PlacedSymbol{"care/dry clean P", 33.06}};
// Codes lie on the whole dots of a printer with 300 to the inch, and a module is seven dots.
constexpr double dot = 25.4 / 300, module = 7;
struct Place {
    double left, top;           // of a tag
    double code_left, code_top; // of its code's first module, in dots
};
constexpr std::array nine_places = {Place{11, 5, 206, 871},    Place{75, 5, 962, 871},    Place{139, 5, 1717, 871},
                                    Place{11, 99, 206, 1982},  Place{75, 99, 962, 1982},  Place{139, 99, 1717, 1982},
                                    Place{11, 193, 206, 3092}, Place{75, 193, 962, 3092}, Place{139, 193, 1717, 3092}};
constexpr Place lone_place = {75, 7, 962, 895};
constexpr double mark_offset = 0.5, mark_length = 1.5, mark_width = 0.25 * 25.4 / 72;
constexpr double line_left = 55, line_top = 288.42, line_length = 100, line_width = 0.5 * 25.4 / 72;

constexpr Style maker{"Vollkorn", 600};
constexpr Style strong{"Inter", 600};
constexpr Style strong_figures{"Inter", 600, false, true};
constexpr Style body{"Inter"};
constexpr Style figures{"Inter", 400, false, true};

double exact(double millimetres) {
    return millimetres * 72 / 25.4;
}

// To a hundredth of a millimetre, written in few figures: nobody sees less, and pages pack better.
double points(double millimetres) {
    return std::round(exact(std::round(millimetres * 100) / 100) * 1000) / 1000;
}

struct Lot {
    std::string id, name, price, link;
    int skeins = 0;
    Colour colour;

    // Whether a skein's number is still to come behind the link.
    [[nodiscard]] bool own_codes() const { return link.back() == '-'; }
};

bool read(std::istream& file, Lot& lot) {
    std::string line;
    if (!std::getline(file, line)) return false;
    std::istringstream fields{line};
    std::string skeins;
    std::string colour;
    for (std::string* field : {&lot.id, &lot.name, &skeins, &lot.price, &colour, &lot.link})
        std::getline(fields, *field, '\t');
    lot.skeins = std::stoi(skeins);
    lot.colour = colour_of(colour);
    return true;
}

void line(cairo_t* context, double x1, double y1, double x2, double y2) {
    cairo_move_to(context, points(x1), points(y1));
    cairo_line_to(context, points(x2), points(y2));
}

// Adds a symbol's outlines to the path.
void trace(cairo_t* context, const dyeleaf::Path& path, double left, double top) {
    const auto x = [&](dyeleaf::Point p) { return points(left + p.x.in_mm() * symbol_scale); };
    const auto y = [&](dyeleaf::Point p) { return points(top + p.y.in_mm() * symbol_scale); };
    for (const auto& step : path) {
        if (const auto* move = std::get_if<dyeleaf::MoveTo>(&step)) {
            cairo_move_to(context, x(move->to), y(move->to));
        } else if (const auto* to = std::get_if<dyeleaf::LineTo>(&step)) {
            cairo_line_to(context, x(to->to), y(to->to));
        } else if (const auto* curve = std::get_if<dyeleaf::CurveTo>(&step)) {
            cairo_curve_to(context, x(curve->control1), y(curve->control1), x(curve->control2), y(curve->control2),
                           x(curve->to), y(curve->to));
        } else {
            cairo_close_path(context);
        }
    }
}

// Black, all strokes as one path: the symbols' lines are equally wide and round.
void draw_symbol(cairo_t* context, const PlacedSymbol& symbol, double tag_left, double tag_top) {
    const double left = tag_left + symbol.left;
    const double top = tag_top + symbols_top;
    const auto drawing = dyeleaf::symbol_drawing(symbol.key, false);
    for (const auto& item : drawing->items) {
        if (const auto* fill = std::get_if<dyeleaf::FillPath>(&item)) {
            trace(context, fill->path, left, top);
            cairo_fill(context);
        }
    }
    for (const auto& item : drawing->items) {
        if (const auto* stroke = std::get_if<dyeleaf::StrokePath>(&item)) {
            trace(context, stroke->path, left, top);
            cairo_set_line_width(context, points(stroke->width.in_mm() * symbol_scale));
        }
    }
    cairo_set_line_cap(context, CAIRO_LINE_CAP_ROUND);
    cairo_set_line_join(context, CAIRO_LINE_JOIN_ROUND);
    cairo_stroke(context);
    cairo_set_line_cap(context, CAIRO_LINE_CAP_BUTT);
    cairo_set_line_join(context, CAIRO_LINE_JOIN_MITER);
}

// A code's modules, a row at a time: runs of dark ones.
struct DarkRun {
    int x, y, length;
};
std::vector<DarkRun> runs_of(const std::string& text) {
    zint_symbol* symbol = ZBarcode_Create();
    symbol->symbology = BARCODE_QRCODE;
    symbol->input_mode = UNICODE_MODE;
    symbol->option_1 = 2;
    if (ZBarcode_Encode(symbol, reinterpret_cast<const unsigned char*>(text.data()), static_cast<int>(text.size())) >=
        ZINT_ERROR)
        throw std::runtime_error("no code of " + text);
    std::vector<DarkRun> runs;
    const auto is_dark = [&](int x, int y) {
        return x < symbol->width && (symbol->encoded_data[y][x / 8] >> (x % 8) & 1) != 0;
    };
    for (int y = 0; y < symbol->rows; ++y) {
        for (int x = 0; x < symbol->width; ++x) {
            if (!is_dark(x, y)) continue;
            DarkRun run{x, y, 1};
            while (is_dark(++x, y))
                ++run.length;
            runs.push_back(run);
        }
    }
    ZBarcode_Delete(symbol);
    return runs;
}

// One stroke as wide as a module along each run, all in one path; `left` and `top` in dots.
void draw_code(cairo_t* context, const std::vector<DarkRun>& runs, double left, double top) {
    for (const DarkRun& run : runs) {
        const double y = exact((top + (run.y + 0.5) * module) * dot);
        cairo_move_to(context, exact((left + run.x * module) * dot), y);
        cairo_line_to(context, exact((left + (run.x + run.length) * module) * dot), y);
    }
    cairo_set_line_width(context, exact(module * dot));
    cairo_stroke(context);
}

void draw_cut_marks(cairo_t* context, std::span<const Place> places) {
    for (const auto& [left, top, code_left, code_top] : places) {
        for (const double x : {left, left + tag_width}) {
            for (const double y : {top, top + tag_height}) {
                const double out_x = x == left ? -1 : 1;
                const double out_y = y == top ? -1 : 1;
                line(context, x + out_x * mark_offset, y, x + out_x * (mark_offset + mark_length), y);
                line(context, x, y + out_y * mark_offset, x, y + out_y * (mark_offset + mark_length));
            }
        }
    }
    cairo_set_line_width(context, exact(mark_width));
    cairo_stroke(context);
}

void draw_test_line(cairo_t* context) {
    line(context, line_left, line_top, line_left + line_length, line_top);
    for (int i = 0; i <= 10; ++i) {
        const bool end = i % 10 == 0;
        const double x = line_left + 10 * i;
        line(context, x, line_top - (end ? 1.5 : 1), x, line_top + (end ? 1.5 : 0));
    }
    cairo_set_line_width(context, exact(line_width));
    cairo_stroke(context);
}

// Draws what repeats once, to be shown often.
template <class Draw> cairo_surface_t* recorded(cairo_rectangle_t extent, Draw draw) {
    cairo_surface_t* surface = cairo_recording_surface_create(CAIRO_CONTENT_COLOR_ALPHA, &extent);
    cairo_t* context = cairo_create(surface);
    draw(context);
    cairo_destroy(context);
    return surface;
}

// A code that several tags share: a form is smaller and faster than to draw it again.
cairo_surface_t* recorded_code(const std::string& text) {
    constexpr double most = 40 * module * dot * 72 / 25.4;
    return recorded({0, 0, most, most}, [&](cairo_t* context) { draw_code(context, runs_of(text), 0, 0); });
}

class Tags {
  public:
    Tags(const std::string& fonts, const std::string& out, bool tagged)
        : shaper_(fonts), canvas_(out, tagged), tagged_(tagged) {}

    void draw(const std::vector<Lot>& lots) {
        canvas_.page(exact(210), exact(297));
        const bool alone = lots.size() == 1 && lots.front().skeins == 1;
        for (std::size_t i = 0; i < lots.size(); ++i) {
            const std::span all{alone ? std::span{&lone_place, 1} : std::span<const Place>{nine_places}};
            sheet(lots[i], all.first(static_cast<std::size_t>(lots[i].skeins)), i + 1, lots.size());
        }
        canvas_.finish();
    }

  private:
    void sheet(const Lot& lot, std::span<const Place> places, std::size_t number, std::size_t count) {
        cairo_t* context = canvas_.context();
        const Shaped name = shaper_.shape(lot.name, maker);
        const double room = exact(text_width);
        const double size = std::min(18.0, std::floor(room / name.width * 4) / 4);
        const Shaped price = shaper_.shape("€" + lot.price, maker);
        const Shaped id = shaper_.shape("Lot " + lot.id, strong_figures);
        cairo_surface_t* const shared = lot.own_codes() ? nullptr : recorded_code(lot.link);

        if (!tagged_) bands(lot, places);
        int skein = 0;
        for (const Place& place : places) {
            const double left = place.left;
            const double top = place.top;
            const std::string skein_number = std::to_string(++skein);
            const auto text = [&](const Shaped& shaped, double x, double y, double pt) {
                canvas_.begin("P");
                canvas_.text(shaped, points(left + x), points(top + y), pt);
                canvas_.end("P");
            };
            if (tagged_) {
                canvas_.begin("Figure");
                canvas_.colour(lot.colour);
                cairo_rectangle(context, points(left), points(top), points(tag_width), points(band_height));
                cairo_fill(context);
                canvas_.end("Figure");
            }
            text(kept("Quillmoor Yarn Works", maker), text_left, 19.13, 10);
            text(name, text_left, 20.892 + 0.30545 * size, size);
            text(kept("Plain Sock", strong), text_left, 32.1, 9);
            text(kept("75 % wool · 25 % polyamide", body), text_left, 36.69, 7.5);
            tagged_ ? marked_symbols(left, top) : show(all_symbols(), points(left), points(top));
            canvas_.begin("Figure");
            if (shared != nullptr) {
                show(shared, exact(place.code_left * dot), exact(place.code_top * dot));
            } else {
                draw_code(context, runs_of(lot.link + skein_number), place.code_left, place.code_top);
            }
            canvas_.end("Figure");
            text(price, beside_code, 72.61, 17);
            text(kept("100 g · 420 m", figures), beside_code, 77.16, 7.5);
            text(id, beside_code, 81.2, 7.5);
            text(kept("skein " + skein_number + " of " + std::to_string(lot.skeins), figures), beside_code, 85.24, 7.5);
        }
        canvas_.colour({});
        draw_cut_marks(context, places);
        draw_test_line(context);
        const std::string caption = "Print at actual size: this line is 100 mm long · bench-tag · sheet " +
                                    std::to_string(number) + " of " + std::to_string(count) + " · 20 Nov 2026";
        canvas_.text(shaper_.shape(caption, body), points(56.5), points(291.45), 6.5);
        canvas_.end_page();
        cairo_surface_destroy(shared);
    }

    // All of a sheet as one path.
    void bands(const Lot& lot, std::span<const Place> places) {
        cairo_t* context = canvas_.context();
        canvas_.colour(lot.colour);
        for (const Place& place : places)
            cairo_rectangle(context, points(place.left), points(place.top), points(tag_width), points(band_height));
        cairo_fill(context);
    }

    const Shaped& kept(const std::string& text, const Style& style) {
        const auto [found, is_new] = kept_.try_emplace(text);
        if (is_new) found->second = shaper_.shape(text, style);
        return found->second;
    }

    // The five of a tag, from its corner.
    cairo_surface_t* all_symbols() {
        if (all_symbols_ == nullptr)
            all_symbols_ = recorded(symbols_extent(), [](cairo_t* context) {
                for (const PlacedSymbol& symbol : symbols)
                    draw_symbol(context, symbol, 0, 0);
            });
        return all_symbols_;
    }

    // Each a part of its own, and so a drawing of its own.
    void marked_symbols(double left, double top) {
        for (const PlacedSymbol& symbol : symbols) {
            cairo_surface_t*& form = each_symbol_[symbol.key];
            if (form == nullptr)
                form = recorded(symbols_extent(), [&](cairo_t* context) { draw_symbol(context, symbol, 0, 0); });
            canvas_.begin("Figure");
            show(form, points(left), points(top));
            canvas_.end("Figure");
        }
    }

    static cairo_rectangle_t symbols_extent() {
        return {points(text_left), points(symbols_top), points(text_width), points(10 * symbol_scale)};
    }

    void show(cairo_surface_t* form, double left, double top) {
        cairo_set_source_surface(canvas_.context(), form, left, top);
        cairo_paint(canvas_.context());
        canvas_.forget_colour();
        canvas_.colour({});
    }

    Shaper shaper_;
    Canvas canvas_;
    bool tagged_;
    std::map<std::string, Shaped> kept_; // texts that repeat from sheet to sheet
    cairo_surface_t* all_symbols_ = nullptr;
    std::map<std::string, cairo_surface_t*> each_symbol_;
};

} // namespace

void draw_tags(const std::string& fonts, const std::string& tags, const std::string& out, bool tagged) {
    std::ifstream file{tags};
    if (!file) throw std::runtime_error("there is no " + tags);
    std::vector<Lot> lots;
    for (Lot lot; read(file, lot);)
        lots.push_back(lot);
    Tags{fonts, out, tagged}.draw(lots);
}

} // namespace bench
