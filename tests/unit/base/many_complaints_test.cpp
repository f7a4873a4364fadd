// A file gone wrong gives more complaints than anybody reads.
#include "base/diagnostic.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

TEST_CASE("a hundred thousand complaints are counted, and the first of them kept", "[base]") {
    const auto file = std::make_shared<const SourceFile>(SourceFile{"a.yaml", "x\n"});
    Diagnostics diagnostics;
    for (int i = 1; i <= 100'000; ++i)
        diagnostics.error({file, i, 1, 1}, "wrong");
    diagnostics.warning({file, 1, 1, 1}, "odd");
    CHECK(diagnostics.errors() == 100'000);
    CHECK(diagnostics.warnings() == 1);
    const auto shown = diagnostics.sorted();
    REQUIRE(shown.size() == Diagnostics::most + 2);
    CHECK(shown.front().spot.line == 1);
    CHECK(shown.back().message == "… and 99000 more errors");
    CHECK(shown.back().severity == Severity::error);
}
