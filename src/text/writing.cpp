#include "text/writing.h"

namespace dyeleaf {

namespace {

Font font_of(const Type& type) {
    return {"Inter", type.weight, false, 0, true};
}

} // namespace

Length Writing::paragraph(const std::string& text, const Type& type, Point at, Length width, Against against) {
    const auto set = typesetter_->set(text, font_of(type), width / type.size, false);
    const Length leading = type.size * type.leading;
    const Length height = leading * static_cast<double>(set->lines.size());
    sheet_->items.emplace_back(BeginTag{{Tag::Role::paragraph, {}, {}, {at, {width, height}}}});
    Point baseline = at + Point{{}, (leading + cap_height(type)) / 2};
    for (const TextLine& one : set->lines) {
        line(one, type, baseline, against);
        baseline.y += leading;
    }
    sheet_->items.emplace_back(EndTag{});
    return height;
}

void Writing::figure(const std::string& text, const Type& type, Point baseline, Against against) {
    for (const TextLine& one : typesetter_->set(text, font_of(type), std::nullopt, false)->lines)
        line(one, type, baseline, against);
}

Length Writing::width_of(const std::string& text, const Type& type) const {
    return type.size * typesetter_->set(text, font_of(type), std::nullopt, false)->width;
}

Length Writing::cap_height(const Type& type) const {
    return type.size * typesetter_->metrics(font_of(type)).cap_height;
}

void Writing::line(const TextLine& line, const Type& type, Point baseline, Against against) {
    const double before = against == Against::left ? 0 : against == Against::middle ? 0.5 : 1;
    const Length start = baseline.x - type.size * line.width * before;
    for (const PlacedRun& placed : line.runs)
        sheet_->items.emplace_back(DrawRun{placed.run, {start + type.size * placed.x, baseline.y}, type.size, Rgb{}});
}

} // namespace dyeleaf
