#include "moving_air.hpp"

#include "core/insist.hpp"
#include "dust/eight_parcels.hpp"
#include "dust/step_table.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <algorithm>
#include <numeric>
#include <vector>

using namespace flapdoor;
using namespace flapdoor::dust;

namespace {

constexpr Diffusivity calm = 0.005_m2ps;

/// 4 m by 1 m by 2.4 m, air in along the west wall and out along the east wall at 0.06 m3/s: 2.5 cm/s.
CloudRoom corridor()
{
    CloudRoom room = still_room(4.0_m, 1.0_m, 2.4_m, 0.1_m);
    std::vector<std::size_t> west;
    std::vector<std::size_t> east;
    for (std::size_t row = 0; row < 10; ++row) west.push_back(row * 40), east.push_back(row * 40 + 39);
    blow(room, west, east, 0.06);
    return room;
}

double mean(const std::vector<float>& values) { return std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size()); }

}

TEST_CASE("dust rides with the air at its speed")
{
    const CloudRoom room = corridor();
    Cloud cloud;
    for (std::uint64_t i = 0; i < 20'000; ++i) cloud.add(1.0F, 0.5F, 1.2F, SizeClass::um_1, i, {{1}, {}});
    advance(cloud, room, alike(motion(40.0_s, Diffusivity{5e-4}, 0.1_m, 2.4_m, {}, {}, 0.5_s, wind(room))), 3, 2);
    CHECK(mean(cloud.x) == Approx(2.0).margin(0.006));      // 40 s at 2.5 cm/s; three standard errors
    CHECK(mean(cloud.y) == Approx(0.5).margin(0.006));
    CHECK(mean(cloud.z) == Approx(1.2).margin(0.006));
}

TEST_CASE("air carries dust over a chest, and lets it down behind")
{
    CloudRoom room = still_room(4.0_m, 1.0_m, 2.4_m, 0.1_m);
    stand(room, 15, 0, 20, 9, 1.2F);
    std::vector<std::size_t> west;
    std::vector<std::size_t> east;
    for (std::size_t row = 0; row < 10; ++row) west.push_back(row * 40), east.push_back(row * 40 + 39);
    blow(room, west, east, 0.12);
    Cloud cloud;
    for (std::uint64_t i = 0; i < 2'000; ++i) cloud.add(1.437F, 0.5F, 0.6F, SizeClass::um_1, i, {{1}, {}});
    // So little stirring that nothing but the air moves it.
    const auto carried_to = [&](Time time) {
        Cloud there = cloud;
        advance(there, room, alike(motion(time, Diffusivity{1e-9}, 0.1_m, 2.4_m, {}, {}, 0.2_s, wind(room))), 3);
        return there;
    };
    const Cloud above = carried_to(6.0_s);      // 1.26 s to the chest at 5 cm/s, then over it at 10 cm/s
    CHECK(mean(above.x) == Approx(1.5 + 0.474).margin(0.015));
    CHECK(mean(above.z) == Approx(1.2 + 0.6 * 0.5).margin(0.01));
    const Cloud behind = carried_to(14.0_s);
    CHECK(mean(behind.x) == Approx(2.1 + 0.337).margin(0.015));
    CHECK(mean(behind.z) == Approx(0.6).margin(0.01));
}

TEST_CASE("what an opening draws out is made up by what drifts in: the air near it keeps its dust")
{
    CloudRoom room = still_room(4.0_m, 3.0_m, 2.4_m, 0.1_m);
    std::vector<std::size_t> west;
    std::vector<std::size_t> outlet;
    for (std::size_t row = 0; row < 30; ++row) west.push_back(row * 40);
    for (std::size_t row = 10; row < 20; ++row)
        for (std::size_t column = 33; column < 40; ++column) outlet.push_back(row * 40 + column);
    const auto left_in_outlet = [&](bool is_still, double& taken) {
        CloudRoom here = room;
        blow(here, west, outlet, 0.1);
        if (is_still) here.flow = {};
        Cloud cloud = scattered(here, 60'000, 4, SizeClass::um_1);
        advance(cloud, here, alike(motion(30.0_s, Diffusivity{2e-4}, 0.1_m, 2.4_m, {}, {}, 0.2_s, is_still ? Speed{} : wind(here))), 5, 2);
        taken = share(cloud, Fate::left);
        std::size_t there = 0;
        for (std::size_t i = 0; i < cloud.count(); ++i) {
            const std::size_t cell = cell_below(here, cloud, i);
            there += cloud.fate[i] == Fate::airborne && std::binary_search(outlet.begin(), outlet.end(), cell);
        }
        return static_cast<double>(there) / (60'000.0 * 70.0 / 1200.0);     // of what was there at the start
    };
    double taken = 0.0;
    CHECK(left_in_outlet(false, taken) == Approx(1.0).margin(0.06));        // three standard errors of 3500 parcels
    CHECK(taken == Approx(0.1 * 30.0 / 28.8).margin(0.004));
    CHECK(left_in_outlet(true, taken) < 0.5);
}

TEST_CASE("strong wind and long steps put nothing through a thin wall, on either path")
{
    CloudRoom straight = still_room(2.0_m, 1.0_m, 1.0_m, 0.1_m);
    stand(straight, 10, 0, 10, 9, straight.ceiling);
    CloudRoom aslant = still_room(1.0_m, 1.0_m, 1.0_m, 0.1_m);
    for (std::size_t i = 0; i < 10; ++i) stand(aslant, i, i, i, i, aslant.ceiling);
    for (CloudRoom* room : {&straight, &aslant}) {
        const std::vector<int> region = regions(*room);
        // Metres a second across each half and against the wall.
        const std::size_t columns = room->raster.columns();
        std::vector<double> sources(room->raster.size(), 0.0);
        sources[room->raster.size() - columns] = 2.0;
        sources[room->raster.size() - columns + 5] = -2.0;
        sources[columns - 1] = 2.0;
        sources[columns - 3] = -2.0;
        room->flow = air::RoomFlow().solve(plan_of(*room), sources);
        REQUIRE(wind(*room) > 5.0_mps);
        // And a flow that does go through the wall, as if somebody had solved it for another room: still nothing may follow.
        CloudRoom gale = *room;
        for (double& flow : gale.flow.east) flow = 0.5;
        for (double& flow : gale.flow.north) flow = -0.5;
        for (const CloudRoom* here : {static_cast<const CloudRoom*>(room), static_cast<const CloudRoom*>(&gale)}) {
            Cloud start = scattered(*here, 20'000, 11);
            for (const Motion& m : {Motion{40, 2.0F, 0.25F, 0.001F, 0.0F}, Motion{40, 0.02F, 0.03F, 0.001F, 0.0F}}) {
                for (const Abreast abreast : {Abreast::one, Abreast::as_many_as_possible}) {
                    Cloud cloud = start;
                    advance(cloud, *here, alike(m), 12, 1, abreast);
                    std::size_t through = 0;
                    std::size_t moved = 0;
                    for (std::size_t i = 0; i < cloud.count(); ++i) {
                        through += region[cell_below(*here, cloud, i)] != region[cell_below(*here, start, i)];
                        moved += cell_below(*here, cloud, i) != cell_below(*here, start, i);
                    }
                    CHECK(through == 0);
                    CHECK(moved > 10'000);
                }
            }
        }
    }
}

TEST_CASE("eight abreast and one at a time give the same bits", "[property]")
{
    if (!can_carry_eight()) WARN("this processor carries one at a time: nothing is compared");
    const bool holds = rc::check([] {
        const auto columns = *rc::gen::inRange<int>(1, 9);
        const auto rows = *rc::gen::inRange<int>(1, 9);
        CloudRoom room = still_room(Length{columns * 0.1}, Length{rows * 0.13}, 1.0_m, 0.1_m);
        room.top = *rc::gen::container<std::vector<float>>(room.raster.size(), rc::gen::element(0.0F, 0.0F, 0.0F, 0.3F, 0.98F, 1.0F));
        room.top[*rc::gen::inRange<std::size_t>(0, room.top.size())] = 0.0F;
        for (float& leaving : room.leaving) leaving = *rc::gen::element(0.0F, 0.0F, 0.0F, 0.4F);
        if (*rc::gen::arbitrary<bool>()) stir(room, *rc::gen::element(0.001, 0.05, 3.0));
        const auto count = *rc::gen::inRange<std::size_t>(0, 60);
        const auto seed = *rc::gen::arbitrary<std::uint64_t>();
        Cloud cloud = scattered(room, count, seed);
        PerClass<Motion> motions;
        for (const SizeClass k : all_classes()) {
            const Time spell = *rc::gen::element(0.3_s, 7.0_s);
            motions[k] = motion(spell, *rc::gen::element(0.0005_m2ps, 0.02_m2ps), 0.1_m, 1.0_m, *rc::gen::element(Speed{}, Speed{1e-4}, Speed{0.01}), *rc::gen::element(Speed{}, Speed{3e-3}),
                                *rc::gen::element(0.05_s, 2.0_s));
            if (*rc::gen::inRange(0, 4) == 0) motions[k].spread *= 9.0F;    // longer steps than motion() would ever make
        }
        for (std::size_t i = 0; i < count; ++i) {
            cloud.size[i] = all_classes()[static_cast<std::size_t>(*rc::gen::inRange(0, 10))];
            cloud.number[i] = *rc::gen::arbitrary<std::uint64_t>();
            cloud.steps[i] = *rc::gen::element(0U, 17U, 0xFFFFFFF0U);
            if (*rc::gen::inRange(0, 5) == 0) cloud.fate[i] = Fate::landed;
        }
        Cloud one = cloud;
        const std::uint64_t made = advance(one, room, motions, seed, 1, Abreast::one);
        RC_ASSERT(advance(cloud, room, motions, seed, 1, Abreast::as_many_as_possible) == made);
        RC_ASSERT(fingerprint(cloud) == fingerprint(one));
        RC_ASSERT(cloud.age == one.age);
    });
    CHECK(holds);
}

TEST_CASE("classes with steps of one length share a table, and a table holds for its room alone")
{
    const CloudRoom room = corridor();
    PerClass<Motion> motions = alike(motion(10.0_s, calm, 0.1_m, 2.4_m, {}, {}, 0.5_s));
    motions[SizeClass::um_160] = motion(10.0_s, calm, 0.1_m, 2.4_m, Speed{1.5}, {}, 0.5_s);
    const StepTable table = step_table(room, motions);
    CHECK(table.cells.size() == 2 * room.raster.size());
    CHECK(table.first[SizeClass::um_80] == 0);
    CHECK(table.first[SizeClass::um_160] == room.raster.size());
    CHECK_FALSE(table.is_still);
    CHECK(step_table(still_room(1.0_m, 1.0_m, 1.0_m, 0.1_m), motions).is_still);
    CloudRoom broken = room;
    broken.flow.north.pop_back();
    CHECK_THROWS_AS(step_table(broken, motions), BrokenPromise);
}

TEST_CASE("steps grow shorter where the air is fast")
{
    const auto dt = [](Speed wind) { return motion(10.0_s, calm, 0.1_m, 2.4_m, {}, {}, 0.5_s, wind).dt; };
    CHECK(dt(Speed{}) == dt(Speed{0.01}));
    CHECK(dt(Speed{1.0}) == Approx(0.1 / 3.0).epsilon(0.01));
}
