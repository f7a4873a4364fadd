// A PDF written page by page: text stays text and can be read aloud, fonts are embedded and cut down to what is used,
// colours are sRGB, boxes say where to cut. The same lists make the same bytes. A part that cannot be made is a
// PaintError or another std::runtime_error; nothing may be added afterwards.
#pragma once

#include "display/display_list.h"
#include "pdf/object_file.h"
#include "pdf/page_painter.h"
#include "pdf/pdf_details.h"
#include "pdf/structure.h"

#include <functional>
#include <string>
#include <vector>

namespace dyeleaf {

class PdfWriter {
  public:
    // `sink` takes the file's bytes as they come, the last of them at the end.
    explicit PdfWriter(ByteSink sink);

    // `describe` is given what of the page is tagged, and returns what the file says of it.
    void page(const DisplayList& list, const std::function<PdfPage(TaggedPage)>& describe);
    void finish(const PdfDetails& details);

  private:
    struct Entry { // of the outline
        std::string title;
        int page = 0;
    };

    int node_for_next_page();
    void put_page_tree();
    std::string put_page_labels();
    std::string put_outline();

    ObjectFile file_;
    PagePainter painter_;
    StructureTree structure_;
    int pages_root_;
    std::vector<std::pair<int, std::string>> nodes_; // of the page tree: number and kids
    std::size_t pages_ = 0;
    std::string labels_;
    std::vector<Entry> entries_;
};

} // namespace dyeleaf
