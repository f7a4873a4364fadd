#include "pictures/svg.h"

#include "base/number.h"
#include "base/words.h"
#include "pictures/svg_work.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <memory>
#include <optional>
#include <span>
#include <utility>
#include <vector>

#include <libxml/xmlreader.h>

namespace dyeleaf {

namespace {

constexpr std::size_t most_svg_bytes = 4U << 20U;
constexpr std::string_view svg_namespace = "http://www.w3.org/2000/svg";

struct CloseReader {
    void operator()(xmlTextReaderPtr reader) const { xmlFreeTextReader(reader); }
};
using XmlReader = std::unique_ptr<xmlTextReader, CloseReader>;

std::string_view text_of(const xmlChar* text) {
    return text == nullptr ? std::string_view{} : reinterpret_cast<const char*>(text);
}

bool one_of(std::string_view word, std::span<const std::string_view> words) {
    return std::ranges::find(words, word) != words.end();
}

// What an element holds that cannot be placed, if it does.
std::optional<PictureFault> fault_of(std::string_view element) {
    constexpr std::array<std::string_view, 7> words = {"text",     "tspan",    "textPath",     "tref",
                                                       "altGlyph", "flowRoot", "foreignObject"};
    if (one_of(element, words)) {
        return PictureFault{"has words in it, and their font is not known here",
                            "turn the words into outlines in your drawing program, and save it again"};
    }
    if (element == "image") {
        return PictureFault{"has a picture in it", "keep to drawn shapes, or save all of it as PNG"};
    }
    if (element == "filter") {
        return PictureFault{"has an effect such as a shadow or a blur, which would print in coarse dots",
                            "take the effect out, or save all of it as PNG"};
    }
    if (element == "script") return PictureFault{"has a script in it", "save it as a plain SVG"};
    return std::nullopt;
}

PictureFault outside() {
    return {"needs something that lies outside the file", "save it as a plain SVG with all its parts inside"};
}

// CSS 2.1, 4.3.4: url(…) with or without quotes; only #names are inside.
bool reaches_outside(std::string_view style) {
    if (style.find("@import") != std::string_view::npos) return true;
    for (auto at = style.find("url("); at != std::string_view::npos; at = style.find("url(", at + 1)) {
        const auto target = style.find_first_not_of(" \t\r\n\"'", at + 4);
        if (target == std::string_view::npos || style[target] != '#') return true;
    }
    return false;
}

bool reaches_outside(std::string_view element, std::string_view attribute, std::string_view value) {
    if (attribute == "href") return element != "a" && !value.starts_with('#');
    return reaches_outside(value);
}

using Attributes = std::vector<std::pair<std::string, std::string>>;

Attributes attributes_of(xmlTextReaderPtr reader) {
    Attributes attributes;
    for (int more = xmlTextReaderMoveToFirstAttribute(reader); more == 1;
         more = xmlTextReaderMoveToNextAttribute(reader)) {
        if (xmlTextReaderIsNamespaceDecl(reader) == 1) continue;
        attributes.emplace_back(text_of(xmlTextReaderConstLocalName(reader)), text_of(xmlTextReaderConstValue(reader)));
    }
    xmlTextReaderMoveToElement(reader);
    return attributes;
}

std::string_view value_of(const Attributes& attributes, std::string_view name) {
    const auto found = std::ranges::find(attributes, name, &Attributes::value_type::first);
    return found == attributes.end() ? std::string_view{} : std::string_view{found->second};
}

// In pixels of 1/96 inch (CSS 2.1, 4.3.2); nothing for a share of the page, which has no size of its own.
std::optional<double> absolute_length(std::string_view text) {
    struct Unit {
        std::string_view name;
        double pixels;
    };
    constexpr std::array units = {Unit{"px", 1},         Unit{"pt", 96.0 / 72}, Unit{"pc", 16},
                                  Unit{"mm", 96 / 25.4}, Unit{"cm", 96 / 2.54}, Unit{"in", 96}};
    text = trimmed(text);
    double factor = 1;
    for (const Unit& unit : units) {
        if (!text.ends_with(unit.name)) continue;
        factor = unit.pixels;
        text.remove_suffix(unit.name.size());
        break;
    }
    const auto value = parse_decimal(trimmed(text));
    return value && *value > 0 ? std::optional{*value * factor} : std::nullopt;
}

// Width to height: by its own sizes, else by the view box (SVG 1.1, 7.7: four numbers between blanks or commas).
std::optional<double> shape_of(const Attributes& root) {
    const auto width = absolute_length(value_of(root, "width"));
    const auto height = absolute_length(value_of(root, "height"));
    if (width && height) return *width / *height;
    std::string box{value_of(root, "viewBox")};
    std::ranges::replace(box, ',', ' ');
    std::vector<double> numbers;
    for (std::string_view rest = trimmed(box); !rest.empty();) {
        const auto end = std::min(rest.find_first_of(" \t\r\n"), rest.size());
        const auto number = parse_decimal(rest.substr(0, end));
        if (!number) return std::nullopt;
        numbers.push_back(*number);
        rest = trimmed(rest.substr(end));
    }
    if (numbers.size() != 4 || numbers[2] <= 0 || numbers[3] <= 0) return std::nullopt;
    return numbers[2] / numbers[3];
}

class SvgCheck {
  public:
    explicit SvgCheck(std::string_view bytes)
        : reader_(xmlReaderForMemory(bytes.data(), static_cast<int>(bytes.size()), nullptr, nullptr,
                                     XML_PARSE_NONET | XML_PARSE_NOERROR | XML_PARSE_NOWARNING)) {}

    PictureOrFault run() {
        int more = 0;
        while (reader_ && (more = xmlTextReaderRead(reader_.get())) == 1) {
            if (auto fault = look()) return placed(std::move(*fault));
        }
        if (more != 0 || !reader_) {
            return PictureFault{"is broken: it is not sound XML from line " + std::to_string(line()) + " on",
                                "save it again as a plain SVG"};
        }
        if (work_.is_endless()) {
            return PictureFault{"draws its parts over and over, more often than any drawing needs",
                                "simplify it in your drawing program, or save it as PNG"};
        }
        if (!shape_) {
            return PictureFault{"does not say how wide and how high it is",
                                "save it again with a page size: it needs width and height, or a viewBox"};
        }
        return PictureFile{{}, PictureKind::svg, {}, 1, *shape_};
    }

  private:
    [[nodiscard]] int line() const { return reader_ ? xmlTextReaderGetParserLineNumber(reader_.get()) : 1; }

    [[nodiscard]] PictureFault placed(PictureFault fault) const {
        const long line = xmlGetLineNo(xmlTextReaderCurrentNode(reader_.get()));
        fault.message += " (on its line " + std::to_string(line) + ")";
        return fault;
    }

    std::optional<PictureFault> look() {
        const int kind = xmlTextReaderNodeType(reader_.get());
        const std::string_view name = text_of(xmlTextReaderConstLocalName(reader_.get()));
        if (kind == XML_READER_TYPE_PROCESSING_INSTRUCTION && name == "xml-stylesheet") return outside();
        if (kind == XML_READER_TYPE_ENTITY_REFERENCE) {
            return PictureFault{"has an abbreviation in it, which may stand for anything", "save it as a plain SVG"};
        }
        if (kind == XML_READER_TYPE_END_ELEMENT) return end_element();
        if (kind == XML_READER_TYPE_TEXT || kind == XML_READER_TYPE_CDATA) {
            if (in_style_) style_ += text_of(xmlTextReaderConstValue(reader_.get()));
            return std::nullopt;
        }
        return kind == XML_READER_TYPE_ELEMENT ? look_at_element(name) : std::nullopt;
    }

    std::optional<PictureFault> end_element() {
        work_.close();
        if (!in_style_) return std::nullopt;
        in_style_ = false;
        work_.rules(style_);
        return reaches_outside(std::exchange(style_, {})) ? std::optional{outside()} : std::nullopt;
    }

    // Drawing programs keep notes of their own in other namespaces; nobody draws those.
    std::optional<PictureFault> look_at_element(std::string_view name) {
        const std::string_view space = text_of(xmlTextReaderConstNamespaceUri(reader_.get()));
        const std::string element{name};
        const bool is_empty = xmlTextReaderIsEmptyElement(reader_.get()) == 1;
        const Attributes attributes = attributes_of(reader_.get());
        work_.open(element);
        for (const auto& [attribute, value] : attributes)
            work_.attribute(attribute, value);
        if (is_empty) work_.close();
        if (!space.empty() && space != svg_namespace) return std::nullopt;
        in_style_ = element == "style" && !is_empty;
        if (auto fault = fault_of(element)) return fault;
        for (const auto& [attribute, value] : attributes) {
            if (reaches_outside(element, attribute, value)) return outside();
        }
        if (xmlTextReaderDepth(reader_.get()) == 0) shape_ = shape_of(attributes);
        return std::nullopt;
    }

    XmlReader reader_;
    bool in_style_ = false;
    std::string style_; // of the style sheet that is being read
    SvgWork work_;
    std::optional<double> shape_;
};

} // namespace

bool is_svg(std::string_view bytes) {
    constexpr std::size_t beginning = 4096;
    if (bytes.starts_with("\xef\xbb\xbf")) bytes.remove_prefix(3);
    return trimmed(bytes.substr(0, beginning)).starts_with('<') &&
           bytes.substr(0, beginning).find("<svg") != std::string_view::npos;
}

PictureOrFault read_svg(std::string_view bytes) {
    if (bytes.size() > most_svg_bytes) {
        return PictureFault{"is a drawing larger than 4 MB", "simplify it in your drawing program, or save it as PNG"};
    }
    return SvgCheck{bytes}.run();
}

} // namespace dyeleaf
