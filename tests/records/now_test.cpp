#include "records/now.hpp"

#include <catch2/catch.hpp>

#include <regex>

using namespace flapdoor;

TEST_CASE("the time is written as ISO 8601 in whole seconds, and does not run backward")
{
    const std::string before = records::now_utc();
    CHECK(std::regex_match(before, std::regex(R"(20\d\d-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])T([01]\d|2[0-3]):[0-5]\d:[0-5]\dZ)")));
    CHECK(before <= records::now_utc());
}
