#include "dust/deposition.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;
using namespace flapdoor::dust;

TEST_CASE("the class speeds stand in for the smooth-room model from 1 um up")
{
    for (const SizeClass size : all_classes()) {
        if (size == SizeClass::um_0_5 || size == SizeClass::chips) continue;
        const DepositionSpeeds simple = deposition_speeds(size, {});
        const DepositionSpeeds smooth = smooth_room_deposition(typical_diameter(size), usual_friction_velocity, {});
        CHECK(simple.floor.si == Approx(smooth.floor.si).epsilon(0.01));
        CHECK(simple.wall >= smooth.wall);
        CHECK(smooth.ceiling.si < 1e-6 * smooth.floor.si);
    }
}

TEST_CASE("walls get dust markedly and ceilings hardly any")
{
    const DepositionSpeeds speeds = deposition_speeds(SizeClass::um_10, {});
    CHECK(speeds.wall / speeds.floor > 0.002);
    CHECK(speeds.wall / speeds.floor < 0.05);
    CHECK(speeds.ceiling.si <= 0.1 * speeds.wall.si);
}

TEST_CASE("a room's loss adds up its surfaces")
{
    const RoomSurfaces room{.floor = 10.0_m2, .wall = 30.0_m2, .ceiling = 10.0_m2, .volume = 25.0_m3};
    const DepositionSpeeds speeds{.floor = Speed{1e-3}, .wall = Speed{1e-5}, .ceiling = Speed{1e-6}};
    CHECK(room_loss_rate(speeds, room).si == Approx((1e-2 + 3e-4 + 1e-5) / 25.0));
}

TEST_CASE("no lived-in room is calmer than a quarter an hour")
{
    CHECK(furnished_loss_rate({}, 1.0).si * 3600.0 == Approx(0.25));
    CHECK(furnished_loss_rate(Rate{1.0 / 3600.0}, 2.5).si * 3600.0 == Approx(2.5));
}
