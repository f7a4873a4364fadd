// Picture files of every kind.
#include "pictures/read_picture.h"

#include <cstddef>
#include <cstdint>
#include <string>

using namespace dyeleaf;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    (void)read_picture(std::string(data, data + size));
    return 0;
}
