// The tree by which a document is read aloud (ISO 32000-1, 14.7 and 14.8): labels, and in them their parts in order.
#pragma once

#include "display/tag.h"
#include "pdf/object_file.h"

#include <deque>
#include <functional>
#include <string>

namespace dyeleaf {

class StructureTree {
  public:
    explicit StructureTree(ObjectFile& file);

    // Writes what `page`, an object, holds by its parts; returns the entries that its dictionary needs for that.
    // `rectangle` gives a place on the page in the file's coordinates: "[0 0 10 10]".
    std::string add_page(int page, const TaggedPage& tagged, const std::function<std::string(Rect)>& rectangle);
    // Returns the entries of the catalog; none where nothing was tagged.
    std::string finish();

  private:
    // The elements of a page's labels, with what its dictionary lists.
    struct OnPage {
        int page = 0;
        const std::function<std::string(Rect)>& rectangle;
        std::size_t marked = 0;    // parts, so far
        std::string owners, links; // of each of them; of those that lead somewhere
    };
    std::string put_parts(int section, const TaggedLabel& label, OnPage& here);
    void put_link(int link, int element, const Tag& part, const std::string& contents, OnPage& here);

    ObjectFile& file_;
    int root_, document_;
    std::deque<int> sections_; // of the document
    std::deque<int> parents_;  // of each page's parts and of each link, by key
};

} // namespace dyeleaf
