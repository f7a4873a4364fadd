// The two kinds of pages that the floor draws.
#pragma once

#include "bench/canvas.h"

namespace bench {

// The benchmark's tags, nine to a page, by hand: `tags` is the file that studio.py writes beside its studio.
void draw_tags(const std::string& fonts, const std::string& tags, const std::string& out, bool tagged);

// The pages of a list as drawing_list.cpp writes it.
void draw_list(const std::string& fonts, const std::string& list, const std::string& out, bool tagged);

} // namespace bench
