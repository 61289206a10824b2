#include "core/insist.hpp"

#include <catch2/catch.hpp>

#include <string>

using namespace flapdoor;

TEST_CASE("a broken promise stops the run and says which and where, in every build")
{
    const int line = __LINE__ + 2;
    try {
        insist(1 > 2, "one is more than two");
        FAIL("insist let a false promise pass");
    }
    catch (const BrokenPromise& broken) {
        CHECK(std::string(broken.what()).find("one is more than two") != std::string::npos);
        CHECK(std::string(broken.what()).find("insist_test.cpp:" + std::to_string(line) + ":") != std::string::npos);
    }
}

TEST_CASE("a kept promise is silent")
{
    CHECK_NOTHROW(insist(2 > 1, "two is more than one"));
}
