#include "display/digest.h"

#include <cmath>

namespace dyeleaf {

namespace {

class InkDigest {
  public:
    explicit InkDigest(const std::function<std::uint64_t(const std::string&)>& picture) : picture_(picture) {}

    void list(const DisplayList& list) {
        add(list.size);
        for (const DisplayItem& item : list.items)
            std::visit(*this, item);
        count(end_of_list);
    }
    [[nodiscard]] std::uint64_t value() const { return digest_.value(); }

    void operator()(const FillPath& fill) {
        count(1);
        add(fill.path);
        add(fill.colour);
        if (fill.dot > Length{}) add(fill.dot);
    }
    void operator()(const StrokePath& stroke) {
        count(2);
        add(stroke.path);
        add(stroke.colour);
        add(stroke.width);
        count(stroke.dash.size());
        for (const Length length : stroke.dash)
            add(length);
        count(stroke.round ? 1 : 0);
    }
    void operator()(const DrawRun& draw) {
        count(3);
        add(draw.baseline);
        add(draw.size);
        add(draw.colour);
        if (draw.turn != 0) add(draw.turn);
        const ShapedRun& run = *draw.run;
        text(run.face.file.substr(run.face.file.find_last_of('/') + 1));
        count(static_cast<std::size_t>(run.face.index));
        text(run.text);
        count(run.glyphs.size());
        for (const Glyph& glyph : run.glyphs) {
            count(glyph.index);
            add(glyph.x);
            add(glyph.y);
        }
    }
    void operator()(const DrawPicture& picture) {
        count(4);
        add(picture.rect.origin);
        add(picture.rect.size);
        count(picture.grey ? 1 : 0);
        digest_.add(picture_(picture.picture.file));
    }
    void operator()(const Group& group) {
        count(5);
        for (const double factor : {group.transform.a, group.transform.b, group.transform.c, group.transform.d})
            add(factor);
        add(group.transform.dx);
        add(group.transform.dy);
        count(group.clip ? 1 : 0);
        if (group.clip) add(*group.clip);
        list(*group.list);
    }

    void operator()(const BeginTag& /*begin*/) {}
    void operator()(const EndTag& /*end*/) {}

    void operator()(const MoveTo& move) { add(move.to); }
    void operator()(const LineTo& line) { add(line.to); }
    void operator()(const CurveTo& curve) {
        add(curve.control1);
        add(curve.control2);
        add(curve.to);
    }
    void operator()(const ClosePath&) {}

  private:
    // Each kind of ink begins with a number of its own.
    static constexpr std::size_t end_of_list = 0;

    void count(std::size_t number) { digest_.add(std::uint64_t{number}); }
    void text(const std::string& text) {
        count(text.size());
        digest_.add(text);
    }
    void rounded(double value) { digest_.add(static_cast<std::uint64_t>(std::llround(value))); }
    void add(double factor) { rounded(factor * 1000); }
    void add(Length length) { rounded(length.in_mm() * 100); }
    void add(Point p) {
        add(p.x);
        add(p.y);
    }
    void add(Size size) {
        add(size.width);
        add(size.height);
    }
    void add(const Rgb& colour) {
        for (const double channel : {colour.red, colour.green, colour.blue})
            add(channel);
    }
    void add(const Path& path) {
        count(path.size());
        for (const auto& step : path) {
            count(step.index());
            std::visit(*this, step);
        }
    }

    const std::function<std::uint64_t(const std::string&)>& picture_;
    Digest digest_;
};

} // namespace

void Digest::add(std::string_view bytes) {
    constexpr std::uint64_t prime = 0x100000001b3; // the draft's, for 64 bits
    for (const char byte : bytes)
        value_ = (value_ ^ static_cast<unsigned char>(byte)) * prime;
}

void Digest::add(std::uint64_t number) {
    std::string bytes;
    for (int shift = 0; shift < 64; shift += 8)
        bytes += static_cast<char>(number >> shift & 0xff);
    add(bytes);
}

std::uint64_t digest(const DisplayList& list, const std::function<std::uint64_t(const std::string&)>& picture) {
    InkDigest ink{picture};
    ink.list(list);
    return ink.value();
}

} // namespace dyeleaf
