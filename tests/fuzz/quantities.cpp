// Amounts with their units, bare numbers, money, the weights and lengths of skeins.
#include "english.h"
#include "facts/wording.h"
#include "input.h"
#include "records/read_price.h"
#include "records/read_skein.h"
#include "records/read_values.h"
#include "source/values.h"

using namespace dyeleaf;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    return read_as_value(data, size, [](const Node& node, Diagnostics& diagnostics) {
        (void)is_imperial(node);
        (void)read_whole(node, "skeins", {1, 1000}, diagnostics);
        (void)read_decimal(node, "parts", {0.001, 1000}, diagnostics);
        (void)read_type_size(node, "size", {mm(1), mm(100)}, diagnostics);
        (void)read_resolution(node, "printer", {60, 4800}, diagnostics);
        (void)read_areal_density(node, "density", {per_square_centimetre(0.05), per_square_centimetre(50)},
                                 diagnostics);
        (void)read_yarn_length(node, "length", {mm(1), mm(1e7)}, diagnostics);
        (void)read_bulk_density(node, "weighs", diagnostics);
        (void)read_skein_mass(node, "weight", diagnostics);
        (void)read_skein_length(node, "length", diagnostics);
        (void)read_skein(node, diagnostics);
        if (const auto length = read_length(node, "width", {mm(1), mm(1000)}, diagnostics))
            (void)length_words(english(), *length);
        if (const auto mass = read_mass(node, "weight", {grams(0.01), grams(1e5)}, diagnostics))
            (void)mass_words(english(), *mass);
        if (const auto volume = read_volume(node, "liquor", {millilitres(0.1), millilitres(1e6)}, diagnostics))
            (void)volume_words(english(), *volume);
        if (const auto share = read_percent(node, "depth", {percent(0.0001), percent(20)}, diagnostics))
            (void)percent_words(english(), *share);
        for (const Currency& currency : {Currency{"EUR", 2}, Currency{"JPY", 0}, Currency{}}) {
            if (const auto price = read_price(node, currency, diagnostics))
                (void)price_words(english(), *price, currency);
        }
    });
}
