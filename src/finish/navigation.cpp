#include "finish/navigation.h"

namespace dyeleaf {

void add_page_labels(PdfObject catalog, const std::vector<PdfPage>& pages) {
    PdfObject labels = PdfObject::newArray();
    for (std::size_t i = 0; i < pages.size(); ++i) {
        labels.appendItem(pdf_integer(i));
        labels.appendItem(PdfObject::newDictionary({{"/P", pdf_text(pages[i].label)}}));
    }
    catalog.replaceKey("/PageLabels", PdfObject::newDictionary({{"/Nums", labels}})); // ISO 32000-1, 12.4.2
}

void add_outline(QPDF& document, const std::vector<PdfPage>& pages, const std::vector<PdfObject>& objects) {
    PdfObject outline = document.makeIndirectObject(PdfObject::newDictionary({{"/Type", pdf_name("/Outlines")}}));
    std::vector<PdfObject> entries;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        if (pages[i].entry.empty()) continue;
        const PdfObject whole_page = PdfObject::newArray({objects[i], pdf_name("/Fit")});
        entries.push_back(document.makeIndirectObject(PdfObject::newDictionary(
            {{"/Title", pdf_text(pages[i].entry)}, {"/Parent", outline}, {"/Dest", whole_page}})));
    }
    if (entries.empty()) return;
    for (std::size_t i = 1; i < entries.size(); ++i) {
        entries[i].replaceKey("/Prev", entries[i - 1]);
        entries[i - 1].replaceKey("/Next", entries[i]);
    }
    outline.replaceKey("/First", entries.front());
    outline.replaceKey("/Last", entries.back());
    outline.replaceKey("/Count", pdf_integer(entries.size()));
    document.getRoot().replaceKey("/Outlines", outline); // ISO 32000-1, 12.3.3
}

} // namespace dyeleaf
