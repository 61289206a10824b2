#include "plan/sections.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

using namespace flapdoor;
using namespace flapdoor::plan;

TEST_CASE("one wipe section goes up to and including 40 square feet")
{
    // 40 CFR 745.85(b)(1)(ii)(B).
    CHECK(sections_needed({}) == 0);
    CHECK(sections_needed(0.01_ft2) == 1);
    CHECK(sections_needed(40.0_ft2) == 1);
    CHECK(sections_needed(8.0_ft * 5.0_ft) == 1);   // as a product of measured sides, too
    CHECK(sections_needed(40.01_ft2) == 2);
    CHECK(sections_needed(80.0_ft2) == 3);   // two of 40 sq ft are not less than 40 sq ft
    CHECK(sections_needed(119.0_ft2) == 3);
    CHECK(sections_needed(120.0_ft2) == 4);
}

TEST_CASE("every section of a divided floor is smaller than 40 square feet, and none is spared", "[property]")
{
    const bool holds = rc::check([] {
        const auto hundredths = *rc::gen::inRange<std::int64_t>(1, 200'000);
        const Area floor = 1.0_ft2 * (static_cast<double>(hundredths) / 100.0);
        RC_ASSERT(hundredths_of_square_foot(floor) == hundredths);
        const int sections = sections_needed(floor);
        RC_ASSERT(sections >= 1);
        RC_ASSERT((hundredths <= 4000 ? sections == 1 : hundredths < 4000 * sections));
        RC_ASSERT((sections == 1 || hundredths >= 4000 * (sections - 1)));
    });
    CHECK(holds);
}
