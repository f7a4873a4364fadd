// What ink there is to print with, and how freely.
#pragma once

namespace dyeleaf {

struct Ink {
    bool mono = false;    // black alone
    bool sparing = false; // outlines and patterns in place of solid colour
};

} // namespace dyeleaf
