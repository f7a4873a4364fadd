// Layout files.
#include "design/read_design.h"
#include "input.h"

using namespace dyeleaf;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    Diagnostics diagnostics;
    if (const auto node = parse_document(as_file(data, size), diagnostics)) {
        static const std::vector<std::string> families{"Inter", "Vollkorn"};
        (void)read_design(*node, {}, families, diagnostics);
        (void)read_style_file(*node, families, diagnostics);
    }
    tell(diagnostics);
    return 0;
}
