// Stock files, and the cells of those that are sound.
#include "input.h"
#include "sheets/stock.h"

using namespace dyeleaf;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    Diagnostics diagnostics;
    if (const auto node = parse_document(as_file(data, size), diagnostics)) (void)read_stock(*node, diagnostics);
    tell(diagnostics);
    return 0;
}
