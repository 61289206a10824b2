#include "plan/raster.hpp"

#include "core/insist.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <algorithm>

using namespace flapdoor;
using namespace flapdoor::plan;

TEST_CASE("cells fill the rectangle exactly, numbered from the south-west corner row by row")
{
    const Raster raster({1.0_m, 2.0_m, 1.04_m, 0.5_m}, 0.1_m);
    CHECK(raster.columns() == 10);
    CHECK(raster.rows() == 5);
    CHECK((raster.cell_width() * 10.0).si == Approx(1.04));
    CHECK((raster.cell_area() * 50.0).si == Approx(0.52));
    CHECK(raster.cell_at({1.05_m, 2.05_m}) == 0);
    CHECK(raster.cell_at({2.03_m, 2.05_m}) == 9);
    CHECK(raster.cell_at({1.05_m, 2.15_m}) == 10);
    CHECK(raster.cell_at({2.03_m, 2.45_m}) == 49);
    CHECK(raster.column(13) == 3);
    CHECK(raster.row(13) == 1);
}

TEST_CASE("a point outside counts to the nearest cell")
{
    const Raster raster({{}, {}, 1.0_m, 1.0_m}, 0.5_m);
    CHECK(raster.cell_at({-5.0_m, -5.0_m}) == 0);
    CHECK(raster.cell_at({9.0_m, -5.0_m}) == 1);
    CHECK(raster.cell_at({1.0_m, 1.0_m}) == 3);
}

TEST_CASE("the center of a cell is in that cell", "[property]")
{
    const bool holds = rc::check([] {
        const Rect rect{Length{*rc::gen::inRange(-500, 500) * 0.01}, Length{*rc::gen::inRange(-500, 500) * 0.01}, Length{*rc::gen::inRange(1, 900) * 0.01},
                        Length{*rc::gen::inRange(1, 900) * 0.01}};
        const Raster raster(rect, Length{*rc::gen::inRange(5, 60) * 0.01});
        const auto cell = *rc::gen::inRange<std::size_t>(0, raster.size());
        RC_ASSERT(raster.cell_at(raster.center(cell)) == cell);
        RC_ASSERT(rect.contains(raster.center(cell)));
    });
    CHECK(holds);
}

TEST_CASE("cells of a part and cells within reach come in cell order")
{
    const Raster raster({{}, {}, 1.0_m, 1.0_m}, 0.1_m);
    CHECK(raster.cells_in({{}, {}, 0.2_m, 0.2_m}) == std::vector<std::size_t>{0, 1, 10, 11});
    CHECK(raster.cells_in({2.0_m, 2.0_m, 1.0_m, 1.0_m}).empty());
    const std::vector<std::size_t> near = raster.cells_within({{}, {}, 0.1_m, 0.1_m}, 0.06_m);
    CHECK(near == std::vector<std::size_t>{0, 1, 10});
    CHECK(raster.cells_within(raster.rect(), {}).size() == raster.size());
}

TEST_CASE("a raster covers an area, and not one beyond all bounds")
{
    CHECK_THROWS_AS(Raster({{}, {}, {}, 1.0_m}, 0.1_m), BrokenPromise);
    CHECK_THROWS_AS(Raster({{}, {}, 1.0_m, 1.0_m}, {}), BrokenPromise);
    CHECK_THROWS_AS(Raster({{}, {}, 1000.0_m, 1000.0_m}, 0.1_m), BrokenPromise);
}
