#include "colour/oklab.h"

#include "colour/matrix.h"
#include "colour/xyz.h"

#include <cmath>

namespace dyeleaf {

namespace {

// From XYZ relative to D65, and back: CSS Color 4, section "Sample code for color conversions".
constexpr Matrix xyz_to_lms{{{0.8190224379967030, 0.3619062600528904, -0.1288737815209879},
                             {0.0329836539323885, 0.9292868615863434, 0.0361446663506424},
                             {0.0481771893596242, 0.2642395317527308, 0.6335478284694309}}};
constexpr Matrix lms_to_oklab{{{0.2104542683093140, 0.7936177747023054, -0.0040720430116193},
                               {1.9779985324311684, -2.4285922420485799, 0.4505937096174110},
                               {0.0259040424655478, 0.7827717124575296, -0.8086757549230774}}};
constexpr Matrix lms_to_xyz{{{1.2268798758459243, -0.5578149944602171, 0.2813910456659647},
                             {-0.0405757452148008, 1.1122868032803170, -0.0717110580655164},
                             {-0.0763729366746601, -0.4214933324022432, 1.5869240198367816}}};
constexpr Matrix oklab_to_lms{{{1.0, 0.3963377773761749, 0.2158037573099136},
                               {1.0, -0.1055613458156586, -0.0638541728258133},
                               {1.0, -0.0894841775298119, -1.2914855480194092}}};

} // namespace

Oklab to_oklab(Lab colour) {
    const Xyz d65 = adapted(to_xyz(colour), white_d50, white_d65);
    Triple lms = xyz_to_lms * Triple{d65.x, d65.y, d65.z};
    for (double& response : lms)
        response = std::cbrt(response);
    const Triple lab = lms_to_oklab * lms;
    return {lab[0], lab[1], lab[2]};
}

Lab to_lab(Oklab colour) {
    Triple lms = oklab_to_lms * Triple{colour.lightness, colour.a, colour.b};
    for (double& response : lms)
        response = response * response * response;
    const Triple d65 = lms_to_xyz * lms;
    return to_lab(adapted({d65[0], d65[1], d65[2]}, white_d65, white_d50));
}

} // namespace dyeleaf
