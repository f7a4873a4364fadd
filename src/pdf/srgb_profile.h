// sRGB as an ICC profile, made here so that no file and no library has a say in the bytes.
#pragma once

#include <string>

namespace dyeleaf {

// A display profile of version 4.2 (ICC.1:2004-10, the one that PDF 1.6 names) with three colorants and one curve.
std::string srgb_profile();

} // namespace dyeleaf
