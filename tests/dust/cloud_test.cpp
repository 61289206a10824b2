#include "moving_air.hpp"

#include "core/insist.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numeric>
#include <tuple>
#include <vector>

using namespace flapdoor;
using namespace flapdoor::dust;

namespace {

constexpr Diffusivity stirred = 0.02_m2ps;

/// A furnished work room with an opening, sticking walls and dust of three sizes: every fate is met.
struct Scene {
    CloudRoom room = still_room(3.0_m, 2.4_m, 2.4_m, 0.1_m);
    PerClass<Motion> motions;
    Cloud cloud;

    explicit Scene(std::size_t parcels)
    {
        stand(room, 5, 5, 9, 9, 0.8F);
        stand(room, 18, 0, 18, 15, room.ceiling);
        for (std::size_t row = 18; row < 22; ++row) room.leaving[row * room.raster.columns() + 29] = 0.7F;
        const auto at = [&](SizeClass k, double settling) {
            motions[k] = motion(20.0_s, stirred, 0.1_m, 2.4_m, Speed{settling}, Speed{3e-4}, 0.1_s);
        };
        at(SizeClass::um_1, 7e-5);
        at(SizeClass::um_10, 6e-3);
        at(SizeClass::um_80, 2e-1);
        cloud = scattered(room, parcels, 5);
        for (std::size_t i = 0; i < parcels; ++i) cloud.size[i] = std::array{SizeClass::um_1, SizeClass::um_10, SizeClass::um_80}[i % 3];
    }
};

using Bits = std::tuple<float, float, float, Fate, std::uint32_t, float>;

std::map<std::uint64_t, Bits> by_number(const Cloud& cloud)
{
    std::map<std::uint64_t, Bits> parcels;
    for (std::size_t i = 0; i < cloud.count(); ++i) parcels[cloud.number[i]] = {cloud.x[i], cloud.y[i], cloud.z[i], cloud.fate[i], cloud.steps[i], cloud.age[i]};
    return parcels;
}

}

TEST_CASE("no parcel jumps a wall or ends inside a dresser", "[property]")
{
    const bool holds = rc::check([] {
        const auto columns = *rc::gen::inRange<int>(2, 9);
        const auto rows = *rc::gen::inRange<int>(2, 9);
        CloudRoom room = still_room(Length{columns * 0.1}, Length{rows * 0.1}, 1.0_m, 0.1_m);
        const auto heights = *rc::gen::container<std::vector<float>>(room.raster.size(), rc::gen::element(0.0F, 0.0F, 0.0F, 0.3F, 0.98F, 1.0F));
        room.top = heights;
        room.top[*rc::gen::inRange<std::size_t>(0, heights.size())] = 0.0F;   // somewhere there is air
        const auto seed = *rc::gen::arbitrary<std::uint64_t>();
        Cloud cloud = scattered(room, 400, seed);
        const std::vector<int> region = regions(room);
        std::vector<int> started;
        for (std::size_t i = 0; i < cloud.count(); ++i) started.push_back(region[cell_below(room, cloud, i)]);

        advance(cloud, room, alike(motion(10.0_s, stirred, 0.1_m, 1.0_m, Speed{2e-3}, Speed{1e-3}, as_long_as_physics_permits)), seed);
        for (std::size_t i = 0; i < cloud.count(); ++i) {
            const std::size_t cell = cell_below(room, cloud, i);
            RC_ASSERT(region[cell] == started[i]);
            RC_ASSERT(cloud.x[i] >= 0.0F && cloud.x[i] <= room.width() && cloud.y[i] >= 0.0F && cloud.y[i] <= room.depth());
            RC_ASSERT(cloud.z[i] >= room.top[cell] - (cloud.fate[i] == Fate::airborne ? 1e-6F : 0.0F) && cloud.z[i] <= room.ceiling);
            RC_ASSERT(cloud.fate[i] != Fate::landed || cloud.z[i] == room.top[cell]);
        }
    });
    CHECK(holds);
}

TEST_CASE("a wall one cell thick keeps dust on its side, also when it runs aslant")
{
    CloudRoom straight = still_room(2.0_m, 1.0_m, 1.0_m, 0.1_m);
    stand(straight, 10, 0, 10, 9, straight.ceiling);
    CloudRoom aslant = still_room(1.0_m, 1.0_m, 1.0_m, 0.1_m);
    for (std::size_t i = 0; i < 10; ++i) stand(aslant, i, i, i, i, aslant.ceiling);

    for (const CloudRoom* room : {&straight, &aslant}) {
        Cloud cloud = scattered(*room, 100'000, 11);
        const std::vector<int> region = regions(*room);
        std::vector<int> started;
        for (std::size_t i = 0; i < cloud.count(); ++i) started.push_back(region[cell_below(*room, cloud, i)]);
        REQUIRE(std::count(started.begin(), started.end(), started.front()) < 60'000);   // there is dust on both sides
        advance(cloud, *room, alike(motion(10.0_s, stirred, 0.1_m, 1.0_m, {}, {}, as_long_as_physics_permits)), 12, 2);
        std::size_t through = 0;
        for (std::size_t i = 0; i < cloud.count(); ++i) through += region[cell_below(*room, cloud, i)] != started[i];
        CHECK(through == 0);
    }
}

TEST_CASE("dust gets over a chest, and lies on top of it when it lands there")
{
    CloudRoom room = still_room(2.0_m, 1.0_m, 2.0_m, 0.1_m);
    stand(room, 8, 0, 11, 9, 0.7F);
    Cloud cloud;
    for (std::uint64_t i = 0; i < 5'000; ++i) cloud.add(0.3F, 0.5F, 1.0F, SizeClass::um_10, i, {{1}, {}});
    advance(cloud, room, alike(motion(300.0_s, stirred, 0.1_m, 2.0_m, Speed{6e-3}, {}, 0.1_s)), 3, 2);
    std::size_t on_top = 0;
    std::size_t beyond = 0;
    for (std::size_t i = 0; i < cloud.count(); ++i) {
        const std::size_t column = room.raster.column(cell_below(room, cloud, i));
        on_top += cloud.fate[i] == Fate::landed && column >= 8 && column <= 11 && cloud.z[i] == 0.7F;
        beyond += cloud.fate[i] == Fate::landed && column > 11 && cloud.z[i] == 0.0F;
    }
    CHECK(on_top > 100);
    CHECK(beyond > 100);
}

TEST_CASE("the order of parcels and the number of threads change nothing")
{
    const Scene scene(6'000);
    Cloud alone = scene.cloud;
    const std::uint64_t made = advance(alone, scene.room, scene.motions, 77, 1);

    for (const unsigned threads : {2U, 3U}) {
        Cloud together = scene.cloud;
        CHECK(advance(together, scene.room, scene.motions, 77, threads) == made);
        CHECK(fingerprint(together) == fingerprint(alone));
    }

    std::vector<std::size_t> order(scene.cloud.count());
    std::iota(order.begin(), order.end(), std::size_t{0});
    const Luck luck{9, Stream::parameter};
    std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return luck.draw(a, 0) < luck.draw(b, 0); });
    Cloud shuffled;
    for (const std::size_t i : order)
        shuffled.add(scene.cloud.x[i], scene.cloud.y[i], scene.cloud.z[i], scene.cloud.size[i], scene.cloud.number[i], scene.cloud.amount[i]);
    REQUIRE(fingerprint(shuffled) != fingerprint(scene.cloud));
    CHECK(advance(shuffled, scene.room, scene.motions, 77, 3) == made);
    CHECK(by_number(shuffled) == by_number(alone));
}

TEST_CASE("another seed, or another number, is another path")
{
    const Scene scene(100);
    Cloud one = scene.cloud;
    Cloud other = scene.cloud;
    Cloud renumbered = scene.cloud;
    for (std::uint64_t& number : renumbered.number) number += 1ULL << 40;
    advance(one, scene.room, scene.motions, 77);
    advance(other, scene.room, scene.motions, 78);
    advance(renumbered, scene.room, scene.motions, 77);
    CHECK(fingerprint(one) != fingerprint(other));
    CHECK(fingerprint(one) != fingerprint(renumbered));
}

TEST_CASE("a spell cut in two is the same spell")
{
    const CloudRoom room = still_room(3.0_m, 2.4_m, 2.4_m, 0.1_m);
    const Motion whole = motion(10.0_s, stirred, 0.1_m, 2.4_m, Speed{6e-3}, Speed{3e-4}, 0.1_s);
    Motion first = whole;
    first.steps = whole.steps / 3;
    Motion second = whole;
    second.steps = whole.steps - first.steps;
    Cloud at_once = scattered(room, 3'000, 5);
    Cloud in_two = at_once;
    const std::uint64_t made = advance(at_once, room, alike(whole), 77);
    CHECK(advance(in_two, room, alike(first), 77) + advance(in_two, room, alike(second), 77) == made);
    CHECK(fingerprint(in_two) == fingerprint(at_once));
}

TEST_CASE("every fate occurs, and parcel-steps are counted one by one")
{
    Scene scene(6'000);
    const std::uint64_t made = advance(scene.cloud, scene.room, scene.motions, 77, 2);
    for (const Fate fate : {Fate::airborne, Fate::landed, Fate::on_wall, Fate::left}) CHECK(share(scene.cloud, fate) > 0.002);
    CHECK(made == std::accumulate(scene.cloud.steps.begin(), scene.cloud.steps.end(), std::uint64_t{0}));

    // What has met its fate stays where it is.
    const std::map<std::uint64_t, Bits> before = by_number(scene.cloud);
    advance(scene.cloud, scene.room, scene.motions, 77, 2);
    const std::map<std::uint64_t, Bits> after = by_number(scene.cloud);
    const bool is_at_rest = std::all_of(before.begin(), before.end(), [&](const auto& parcel) {
        return std::get<Fate>(parcel.second) == Fate::airborne || after.at(parcel.first) == parcel.second;
    });
    CHECK(is_at_rest);
}

TEST_CASE("fine dust stays in the air for hours though it diffuses to the floor all the time")
{
    const CloudRoom room = still_room(3.0_m, 3.0_m, 2.5_m, 0.5_m);
    Cloud cloud = scattered(room, 4'000, 5, SizeClass::um_1);
    advance(cloud, room, alike(motion(1.0_h, stirred, 0.5_m, 2.5_m, Speed{3.5e-5}, {}, as_long_as_physics_permits)), 77, 2);
    CHECK(share(cloud, Fate::airborne) == Approx(std::exp(-3.5e-5 * 3600.0 / 2.5)).margin(0.012));
}

TEST_CASE("an opening draws dust out at its rate, whatever the step")
{
    CloudRoom room = still_room(1.0_m, 1.0_m, 1.0_m, 0.1_m);
    std::fill(room.leaving.begin(), room.leaving.end(), 2.0F);
    for (const Time longest : {0.5_s, 0.1_s, 0.01_s}) {
        Cloud cloud = scattered(room, 40'000, 5);
        advance(cloud, room, alike(motion(0.5_s, Diffusivity{1e-4}, 0.1_m, 1.0_m, {}, {}, longest)), 77, 2);
        INFO("longest step " << longest.si << " s");
        CHECK(share(cloud, Fate::left) == Approx(1.0 - std::exp(-1.0)).margin(3.0 * std::sqrt(0.25 / 40'000)));
    }
}

TEST_CASE("without settling nothing lands, and without sticking nothing stays on a wall")
{
    const CloudRoom room = still_room(0.6_m, 0.6_m, 0.3_m, 0.1_m);
    Cloud cloud = scattered(room, 20'000, 5);
    advance(cloud, room, alike(motion(60.0_s, stirred, 0.1_m, 0.3_m, {}, {}, as_long_as_physics_permits)), 77, 2);
    CHECK(share(cloud, Fate::airborne) == 1.0);
}

TEST_CASE("steps stay within what the physics permits and fill the spell", "[property]")
{
    const bool holds = rc::check([] {
        const auto some = [](double least, double most) {
            return least * std::pow(most / least, static_cast<double>(*rc::gen::inRange(0, 1001)) / 1000.0);
        };
        const Time spell{some(0.1, 1000.0)};
        const Diffusivity K{some(1e-4, 0.1)};
        const Length cell{some(0.05, 0.5)};
        const Length height{some(1.0, 5.0)};
        const Speed settling{some(1e-6, 3.0)};
        const Motion m = motion(spell, K, cell, height, settling, Speed{1e-4}, 0.5_s);
        constexpr double rounding = 1.0 + 1e-6;
        RC_ASSERT(static_cast<double>(m.dt) * m.steps <= spell.si * rounding);
        RC_ASSERT(static_cast<double>(m.dt) * m.steps >= spell.si / rounding);
        RC_ASSERT(static_cast<double>(m.spread) <= cell.si / 3.0 * rounding);
        RC_ASSERT(static_cast<double>(m.fall) <= height.si / 20.0 * rounding);
        RC_ASSERT(static_cast<double>(m.dt) <= 0.5 * rounding);
        RC_ASSERT(m.wall_stick >= 0.0F && m.wall_stick <= 1.0F);
    });
    CHECK(holds);
}

TEST_CASE("promises of the kernel fire")
{
    CHECK_THROWS_AS(motion({}, stirred, 0.1_m, 2.4_m, {}, {}, 1.0_s), BrokenPromise);
    CHECK_THROWS_AS(motion(1.0_s, {}, 0.1_m, 2.4_m, {}, {}, 1.0_s), BrokenPromise);

    const PerClass<Motion> motions = alike(motion(1.0_s, stirred, 0.1_m, 2.4_m, {}, {}, 1.0_s));
    CloudRoom room = still_room(1.0_m, 1.0_m, 2.4_m, 0.1_m);
    for (const float outside : {-0.01F, 2.5F, std::nanf("")}) {
        Cloud cloud;
        cloud.add(0.5F, 0.5F, outside, SizeClass::um_1, 1, {});
        CHECK_THROWS_AS(advance(cloud, room, motions, 1), BrokenPromise);
    }
    Cloud cloud;
    room.top.pop_back();
    CHECK_THROWS_AS(advance(cloud, room, motions, 1), BrokenPromise);
}

TEST_CASE("a sweep keeps what flies, whole and in order")
{
    Cloud cloud;
    for (std::uint64_t i = 0; i < 6; ++i) cloud.add(static_cast<float>(i), 0.0F, 1.0F, SizeClass::um_5, 100 + i, {{static_cast<std::int64_t>(i)}, {}});
    cloud.fate[0] = Fate::landed;
    cloud.fate[3] = Fate::left;
    cloud.fate[5] = Fate::on_wall;
    cloud.steps[4] = 9;
    cloud.age[4] = 2.5F;
    cloud.sweep();
    REQUIRE(cloud.count() == 3);
    CHECK(cloud.number == std::vector<std::uint64_t>{101, 102, 104});
    CHECK(cloud.x == std::vector<float>{1.0F, 2.0F, 4.0F});
    CHECK(cloud.amount[2] == Amount{{4}, {}});
    CHECK(cloud.steps[2] == 9);
    CHECK(cloud.age[2] == 2.5F);
    CHECK(cloud.fate.size() == 3);
}

TEST_CASE("a fingerprint notices the last bit of a position and the last picogram")
{
    const CloudRoom room = still_room(1.0_m, 1.0_m, 1.0_m, 0.1_m);
    const Cloud cloud = scattered(room, 10, 5);
    Cloud other = cloud;
    CHECK(fingerprint(other) == fingerprint(cloud));
    other.x[7] = std::nextafter(other.x[7], 2.0F);
    CHECK(fingerprint(other) != fingerprint(cloud));
    other = cloud;
    other.amount[9].lead.count += 1;
    CHECK(fingerprint(other) != fingerprint(cloud));
    other = cloud;
    other.fate[0] = Fate::left;
    CHECK(fingerprint(other) != fingerprint(cloud));
}
