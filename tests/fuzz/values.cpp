// Single values: colours, dates, periods, amounts, whole numbers, money.
#include "source/values.h"
#include "input.h"
#include "records/read_values.h"

using namespace dyeleaf;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    for (const bool quoted : {false, true}) {
        Diagnostics diagnostics;
        const Node node = as_scalar(data, size, quoted);
        (void)read_colour(node, "colour", diagnostics);
        (void)read_date(node, "dyed", diagnostics);
        (void)read_period(node, "keeps", diagnostics);
        (void)read_ink(node, diagnostics);
        (void)read_text(node, "name", diagnostics);
        (void)read_prose(node, "notes", diagnostics);
        (void)read_yes_no(node, "bleeds", diagnostics);
        (void)read_whole(node, "skeins", {1, 1000}, diagnostics);
        (void)read_decimal(node, "parts", {0.001, 1000}, diagnostics);
        (void)read_length(node, "width", {mm(1), mm(1000)}, diagnostics);
        (void)read_yarn_length(node, "length", {mm(1), mm(1e7)}, diagnostics);
        (void)read_mass(node, "weight", {grams(0.01), grams(1e5)}, diagnostics);
        tell(diagnostics);
    }
    return 0;
}
