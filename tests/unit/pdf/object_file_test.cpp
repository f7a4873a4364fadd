#include "pdf/object_file.h"

#include "../paint/outside.h"
#include "pdf/syntax.h"

#include <catch2/catch.hpp>

#include <stdexcept>
#include <string>

using namespace dyeleaf;

namespace {

// Objects enough for several groups, of which the even ones are put first, and a catalog that no page hangs on.
std::string written_in_disorder(int objects) {
    std::string bytes;
    ObjectFile file{[&](std::string_view more) { bytes += more; }};
    const int catalog = file.reserve();
    const int list = file.reserve();
    const int first = file.reserve();
    for (int i = 1; i < objects; ++i)
        file.reserve();
    for (const int start : {0, 1}) {
        for (int i = start; i < objects; i += 2)
            file.put(first + i, "(number " + std::to_string(i) + ")");
    }
    file.put_long(list, [&](const ByteSink& piece) {
        piece("[");
        for (int i = 0; i < objects; ++i)
            piece(reference(first + i) + " ");
        piece("]");
    });
    const int stream = file.put_stream("", "as it was");
    file.put(catalog, "<</Type/Catalog/Pages<</Type/Pages/Count 0/Kids[]>>/All " + reference(list) + "/Stream " +
                          reference(stream) + ">>");
    file.finish(catalog, file.put("<<>>"));
    return bytes;
}

} // namespace

TEST_CASE("objects are found again, in whatever order they are put", "[pdf]") {
    constexpr int objects = 700;
    const auto file = outside::written("disorder.pdf", written_in_disorder(objects));
    const std::string all = outside::output("qpdf --json=1 --json-key=objects " + file.string());
    for (int i = 0; i < objects; ++i) {
        INFO(i);
        REQUIRE(all.find("\"" + std::to_string(i + 3) + " 0 R\": \"number " + std::to_string(i) + "\"") !=
                std::string::npos);
    }
    CHECK(outside::output("qpdf --check " + file.string()).find("No syntax or stream encoding errors") !=
          std::string::npos);
    const std::string list = outside::output("qpdf --show-object=2 " + file.string());
    CHECK(list.starts_with("[ 3 0 R 4 0 R "));
    CHECK(list.find(" 702 0 R ]") != std::string::npos);
}

TEST_CASE("an object that is never put, or put twice, spoils the file", "[pdf]") {
    const auto finish = [](int times) {
        ObjectFile file{[](std::string_view) {}};
        const int one = file.reserve();
        for (int i = 0; i < times; ++i)
            file.put(one, "null");
        const int catalog = file.put("<</Type/Catalog>>");
        file.finish(catalog, file.put("<<>>"));
    };
    CHECK_NOTHROW(finish(1));
    CHECK_THROWS_AS(finish(0), std::runtime_error);
    CHECK_THROWS_AS(finish(2), std::runtime_error);
}
