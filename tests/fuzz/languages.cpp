// Files of phrases.
#include "input.h"
#include "language/read_language.h"

using namespace dyeleaf;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    Diagnostics diagnostics;
    if (const auto node = parse_document(as_file(data, size), diagnostics))
        (void)read_language(*node, "en", nullptr, diagnostics);
    tell(diagnostics);
    return 0;
}
