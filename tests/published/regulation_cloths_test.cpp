#include "rules/cloths.hpp"

#include "core/insist.hpp"
#include "plan/sections.hpp"

#include <catch2/catch.hpp>

// The cloth check as arithmetic, 40 CFR 745.85(b)(1)(ii). Expected figures worked out by hand; each K number is one worked check.

using namespace flapdoor;
using namespace flapdoor::rules;

TEST_CASE("a floor beyond 40 sq ft is divided into sections of less than 40 sq ft ((b)(1)(ii)(B))")
{
    CHECK(plan::sections_needed(40.0_ft2) == 1);    // K-70
    CHECK(plan::sections_needed(40.5_ft2) == 2);    // K-71
    CHECK(plan::sections_needed(80.0_ft2) == 3);    // K-73: two of exactly 40 would not be less than 40
    CHECK(plan::sections_needed(100.0_ft2) == 3);   // K-74
    CHECK(plan::sections_needed(120.0_ft2) == 4);
    CHECK(plan::sections_needed(121.0_ft2) == 4);
    CHECK(plan::sections_needed(144.0_ft2) == 4);
    CHECK(plan::sections_needed(160.0_ft2) == 5);
}

TEST_CASE("cloths are counted by item: wet once, wet again after a failure, dry after two ((b)(1)(ii)(A), (B))")
{
    // K-75: 12 by 12 ft floor, three sills, one counter of 12 sq ft; everything passes at once.
    const auto items = static_cast<std::size_t>(plan::sections_needed(144.0_ft2) + 3 + plan::sections_needed(12.0_ft2));
    CHECK(count_cloths(std::vector<ItemHistory>(items)) == ClothCount{8, 8, 0});
    CHECK(count_cloths({{1}, {2}, {0}}) == ClothCount{5, 5, 1});
    CHECK(count_cloths({{1, true, true}}) == ClothCount{2, 1, 0});              // a sill's cloth folded to an unused face
    CHECK_THROWS_AS(count_cloths({{1, false, true}}), BrokenPromise);           // K-78: no folding on a floor section
    CHECK(count_cloths({}) == ClothCount{0, 0, 0});                             // K-88: carpet only, nothing to wipe
}

TEST_CASE("the same shade or a lighter one passes ((b)(1)(ii)(A)(1))")
{
    CHECK(passes(Shade::lighter));      // K-79
    CHECK(passes(Shade::same));
    CHECK_FALSE(passes(Shade::darker));
}

TEST_CASE("the dry cloth waits an hour or until dry, the longer ((b)(1)(ii)(A)(3), (B)(2))")
{
    CHECK(earliest_dry_wipe(14.0_h, 14.0_h + 20.0_min) == 15.0_h);                  // K-82
    CHECK(earliest_dry_wipe(14.0_h, 15.0_h + 10.0_min) == 15.0_h + 10.0_min);       // K-83
}
