// What a part of a drawing is to somebody who hears it read instead of seeing it.
#pragma once

#include "base/geometry.h"

#include <string>
#include <vector>

namespace dyeleaf {

struct Tag {
    enum class Role {
        paragraph, // its text is what it says
        figure,    // a drawing, with words in its place
        replica,   // a whole label again, with all its words in its place
    };
    Role role = Role::paragraph;
    std::string words;    // what is read in its place; empty for a paragraph whose text says it
    std::string target;   // of a link: "mailto:wool@quillmoor.example"; empty: none
    Rect place;           // where a link can be followed
    bool spelled = false; // its letters stand on an arc: who puts words together by places on the page needs `words`
    bool joined = false;  // it goes on with the part before it
};

// The tagged parts of one label, in the order in which they are read; their places are on the page.
struct TaggedLabel {
    std::string title;
    std::vector<Tag> parts;
};
using TaggedPage = std::vector<TaggedLabel>;

} // namespace dyeleaf
