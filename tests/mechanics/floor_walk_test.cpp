#include "mechanics/floor_walk.hpp"

#include "core/insist.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

using namespace flapdoor;
using namespace flapdoor::mechanics;

namespace {

FloorScene room() { return {{{}, {}, 4.0_m, 3.0_m}, {}, {}, std::nullopt}; }

std::vector<plan::Point> straight(plan::Point from, plan::Point to) { return {from, to}; }

std::vector<FloorContact> only(const std::vector<FloorContact>& contacts, FloorContactKind kind)
{
    std::vector<FloorContact> found;
    for (const FloorContact& contact : contacts)
        if (contact.kind == kind) found.push_back(contact);
    return found;
}

bool is_on_grid(plan::Point p)
{
    const auto whole = [](Length l) { return std::fabs(l.si * 1e3 - std::nearbyint(l.si * 1e3)) < 1e-6; };
    return whole(p.x) && whole(p.y);
}

const auto eastward = straight({0.5_m, 1.5_m}, {3.5_m, 1.5_m});

}

TEST_CASE("feet come down left and right of the way, a stride apart")
{
    const auto feet = only(walk_over(room(), eastward), FloorContactKind::foot_down);
    REQUIRE(feet.size() == 5);      // 3 m in strides of 0.7 m
    for (std::size_t i = 0; i < feet.size(); ++i) {
        CHECK(feet[i].thing == (i + 1) % 2);
        CHECK(std::fabs(feet[i].to.y.si - 1.5) == Approx(0.09));
        CHECK((feet[i].to.y.si > 1.5) == (feet[i].thing == 0));     // left is north of somebody who walks east
        CHECK(feet[i].to.x.si == Approx(std::min(0.5 + 0.7 * static_cast<double>(i + 1), 3.5)));
        CHECK(is_on_grid(feet[i].to));
    }
    CHECK(feet.back().at.si == Approx(3.0 / 1.2).epsilon(0.02));
}

TEST_CASE("a sole that comes down kicks the chip before it onward, and leaves alone what lies beside and beneath")
{
    FloorScene scene = room();
    // The right foot lands at 1.2 m: a chip in its last skim, one under it, one a hand's breadth off the way, one between strides.
    scene.chips = {{{1.36_m, 1.41_m}}, {{1.20_m, 1.41_m}}, {{1.20_m, 1.20_m}}, {{0.90_m, 1.41_m}}};
    scene.chips[0].at.x = 1.31_m;
    const auto kicked = only(walk_over(scene, straight({0.5_m, 1.5_m}, {1.2_m, 1.5_m})), FloorContactKind::chip_kicked);
    REQUIRE(kicked.size() == 1);
    CHECK(kicked[0].thing == 0);
    CHECK(kicked[0].from == scene.chips[0].at);
    CHECK(kicked[0].to.x > kicked[0].from.x + 5.0_mm);
    CHECK(plan::distance(kicked[0].from, kicked[0].to) < 0.5_m);
    CHECK(is_on_grid(kicked[0].to));
}

TEST_CASE("a kicked chip stops at the wall and at furniture")
{
    FloorScene scene = room();
    scene.obstacles = {{1.36_m, 1.2_m, 0.5_m, 0.6_m}};
    scene.chips = {{{1.32_m, 1.41_m}}};
    for (const FloorContact& kick : only(walk_over(scene, straight({0.5_m, 1.5_m}, {1.2_m, 1.5_m})), FloorContactKind::chip_kicked))
        CHECK(plan::distance(scene.obstacles[0], kick.to) >= 1.0_mm);
}

TEST_CASE("a dragged bag follows on its neck and scrapes all the way")
{
    FloorScene scene = room();
    scene.bag = DraggedBag{{0.5_m, 1.2_m}};
    const auto contacts = walk_over(scene, eastward);
    const auto scraped = only(contacts, FloorContactKind::bag_scraped);
    REQUIRE_FALSE(scraped.empty());
    Length length{};
    for (std::size_t i = 0; i < scraped.size(); ++i) {
        length += plan::distance(scraped[i].from, scraped[i].to);
        if (i > 0) CHECK(scraped[i].from == scraped[i - 1].to);     // no gaps
        CHECK(is_on_grid(scraped[i].to));
    }
    // It slides on when the hand stops: v^2/(2 mu g) of the neck's 0.45 m.
    const double slides_on = 1.2 * 1.2 / (2.0 * 0.35 * 9.80665);
    CHECK(plan::distance(scraped.back().to, eastward.back()).si == Approx(0.45 - slides_on).margin(0.03));
    CHECK(length.si == Approx(plan::distance(scraped.front().from, scraped.back().to).si).epsilon(0.05));   // it set out from beside the way
    CHECK(only(contacts, FloorContactKind::bag_bumped).empty());
}

TEST_CASE("a bag dragged around a corner bumps against it")
{
    FloorScene scene = room();
    scene.obstacles = {{1.0_m, 0.0_m, 1.0_m, 1.4_m}};
    scene.bag = DraggedBag{{0.5_m, 0.5_m}};
    const std::vector<plan::Point> around{{0.5_m, 0.8_m}, {0.8_m, 1.5_m}, {2.2_m, 1.5_m}, {2.4_m, 0.6_m}};
    const auto bumps = only(walk_over(scene, around), FloorContactKind::bag_bumped);
    REQUIRE_FALSE(bumps.empty());
    CHECK(bumps.front().thing == 0);
    CHECK(plan::distance(scene.obstacles[0], bumps.front().to) > 0.15_m);
    CHECK(plan::distance(scene.obstacles[0], bumps.front().to) < 0.25_m);
}

TEST_CASE("contacts come in order of time and are the same each time")
{
    FloorScene scene = room();
    scene.bag = DraggedBag{{0.5_m, 1.2_m}};
    for (int i = 0; i < 24; ++i) scene.chips.push_back({{Length{0.6 + 0.12 * i}, Length{1.38 + 0.02 * (i % 3)}}});
    const auto once = walk_over(scene, eastward);
    CHECK(once == walk_over(scene, eastward));
    CHECK(std::is_sorted(once.begin(), once.end(), [](const FloorContact& a, const FloorContact& b) { return a.at < b.at; }));
    CHECK_FALSE(only(once, FloorContactKind::chip_kicked).empty());
}

TEST_CASE("standing still touches nothing, and a way without points is a mistake of ours")
{
    FloorScene scene = room();
    scene.chips = {{{1.0_m, 1.0_m}}};
    CHECK(walk_over(scene, {{1.0_m, 1.0_m}}).empty());
    CHECK_THROWS_AS(walk_over(scene, {}), BrokenPromise);
    CHECK_THROWS_AS(walk_over(scene, eastward, 9.0_mps), BrokenPromise);
}
