// The floor under the program's time and size: the same pages drawn by hand on Cairo and Pango, with no layout engine,
// in the fastest way found. See DEVELOPERS.md, "How fast, how large".
#include "bench/floor.h"

#include <cstdlib>
#include <exception>
#include <iostream>
#include <string_view>

int main(int count, char** words) {
    const std::string_view what = count > 1 ? words[1] : "";
    const bool tagged = count == 6 && std::string_view{words[5]} == "--tagged";
    if ((count != 5 && !tagged) || (what != "tags" && what != "list")) {
        std::cerr << "bench_floor tags|list FONTS FILE PDF [--tagged]\n";
        return 2;
    }
    try {
        (what == "tags" ? bench::draw_tags : bench::draw_list)(words[2], words[3], words[4], tagged);
        std::_Exit(0); // the file is whole; what is left is not taken down piece by piece
    } catch (const std::exception& error) {
        std::cerr << error.what() << "\n";
        return 1;
    }
}
