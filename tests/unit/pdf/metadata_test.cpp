#include "pdf/metadata.h"

#include "pdf/srgb_profile.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace dyeleaf;

TEST_CASE("XMP escapes what XML would take for its own", "[pdf]") {
    const std::string xmp = xmp_packet({"Skein <tags> & more", "Quillmoor", "de"});
    CHECK(xmp.find(">Skein &lt;tags&gt; &amp; more</rdf:li>") != std::string::npos);
    CHECK(xmp.find("Date") == std::string::npos);
    CHECK(xmp_packet({}).find("dc:title") == std::string::npos);
}

TEST_CASE("the sRGB profile is a sound one whose colorants add up to its white", "[pdf]") {
    const std::string profile = srgb_profile();
    const auto number = [&](std::size_t at) {
        std::uint32_t value = 0;
        for (std::size_t i = at; i < at + 4; ++i)
            value = value << 8U | static_cast<unsigned char>(profile.at(i));
        return value;
    };
    CHECK(number(0) == profile.size());
    CHECK(profile.substr(36, 4) == "acsp"); // ICC.1:2004-10, 7.2.9
    CHECK(profile.size() % 4 == 0);
    // D50 as the header states it, in 65536ths (ICC.1:2004-10, 7.2.16): 0.9642, 1, 0.8249.
    CHECK(number(68) == 0xf6d6);
    CHECK(number(72) == 0x10000);
    CHECK(number(76) == 0xd32d);
    const auto place_of = [&](const std::string& tag) { return number(profile.find(tag, 128) + 4); };
    for (std::size_t i = 0; i < 3; ++i) {
        std::uint32_t sum = 0;
        for (const char* tag : {"rXYZ", "gXYZ", "bXYZ"})
            sum += number(place_of(tag) + 8 + i * 4);
        CHECK(std::abs(static_cast<int>(sum) - static_cast<int>(number(68 + i * 4))) <= 2);
    }
}
