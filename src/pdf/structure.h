// The tree by which a document is read aloud (ISO 32000-1, 14.7 and 14.8): labels, and in them their parts in order.
#pragma once

#include "display/tag.h"
#include "pdf/object_file.h"

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
    void add_label(int page, const TaggedLabel& label, std::string& owners, std::string& links,
                   const std::function<std::string(Rect)>& rectangle);
    int put_link(int page, int element, const Tag& part, const std::string& contents, std::string& links,
                 const std::string& rectangle);

    ObjectFile& file_;
    int root_, document_;
    std::string sections_; // of the document
    std::string parents_;  // of each page's parts and of each link, by key
    std::size_t keys_ = 0;
    std::size_t marked_ = 0; // parts of the page, so far
};

} // namespace dyeleaf
