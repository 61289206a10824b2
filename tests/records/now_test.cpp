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

TEST_CASE("today is a date of the calendar, within a day of the time of the meridian")
{
    const std::string here = records::today_here();
    CHECK(std::regex_match(here, std::regex(R"(20\d\d-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01]))")));
    CHECK(here.substr(0, 2) == records::now_utc().substr(0, 2));
}
