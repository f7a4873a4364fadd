#include "pdf/pdf_writer.h"

#include "paint/painter.h"
#include "pdf/metadata.h"
#include "pdf/srgb_profile.h"
#include "pdf/syntax.h"

#include <fmt/format.h>

#include <iterator>
#include <stdexcept>
#include <utility>

namespace dyeleaf {

namespace {

constexpr std::size_t pages_in_node = 100; // of the page tree

// To a ten-thousandth of a point, and never beyond the page.
std::string box(Rect rect, Size page) {
    const double right = page.width.in_pt();
    const double top = page.height.in_pt();
    std::string text = "[";
    const auto add = [&](double value, double most) {
        append_number(text, value > most - 0.001 ? most : std::max(value, 0.0), 4);
        text += ' ';
    };
    add(rect.left().in_pt(), right);
    add(top - rect.bottom().in_pt(), top);
    add(rect.right().in_pt(), right);
    add(top - rect.top().in_pt(), top);
    text.back() = ']';
    return text;
}

} // namespace

PdfWriter::PdfWriter(ByteSink sink)
    : file_(std::move(sink)), painter_(file_), structure_(file_), pages_root_(file_.reserve()) {}

void PdfWriter::page(const DisplayList& list, const std::function<PdfPage(TaggedPage)>& describe) {
    check_size(list.size);
    PageContent painted = painter_.paint(list);
    const PdfPage page = describe(std::move(painted.tagged));
    const int object = file_.reserve();
    const int parent = node_for_next_page();
    const int contents = file_.put_stream("", painted.operators);
    const auto on_page = [&](Rect rect) { return box(rect, list.size); };
    const std::string structure = structure_.add_page(object, page.tagged, on_page);
    file_.put(object, fmt::format("<</Type/Page/Parent {}/MediaBox{}/TrimBox{}/BleedBox{}/Resources{}/Contents {}{}>>",
                                  reference(parent), on_page({{}, list.size}), on_page(page.trim),
                                  on_page(grown(page.trim, page.bleed)), painted.resources.dictionary(),
                                  reference(contents), structure));
    nodes_.back().second += reference(object) + " ";
    if (!page.label.empty()) fmt::format_to(std::back_inserter(labels_), "{}<</P{}>>", pages_, text_string(page.label));
    if (!page.entry.empty()) entries_.push_back({page.entry, object});
    ++pages_;
}

int PdfWriter::node_for_next_page() {
    if (pages_ % pages_in_node == 0) nodes_.emplace_back(file_.reserve(), std::string{});
    return nodes_.back().first;
}

void PdfWriter::put_page_tree() {
    std::string kids;
    for (std::size_t i = 0; i < nodes_.size(); ++i) {
        const auto& [node, pages] = nodes_[i];
        const std::size_t count = std::min(pages_ - i * pages_in_node, pages_in_node);
        file_.put(node,
                  fmt::format("<</Type/Pages/Parent {}/Count {}/Kids[{}]>>", reference(pages_root_), count, pages));
        kids += reference(node) + " ";
    }
    file_.put(pages_root_, fmt::format("<</Type/Pages/Count {}/Kids[{}]>>", pages_, kids));
}

// ISO 32000-1, 12.4.2
std::string PdfWriter::put_page_labels() {
    if (labels_.empty()) return {};
    const int labels = file_.reserve();
    file_.put_long(labels, [&](const ByteSink& piece) {
        piece("<</Nums[");
        piece(labels_);
        piece("]>>");
    });
    return "/PageLabels " + reference(labels);
}

// ISO 32000-1, 12.3.3
std::string PdfWriter::put_outline() {
    if (entries_.empty()) return {};
    const int outline = file_.reserve();
    const int first = file_.reserve();
    const auto count = static_cast<int>(entries_.size());
    for (int i = 1; i < count; ++i)
        file_.reserve();
    for (int i = 0; i < count; ++i) {
        const Entry& entry = entries_[static_cast<std::size_t>(i)];
        const std::string previous = i > 0 ? "/Prev " + reference(first + i - 1) : std::string{};
        const std::string next = i + 1 < count ? "/Next " + reference(first + i + 1) : std::string{};
        file_.put(first + i, fmt::format("<</Title{}/Parent {}/Dest[{}/Fit]{}{}>>", text_string(entry.title),
                                         reference(outline), reference(entry.page), previous, next));
    }
    file_.put(outline, fmt::format("<</Type/Outlines/First {}/Last {}/Count {}>>", reference(first),
                                   reference(first + count - 1), count));
    return "/Outlines " + reference(outline);
}

void PdfWriter::finish(const PdfDetails& details) {
    painter_.write_fonts();
    put_page_tree();
    // Viewers offer to shrink a page to the printer's margins; a label must come out in its true size (12.2).
    std::string catalog = "<</Type/Catalog/Pages " + reference(pages_root_) +
                          "/ViewerPreferences<</PrintScaling/None/DisplayDocTitle true>>";
    if (!details.language.empty()) catalog += "/Lang" + text_string(details.language);
    catalog += put_page_labels() + structure_.finish() + put_outline();
    catalog += "/Metadata " + reference(file_.put_packed("/Type/Metadata/Subtype/XML", xmp_packet(details)));
    // All colours are sRGB; the profile says so to whoever prints them (ISO 19005-2, 6.2.3 and 6.2.4.3).
    const int intent = file_.put("<</Type/OutputIntent/S/GTS_PDFA1/OutputConditionIdentifier(sRGB)"
                                 "/Info(sRGB, IEC 61966-2-1)/DestOutputProfile " +
                                 reference(file_.put_stream("/N 3", srgb_profile())) + ">>");
    catalog += "/OutputIntents[" + reference(intent) + "]>>";
    const int information = file_.put(information_dictionary(details));
    file_.finish(file_.put(catalog), information);
}

} // namespace dyeleaf
