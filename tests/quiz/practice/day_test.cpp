#include "quiz/practice/day.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

namespace flapdoor::quiz {

TEST_CASE("dates are days that a calendar has")
{
    CHECK(parse_day("1970-01-01")->number == 0);
    CHECK(parse_day("2000-03-01")->number == 11017);    // 30 years, 7 leap days, January and the February of a leap year
    CHECK(*parse_day("2024-02-29") + 1 == *parse_day("2024-03-01"));
    CHECK(text_of(*parse_day("2026-12-06")) == "2026-12-06");
    for (const char* wrong : {"", "2026-12-6", "2026-13-01", "2026-02-29", "2026-00-10", "2026-12-00", "26-12-06", "2026/12/06", "2026-12-06T00", "+026-12-06", "2026-1 -06", "1969-12-31", "2200-01-01"}) {
        INFO(wrong);
        CHECK_FALSE(parse_day(wrong));
    }
}

TEST_CASE("a date written is the date read", "[property]")
{
    CHECK(rc::check([] {
        const Day day{*rc::gen::inRange(0, 84000)};
        RC_ASSERT(parse_day(text_of(day)) == day);
    }));
}

}
