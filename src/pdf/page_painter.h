// Display lists become the operators of pages and forms.
#pragma once

#include "display/display_list.h"
#include "pdf/canvas.h"
#include "pdf/fonts.h"
#include "pdf/images.h"
#include "pdf/object_file.h"

#include <map>
#include <memory>
#include <optional>
#include <string>

namespace dyeleaf {

struct PageContent {
    std::string operators;
    Resources resources;
    TaggedPage tagged; // the n-th part is the page's n-th marked content
};

class PagePainter {
  public:
    explicit PagePainter(ObjectFile& file) : file_(file), images_(file) {}

    PageContent paint(const DisplayList& list);
    // Once all pages are painted.
    void write_fonts() const { fonts_.write(file_); }

  private:
    void draw(const DisplayList& list);
    void draw_item(const FillPath& fill);
    void draw_item(const StrokePath& stroke);
    void draw_item(const DrawRun& draw);
    void draw_item(const DrawPicture& draw);
    void draw_item(const Group& group);
    void draw_item(const BeginTag& begin);
    void draw_item(const EndTag& end);
    void draw_form(int form, const Group& group);
    void fill_on_dots(const FillPath& fill);
    void begin_ink();
    void end_decoration();

    // A list shown for the second time becomes a form; 0: it is drawn anew.
    int form_of(const std::shared_ptr<const DisplayList>& list);
    int put_form(const DisplayList& list);
    void forget_unused_forms();

    struct Form {
        std::weak_ptr<const DisplayList> list;
        int object = 0;
    };

    ObjectFile& file_;
    Fonts fonts_;
    Images images_;
    std::map<const DisplayList*, Form> forms_;

    Canvas canvas_; // of the page, or of the form that is drawn
    TaggedPage tagged_;
    std::size_t parts_ = 0;      // of the page so far
    std::optional<Tag> part_;    // that is open
    bool in_decoration_ = false; // ink outside all parts is marked as that (ISO 32000-1, 14.8.2.2)
    bool in_form_ = false;       // what is shown often cannot be marked inside: it stands for more than one part
};

} // namespace dyeleaf
