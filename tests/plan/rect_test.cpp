#include "plan/rect.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;
using namespace flapdoor::plan;

namespace {

constexpr Rect table{1.0_m, 2.0_m, 2.0_m, 1.0_m};

}

TEST_CASE("a rectangle holds its edges")
{
    CHECK(table.contains(Point{1.0_m, 2.0_m}));
    CHECK(table.contains(Point{3.0_m, 3.0_m}));
    CHECK_FALSE(table.contains(Point{3.0001_m, 3.0_m}));
    CHECK(table.contains(table));
    CHECK_FALSE(table.contains(grown(table, 0.01_m)));
    CHECK(table.contains(grown(table, 0.01_m), 0.011_m));
}

TEST_CASE("the way to a rectangle is straight to its side or its corner, and nothing from inside")
{
    CHECK(distance(table, {2.0_m, 2.5_m}) == Length{});
    CHECK(distance(table, {2.0_m, 5.0_m}).si == Approx(2.0));
    CHECK(distance(table, {6.0_m, 7.0_m}).si == Approx(5.0));
}

TEST_CASE("rectangles that only touch do not overlap")
{
    const Rect beside{3.0_m, 2.0_m, 1.0_m, 1.0_m};
    CHECK_FALSE(overlap(table, beside));
    CHECK(intersection(table, beside).area() == Area{});
    const Rect across{2.5_m, 2.5_m, 1.0_m, 5.0_m};
    CHECK(overlap(table, across));
    CHECK(intersection(table, across) == Rect{2.5_m, 2.5_m, 0.5_m, 0.5_m});
    CHECK(intersection(table, {10.0_m, 10.0_m, 1.0_m, 1.0_m}).area() == Area{});
}

TEST_CASE("a rectangle shrinks to nothing, not to less")
{
    const Rect small = grown(table, -0.75_m);
    CHECK(small.width.si == Approx(0.5));
    CHECK(small.depth == Length{});
}
