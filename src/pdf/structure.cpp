#include "pdf/structure.h"

#include "pdf/syntax.h"

#include <fmt/format.h>

#include <iterator>
#include <span>

namespace dyeleaf {

namespace {

// The parts that one element holds: a first one, and those that go on with it.
std::size_t parts_of_element(std::span<const Tag> parts) {
    std::size_t count = 1;
    while (count < parts.size() && parts[count].joined)
        ++count;
    return count;
}

// The numbers of marked contents: "3", or "[3 4]".
std::string marks(std::size_t first, std::size_t count) {
    if (count == 1) return " " + std::to_string(first);
    std::string text = "[";
    for (std::size_t i = 0; i < count; ++i)
        text += std::to_string(first + i) + " ";
    return text + "]";
}

// What is read in a part's place.
std::string replacement(const Tag& part) {
    if (part.words.empty() || part.spelled) return {};
    return (part.role == Tag::Role::figure ? "/Alt" : "/ActualText") + text_string(part.words);
}

} // namespace

StructureTree::StructureTree(ObjectFile& file) : file_(file), root_(file.reserve()), document_(file.reserve()) {}

// Numbers are taken in the order in which the objects are put, since the file keeps a series of such as one.
std::string StructureTree::add_page(int page, const TaggedPage& tagged,
                                    const std::function<std::string(Rect)>& rectangle) {
    OnPage here{page, rectangle, 0, {}, {}};
    std::vector<int> sections;
    for (const TaggedLabel& label : tagged) {
        if (!label.parts.empty()) sections.push_back(file_.reserve());
    }
    if (sections.empty()) return {};
    std::vector<std::string> values;
    for (const TaggedLabel& label : tagged) {
        if (!label.parts.empty()) values.push_back(put_parts(sections[values.size()], label, here));
    }
    for (std::size_t i = 0; i < sections.size(); ++i)
        file_.put(sections[i], values[i]);
    sections_.insert(sections_.end(), sections.begin(), sections.end());

    std::string entries = fmt::format("/StructParents {}/Tabs/S", parents_.size());
    parents_.push_back(file_.put("[" + here.owners + "]"));
    if (!here.links.empty()) entries += "/Annots[" + here.links + "]";
    return entries;
}

// Puts a label's elements; returns its section, that holds them.
std::string StructureTree::put_parts(int section, const TaggedLabel& label, OnPage& here) {
    std::string elements;
    const std::span<const Tag> all = label.parts;
    for (std::size_t i = 0, count = 0; i < all.size(); i += count, here.marked += count) {
        count = parts_of_element(all.subspan(i));
        const Tag& part = all[i];
        const std::string contents = marks(here.marked, count);
        const int element = file_.reserve();
        const int link = part.target.empty() ? 0 : file_.reserve();
        const int owner = link == 0 ? element : link;
        file_.put(element, fmt::format("<</S/{}/P {}/Pg {}/K{}{}>>", part.role == Tag::Role::figure ? "Figure" : "P",
                                       reference(section), reference(here.page),
                                       link == 0 ? contents : " " + reference(link), replacement(part)));
        if (link != 0) put_link(link, element, part, contents, here);
        elements += reference(element) + " ";
        for (std::size_t k = 0; k < count; ++k)
            here.owners += reference(owner) + " ";
    }
    const std::string title = label.title.empty() ? std::string{} : "/T" + text_string(label.title);
    return fmt::format("<</S/Sect/P {}{}/K[{}]>>", reference(document_), title, elements);
}

// The link inside an element, and what can be clicked on.
void StructureTree::put_link(int link, int element, const Tag& part, const std::string& contents, OnPage& here) {
    const int area = file_.reserve();
    const bool several = contents.starts_with('[');
    const std::string kids = several ? contents.substr(1, contents.size() - 2) : contents;
    file_.put(link, fmt::format("<</S/Link/P {}/Pg {}/K[{} <</Type/OBJR/Obj {}>>]>>", reference(element),
                                reference(here.page), kids, reference(area)));
    file_.put(area, fmt::format("<</Type/Annot/Subtype/Link/Rect{}/Border[0 0 0]/F 4/Contents{}/StructParent {}"
                                "/A<</S/URI/URI{}>>>>", // flag 4: printed
                                here.rectangle(part.place), text_string(part.target), parents_.size(),
                                byte_string(part.target)));
    parents_.push_back(link);
    here.links += reference(area) + " ";
}

std::string StructureTree::finish() {
    file_.put_long(document_, [&](const ByteSink& piece) {
        piece(fmt::format("<</S/Document/P {}/K[", reference(root_)));
        for (const int section : sections_)
            piece(reference(section) + " ");
        piece("]>>");
    });
    file_.put_long(root_, [&](const ByteSink& piece) {
        piece(fmt::format("<</Type/StructTreeRoot/K {}/ParentTree<</Nums[", reference(document_)));
        for (std::size_t key = 0; key < parents_.size(); ++key)
            piece(fmt::format("{} {} ", key, reference(parents_[key])));
        piece(fmt::format("]>>/ParentTreeNextKey {}>>", parents_.size()));
    });
    return sections_.empty() ? std::string{}
                             : fmt::format("/StructTreeRoot {}/MarkInfo<</Marked true>>", reference(root_));
}

} // namespace dyeleaf
