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

std::string StructureTree::add_page(int page, const TaggedPage& tagged,
                                    const std::function<std::string(Rect)>& rectangle) {
    marked_ = 0;
    std::string owners;
    std::string links;
    for (const TaggedLabel& label : tagged)
        add_label(page, label, owners, links, rectangle);
    if (owners.empty()) return {};
    const std::size_t key = keys_++;
    fmt::format_to(std::back_inserter(parents_), "{} {} ", key, reference(file_.put("[" + owners + "]")));
    std::string entries = fmt::format("/StructParents {}/Tabs/S", key);
    if (!links.empty()) entries += "/Annots[" + links + "]";
    return entries;
}

void StructureTree::add_label(int page, const TaggedLabel& label, std::string& owners, std::string& links,
                              const std::function<std::string(Rect)>& rectangle) {
    if (label.parts.empty()) return;
    const int section = file_.reserve();
    std::string elements;
    const std::span<const Tag> all = label.parts;
    for (std::size_t i = 0, count = 0; i < all.size(); i += count, marked_ += count) {
        count = parts_of_element(all.subspan(i));
        const Tag& part = all[i];
        const std::string contents = marks(marked_, count);
        const int element = file_.reserve();
        int owner = element;
        std::string content = contents;
        if (!part.target.empty()) {
            owner = put_link(page, element, part, contents, links, rectangle(part.place));
            content = " " + reference(owner);
        }
        file_.put(element, fmt::format("<</S/{}/P {}/Pg {}/K{}{}>>", part.role == Tag::Role::figure ? "Figure" : "P",
                                       reference(section), reference(page), content, replacement(part)));
        elements += reference(element) + " ";
        for (std::size_t k = 0; k < count; ++k)
            owners += reference(owner) + " ";
    }
    const std::string title = label.title.empty() ? std::string{} : "/T" + text_string(label.title);
    file_.put(section, fmt::format("<</S/Sect/P {}{}/K[{}]>>", reference(document_), title, elements));
    sections_ += reference(section) + " ";
}

// The element that holds the link and what can be clicked on; returns its number.
int StructureTree::put_link(int page, int element, const Tag& part, const std::string& contents, std::string& links,
                            const std::string& rectangle) {
    const int owner = file_.reserve();
    const int link =
        file_.put(fmt::format("<</Type/Annot/Subtype/Link/Rect{}/Border[0 0 0]/F 4/Contents{}/StructParent {}"
                              "/A<</S/URI/URI{}>>>>", // flag 4: printed
                              rectangle, text_string(part.target), keys_, byte_string(part.target)));
    fmt::format_to(std::back_inserter(parents_), "{} {} ", keys_++, reference(owner));
    links += reference(link) + " ";
    const bool several = contents.starts_with('[');
    const std::string kids = several ? contents.substr(1, contents.size() - 2) : contents;
    file_.put(owner, fmt::format("<</S/Link/P {}/Pg {}/K[{} <</Type/OBJR/Obj {}>>]>>", reference(element),
                                 reference(page), kids, reference(link)));
    return owner;
}

std::string StructureTree::finish() {
    file_.put(document_, fmt::format("<</S/Document/P {}/K[{}]>>", reference(root_), sections_));
    file_.put(root_, fmt::format("<</Type/StructTreeRoot/K {}/ParentTree<</Nums[{}]>>/ParentTreeNextKey {}>>",
                                 reference(document_), parents_, keys_));
    return sections_.empty() ? std::string{}
                             : fmt::format("/StructTreeRoot {}/MarkInfo<</Marked true>>", reference(root_));
}

} // namespace dyeleaf
