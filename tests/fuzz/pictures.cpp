// Picture files of every kind, and in photographs the colours of two rectangles.
#include "photographs/read_photograph.h"
#include "pictures/read_picture.h"
#include "scratch_file.h"

#include <array>

using namespace dyeleaf;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const ScratchFile file{data, size};
    const auto picture = read_picture(file.path());
    const auto* sound = std::get_if<PictureFile>(&picture);
    if (sound == nullptr) return 0;
    const auto shares = [](double from, double to) { return Between<Percent>{percent(from), percent(to)}; };
    const std::array questions = {
        PhotoQuestion{{shares(0, 45), shares(10, 90)}, {shares(55, 100), shares(0, 100)}, percent(18)},
        PhotoQuestion{{Between<int>{0, 3}, Between<int>{1, 2}}, {Between<int>{4, 9}, shares(60, 90)}, percent(90)}};
    (void)read_photograph(*sound, questions);
    return 0;
}
