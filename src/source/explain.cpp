#include "source/explain.h"

#include <yaml-cpp/exceptions.h>

namespace dyeleaf {

Explanation explain(std::string_view complaint) {
    namespace said = YAML::ErrorMsg;
    const auto is = [&](std::string_view known) { return complaint == known; };
    if (is(said::MAP_VALUE)) {
        return {"a colon stands where none can",
                R"(a text that has a colon in it needs quotes, like "Blue: the second try"; else check that the line)"
                " starts as far left as its neighbours"};
    }
    if (is(said::END_OF_MAP) || is(said::BLOCK_ENTRY) || is(said::END_OF_SEQ) || is(said::MAP_KEY)) {
        return {"this line does not belong where it stands",
                "lines of one list or one record start equally far left; indent it like its neighbours"};
    }
    if (is(said::END_OF_MAP_FLOW)) {
        return {"a { without its }, or a comma is missing", "close it, and put a comma between two entries"};
    }
    if (is(said::END_OF_SEQ_FLOW)) {
        return {"a [ without its ], or a comma is missing", "close it, and put a comma between two entries"};
    }
    if (is(said::FLOW_END)) return {"a closing bracket without its opening one", "take it out, or open it before"};
    if (is(said::EOF_IN_SCALAR) || is(said::DOC_IN_SCALAR)) {
        return {"a quotation mark is opened and never closed", "close it at the end of its text"};
    }
    if (is(said::UNKNOWN_TOKEN) || is(said::CHAR_IN_SCALAR) || is(said::CHAR_IN_ALIAS) || is(said::CHAR_IN_ANCHOR) ||
        is(said::ALIAS_NOT_FOUND) || is(said::ANCHOR_NOT_FOUND)) {
        return {"this cannot be read here", R"(a text that starts with % @ ` & or * needs quotes, like "@home")"};
    }
    if (is(said::INVALID_ESCAPE) || is(said::INVALID_HEX) || is(said::INVALID_UNICODE) ||
        complaint.starts_with(said::INVALID_ESCAPE)) {
        return {"a backslash is followed by something unknown", "write \\\\ for one backslash, or use 'single quotes'"};
    }
    if (is(said::BAD_FILE)) return {"this is nested too deeply", "records need no more than a few levels"};
    return {"this cannot be read", "compare it with an example file, character by character"};
}

} // namespace dyeleaf
