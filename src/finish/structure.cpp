#include "finish/structure.h"

#include "finish/page_boxes.h"

#include <stdexcept>
#include <utility>

namespace dyeleaf {

namespace {

// The keys are those of ISO 32000-1, 14.7.2 and 14.7.4; the types those of 14.8.4.
class TreeBuilder {
  public:
    TreeBuilder(QPDF& document, std::size_t pages) : document_(document), next_key_(pages) {
        root_ = document.makeIndirectObject(PdfObject::newDictionary({{"/Type", pdf_name("/StructTreeRoot")}}));
        top_ = element("/Document", root_);
        root_.replaceKey("/K", top_);
    }

    void add_page(PdfObject page, std::size_t key, const TaggedPage& tagged) {
        PdfObject owners = PdfObject::newArray(); // of the page's marked contents
        for (const TaggedLabel& label : tagged) {
            if (label.parts.empty()) continue;
            PdfObject section = element("/Sect", top_);
            if (!label.title.empty()) section.replaceKey("/T", pdf_text(label.title));
            for (const Tag& part : label.parts)
                owners.appendItem(add_part(part, section, page, PdfObject::newInteger(owners.getArrayNItems())));
        }
        if (owners.getArrayNItems() == 0) return;
        page.replaceKey("/StructParents", pdf_integer(key));
        page.replaceKey("/Tabs", pdf_name("/S"));
        parents_.push_back({key, document_.makeIndirectObject(owners)});
    }

    void finish() {
        PdfObject numbers = PdfObject::newArray();
        for (const auto* list : {&parents_, &link_parents_}) {
            for (const auto& [key, owner] : *list) {
                numbers.appendItem(pdf_integer(key));
                numbers.appendItem(owner);
            }
        }
        root_.replaceKey("/ParentTree", document_.makeIndirectObject(PdfObject::newDictionary({{"/Nums", numbers}})));
        root_.replaceKey("/ParentTreeNextKey", pdf_integer(next_key_));
        PdfObject catalog = document_.getRoot();
        catalog.replaceKey("/StructTreeRoot", root_);
        catalog.replaceKey("/MarkInfo", PdfObject::newDictionary({{"/Marked", PdfObject::newBool(true)}}));
    }

  private:
    PdfObject element(const std::string& type, PdfObject parent) {
        PdfObject made =
            document_.makeIndirectObject(PdfObject::newDictionary({{"/S", pdf_name(type)}, {"/P", parent}}));
        if (type == "/Document") return made;
        if (!parent.hasKey("/K")) parent.replaceKey("/K", PdfObject::newArray());
        parent.getKey("/K").appendItem(made);
        return made;
    }

    // Returns the element that owns the marked content.
    PdfObject add_part(const Tag& part, const PdfObject& section, PdfObject page, const PdfObject& content) {
        if (part.joined && last_.isDictionary()) {
            PdfObject contents = last_.getKey("/K");
            if (!contents.isArray()) contents = PdfObject::newArray({contents});
            contents.appendItem(content);
            last_.replaceKey("/K", contents);
            return last_;
        }
        PdfObject made = element(type_of(part.role), section);
        if (!part.words.empty() && !part.spelled)
            made.replaceKey(part.role == Tag::Role::figure ? "/Alt" : "/ActualText", pdf_text(part.words));
        if (!part.target.empty()) {
            made = element("/Link", made);
            made.replaceKey("/K", PdfObject::newArray({content, add_link(part, made, page)}));
        } else {
            made.replaceKey("/K", content);
        }
        made.replaceKey("/Pg", page);
        last_ = made;
        return made;
    }

    // Returns the reference by which the link's element holds it.
    PdfObject add_link(const Tag& part, const PdfObject& owner, PdfObject page) {
        const PdfObject action =
            PdfObject::newDictionary({{"/S", pdf_name("/URI")}, {"/URI", PdfObject::newString(part.target)}});
        PdfObject link = document_.makeIndirectObject(PdfObject::newDictionary(
            {{"/Type", pdf_name("/Annot")},
             {"/Subtype", pdf_name("/Link")},
             {"/Rect", on_pdf_page(page, part.place)},
             {"/Border", PdfObject::newArray({pdf_integer(0), pdf_integer(0), pdf_integer(0)})},
             {"/F", pdf_integer(4)}, // printed
             {"/Contents", pdf_text(part.target)},
             {"/StructParent", pdf_integer(next_key_)},
             {"/A", action}}));
        link_parents_.push_back({next_key_++, owner});
        if (!page.hasKey("/Annots")) page.replaceKey("/Annots", PdfObject::newArray());
        page.getKey("/Annots").appendItem(link);
        return PdfObject::newDictionary({{"/Type", pdf_name("/OBJR")}, {"/Obj", link}});
    }

    static std::string type_of(Tag::Role role) { return role == Tag::Role::figure ? "/Figure" : "/P"; }

    QPDF& document_;
    PdfObject root_, top_;
    PdfObject last_ = PdfObject::newNull(); // that owns content
    std::size_t next_key_;                  // of the parent tree: pages first, links after them
    std::vector<std::pair<std::size_t, PdfObject>> parents_, link_parents_;
};

std::size_t parts_in(const std::vector<TaggedPage>& tagged) {
    std::size_t count = 0;
    for (const TaggedPage& page : tagged) {
        for (const TaggedLabel& label : page)
            count += label.parts.size();
    }
    return count;
}

} // namespace

void add_structure(QPDF& document, const std::vector<PdfObject>& pages, const std::vector<TaggedPage>& tagged) {
    PdfObject painted = document.getRoot().getKey("/StructTreeRoot");
    PdfObject parts = painted.isDictionary() ? painted.getKey("/K") : PdfObject::newNull();
    const auto found = parts.isArray() ? static_cast<std::size_t>(parts.getArrayNItems()) : parts.isNull() ? 0U : 1U;
    if (found != parts_in(tagged)) throw std::runtime_error("its parts cannot be told apart");
    if (found == 0) return;
    TreeBuilder tree{document, pages.size()};
    for (std::size_t i = 0; i < pages.size(); ++i)
        tree.add_page(pages[i], i, tagged[i]);
    tree.finish();
}

} // namespace dyeleaf
