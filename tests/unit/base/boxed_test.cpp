#include "base/boxed.h"

#include <catch2/catch.hpp>

#include <optional>
#include <string>
#include <utility>

using namespace dyeleaf;

TEST_CASE("a boxed value is copied with its box, and takes a pointer's room", "[base]") {
    Boxed<std::string> one{std::string{"sloe"}};
    Boxed<std::string> other = one;
    *other = "haw";
    CHECK(*one == "sloe");
    one = other;
    other->push_back('s');
    CHECK(*one == "haw");
    CHECK(*other == "haws");

    const Boxed<std::string> moved = std::move(other);
    CHECK(moved->size() == 4);
    CHECK_FALSE(Boxed<std::string>{});
    CHECK_FALSE(Boxed<std::string>{std::optional<std::string>{}});
    one = {};
    CHECK_FALSE(one);
    CHECK(sizeof(Boxed<std::string>) == sizeof(void*));
}
