#include "air/duct.hpp"
#include "air/filter.hpp"
#include "air/passage.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;
using namespace flapdoor::air;

TEST_CASE("coarse dust drops out in a duct and fine dust rides on")
{
    const Area floor{3.0};
    CHECK(duct_settled_share(Speed{0.25}, floor, open_return) > 0.99);
    CHECK(duct_settled_share(Speed{3.5e-5}, floor, open_return) == Approx(3.5e-5 * 3.0 / open_return.si).epsilon(0.01));
    CHECK(duct_settled_share({}, floor, open_return) == 0.0);
}

TEST_CASE("a better filter catches more of every size")
{
    for (const double um : {0.4, 0.7, 1.5, 2.9, 3.0, 7.0, 50.0}) {
        const Length size = um * 1.0_um;
        CHECK(filter_efficiency(FilterGrade::none, size) == 0.0);
        CHECK(filter_efficiency(FilterGrade::merv_8, size) < filter_efficiency(FilterGrade::merv_13, size));
        CHECK(filter_efficiency(FilterGrade::merv_13, size) < filter_efficiency(FilterGrade::hepa, size));
    }
    CHECK(filter_efficiency(FilterGrade::merv_8, 5.0_um) == 0.70);
    CHECK(filter_efficiency(FilterGrade::merv_8, 2.0_um) == 0.20);
}

TEST_CASE("inflow shelters a passage and outflow does not")
{
    CHECK(passage_volume(flap_passage, Speed{-0.2}) == flap_passage);
    CHECK(passage_volume(flap_passage, sheltering_speed).si == Approx(0.9 / 2.718281828));
    const Speed hundred_liters = AirFlow{0.1} / 1.9_m2;
    CHECK(passage_volume(flap_passage, hundred_liters) < flap_passage * 0.7);   // 100 L/s cuts it by 30 % or more
}
