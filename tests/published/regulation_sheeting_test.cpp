#include "rules/sheeting.hpp"

#include "plan/raster.hpp"

#include <catch2/catch.hpp>

// Floor sheeting on the plan, 40 CFR 745.85(a)(2)(i)(D): 6 ft beyond what is worked on. Areas worked out by hand; each K
// number is one worked check.

using namespace flapdoor;
using namespace flapdoor::rules;

namespace {

/// A window of 3 ft in the middle of the south wall of a room of that width.
plan::Rect window_in(Length wall) { return {wall * 0.5 - 1.5_ft, 0.0_ft, 3.0_ft, 0.0_ft}; }
plan::Rect room_of(Length width) { return {0.0_ft, 0.0_ft, width, 30.0_ft}; }

double square_feet(Area area) { return area / 1.0_ft2; }

/// Floor no farther than 6 ft from what is worked on, counted in cells of the plan.
double rounded(const plan::Rect& worked, const plan::Rect& floor)
{
    const plan::Raster raster(floor, 0.1_ft);
    return square_feet(raster.cell_area() * static_cast<double>(raster.cells_within(worked, least_reach).size()));
}

}

TEST_CASE("a window in a long wall asks for 15 by 6 ft of sheeting, less with rounded corners ((a)(2)(i)(D))")
{
    const plan::Rect sheet = least_sheeting(window_in(40.0_ft), room_of(40.0_ft));      // K-20
    CHECK(sheet.width / 1.0_ft == Approx(15.0));
    CHECK(sheet.depth / 1.0_ft == Approx(6.0));
    CHECK(square_feet(sheet.area()) == Approx(90.0));
    CHECK(rounded(window_in(40.0_ft), room_of(40.0_ft)) == Approx(74.5).epsilon(0.01));
}

TEST_CASE("walls end the sheeting ((a)(2)(i)(D))")
{
    CHECK(square_feet(least_sheeting(window_in(12.0_ft), room_of(12.0_ft)).area()) == Approx(72.0));    // K-21
}

TEST_CASE("a post in the middle of a floor asks for 13 by 13 ft ((a)(2)(i)(D))")
{
    const plan::Rect floor{0.0_ft, 0.0_ft, 40.0_ft, 40.0_ft};
    const plan::Rect post{20.0_ft, 20.0_ft, 1.0_ft, 1.0_ft};
    CHECK(square_feet(least_sheeting(post, floor).area()) == Approx(169.0));            // K-23
    CHECK(rounded(post, floor) == Approx(138.1).epsilon(0.01));
}

TEST_CASE("a sealed barrier from floor to ceiling ends the sheeting like a wall ((a)(2)(i)(D))")
{
    CHECK_FALSE(is_reach_enough(5.5_ft, 30.0_ft));      // K-24
    CHECK(is_reach_enough(6.0_ft, 30.0_ft));
    CHECK(is_reach_enough(4.0_ft, 4.0_ft));             // K-25
    CHECK_FALSE(is_reach_enough(3.9_ft, 4.0_ft));
    const plan::Rect behind_barrier{0.0_ft, 0.0_ft, 12.0_ft, 4.0_ft};
    CHECK(square_feet(least_sheeting(window_in(12.0_ft), behind_barrier).area()) == Approx(48.0));
}
