// Colours in every notation, reflectance curves and places in photographs among them, and what is made of them.
#include "colour/hue.h"
#include "facts/swatches.h"
#include "input.h"
#include "records/read_values.h"
#include "source/values.h"

using namespace dyeleaf;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    return read_as_value(data, size, [](const Node& node, Diagnostics& diagnostics) {
        (void)read_ink(node, diagnostics);
        auto colour = read_colour(node, "colour", diagnostics);
        if (node.kind == Node::Kind::map) {
            Fields fields{node, "swatch", diagnostics};
            (void)read_colour_source(fields, colour);
            fields.refuse_the_rest();
        }
        if (!colour) return;
        if (auto* photo = std::get_if<Boxed<PhotoColour>>(&colour->value)) (*photo)->reading = PhotoReading{};
        (void)hue_key(lab_of(colour->value));
        (void)to_hex(rgb_of(colour->value));
        (void)is_beyond_print(colour->value);
    });
}
