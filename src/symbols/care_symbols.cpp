// Drawn by us from the geometry in words: tub, triangle, square, iron and circle, with bars, dots, lines and crosses,
// as ISO 3758:2023 describes them. The symbols are protected marks in some countries; whoever prints them there needs a
// licence.
#include "symbols/care_symbols.h"

#include "symbols/care_groups.h"

#include <iterator>

namespace dyeleaf {

std::vector<NamedDrawing> care_symbols() {
    std::vector<NamedDrawing> all;
    for (auto group : {care::wash_symbols(), care::bleach_symbols(), care::dry_symbols(), care::iron_symbols(),
                       care::professional_symbols()})
        all.insert(all.end(), std::make_move_iterator(group.begin()), std::make_move_iterator(group.end()));
    return all;
}

} // namespace dyeleaf
