// Words on a sheet that is drawn, not laid out: short paragraphs at given places.
#pragma once

#include "display/display_list.h"
#include "text/typesetter.h"

#include <string>

namespace dyeleaf {

struct Type {
    Length size;
    int weight = 400;
    double leading = 1.35; // of the size, baseline to baseline
};

enum class Against { left, middle, right }; // of `at`

class Writing {
  public:
    Writing(DisplayList& sheet, const Typesetter& typesetter) : sheet_(&sheet), typesetter_(&typesetter) {}

    // A paragraph below `at`, its lines no wider than `width`; returns how high it is.
    Length paragraph(const std::string& text, const Type& type, Point at, Length width,
                     Against against = Against::left);
    // One line on its baseline, as decoration: figures of a scale are not read aloud.
    void figure(const std::string& text, const Type& type, Point baseline, Against against);
    [[nodiscard]] Length width_of(const std::string& text, const Type& type) const;
    [[nodiscard]] Length cap_height(const Type& type) const;

  private:
    void line(const TextLine& line, const Type& type, Point baseline, Against against);

    DisplayList* sheet_;
    const Typesetter* typesetter_;
};

} // namespace dyeleaf
