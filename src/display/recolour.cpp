#include "display/recolour.h"

#include "base/overloaded.h"

namespace dyeleaf {

DisplayList recoloured(const DisplayList& list, const std::function<Rgb(Rgb)>& colour_for) {
    DisplayList result = list;
    for (DisplayItem& item : result.items) {
        std::visit(Overloaded{
                       [](DrawPicture&) {},
                       [&](Group& group) {
                           group.list = std::make_shared<const DisplayList>(recoloured(*group.list, colour_for));
                       },
                       [](BeginTag&) {},
                       [](EndTag&) {},
                       [&](auto& inked) { inked.colour = colour_for(inked.colour); },
                   },
                   item);
    }
    return result;
}

} // namespace dyeleaf
