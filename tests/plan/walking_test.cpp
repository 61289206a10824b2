#include "plan/walking.hpp"

#include "core/insist.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <algorithm>
#include <cstdlib>
#include <limits>
#include <set>

using namespace flapdoor;
using namespace flapdoor::plan;

namespace {

const Raster ten_by_six({{}, {}, 1.0_m, 0.6_m}, 0.1_m);

std::vector<bool> nothing_blocked(const Raster& raster) { return std::vector<bool>(raster.size(), false); }

Point at(const Raster& raster, std::size_t column, std::size_t row) { return raster.center(row * raster.columns() + column); }

int cost(const Raster& raster, const std::vector<std::size_t>& path)
{
    int sum = 0;
    for (std::size_t i = 1; i < path.size(); ++i)
        sum += raster.column(path[i]) != raster.column(path[i - 1]) && raster.row(path[i]) != raster.row(path[i - 1]) ? 14 : 10;
    return sum;
}

/// Steps to a neighbor only, over free cells only, around corners, never across them.
bool is_walkable(const Raster& raster, const std::vector<bool>& is_blocked, const std::vector<std::size_t>& path)
{
    for (std::size_t i = 0; i < path.size(); ++i) {
        if (is_blocked[path[i]]) return false;
        if (i == 0) continue;
        const auto apart = [](std::size_t a, std::size_t b) { return a > b ? a - b : b - a; };
        const std::size_t dx = apart(raster.column(path[i]), raster.column(path[i - 1]));
        const std::size_t dy = apart(raster.row(path[i]), raster.row(path[i - 1]));
        if (dx > 1 || dy > 1 || dx + dy == 0) return false;
        if (is_blocked[raster.row(path[i - 1]) * raster.columns() + raster.column(path[i])]) return false;
        if (is_blocked[raster.row(path[i]) * raster.columns() + raster.column(path[i - 1])]) return false;
    }
    return true;
}

/// Least cost by repeated relaxation, slow and plain: a second opinion.
int least_cost(const Raster& raster, const std::vector<bool>& is_blocked, std::size_t from, std::size_t to)
{
    constexpr int never = std::numeric_limits<int>::max() / 2;
    std::vector<int> best(raster.size(), never);
    best[from] = 0;
    for (bool has_changed = true; has_changed;) {
        has_changed = false;
        for (std::size_t a = 0; a < raster.size(); ++a)
            for (std::size_t b = 0; b < raster.size(); ++b) {
                if (best[a] == never || !is_walkable(raster, is_blocked, {a, b})) continue;
                const int way = best[a] + cost(raster, {a, b});
                if (way < best[b]) best[b] = way, has_changed = true;
            }
    }
    return best[to];
}

}

TEST_CASE("a free way is straight and holds both ends")
{
    const auto path = walk(ten_by_six, nothing_blocked(ten_by_six), at(ten_by_six, 1, 2), at(ten_by_six, 8, 2));
    REQUIRE(path.size() == 8);
    CHECK(path.front() == 21);
    CHECK(path.back() == 28);
    CHECK(cost(ten_by_six, path) == 70);
}

TEST_CASE("nobody walks through a wall or cuts its corner")
{
    std::vector<bool> is_blocked = nothing_blocked(ten_by_six);
    for (std::size_t row = 0; row < 5; ++row) is_blocked[row * 10 + 4] = true;
    const auto path = walk(ten_by_six, is_blocked, at(ten_by_six, 2, 0), at(ten_by_six, 7, 0));
    REQUIRE_FALSE(path.empty());
    CHECK(is_walkable(ten_by_six, is_blocked, path));
    is_blocked[5 * 10 + 4] = true;
    CHECK(walk(ten_by_six, is_blocked, at(ten_by_six, 2, 0), at(ten_by_six, 7, 0)).empty());
}

TEST_CASE("a blocked end is replaced by the free cell nearest to it")
{
    std::vector<bool> is_blocked = nothing_blocked(ten_by_six);
    is_blocked[0] = true;
    const auto path = walk(ten_by_six, is_blocked, at(ten_by_six, 0, 0), at(ten_by_six, 5, 0));
    REQUIRE_FALSE(path.empty());
    CHECK((path.front() == 1 || path.front() == 10));
    CHECK(walk(ten_by_six, std::vector<bool>(ten_by_six.size(), true), {}, {}).empty());
}

TEST_CASE("a walk is possible and no other is shorter", "[property]")
{
    const bool holds = rc::check([] {
        const Raster raster({{}, {}, 0.6_m, 0.5_m}, 0.1_m);
        const auto blocked = *rc::gen::container<std::vector<bool>>(raster.size(), rc::gen::element(false, false, true));
        const auto from = *rc::gen::inRange<std::size_t>(0, raster.size());
        const auto to = *rc::gen::inRange<std::size_t>(0, raster.size());
        RC_PRE(!blocked[from] && !blocked[to]);
        const auto path = walk(raster, blocked, raster.center(from), raster.center(to));
        const int least = least_cost(raster, blocked, from, to);
        if (path.empty()) {
            RC_ASSERT(least == std::numeric_limits<int>::max() / 2);
            return;
        }
        RC_ASSERT(path.front() == from && path.back() == to);
        RC_ASSERT(is_walkable(raster, blocked, path));
        RC_ASSERT(cost(raster, path) == least);
    });
    CHECK(holds);
}

TEST_CASE("footsteps are a stride apart and stand at both ends")
{
    const auto path = walk(ten_by_six, nothing_blocked(ten_by_six), at(ten_by_six, 0, 0), at(ten_by_six, 9, 0));
    const std::vector<Point> steps = footsteps(ten_by_six, path, 0.39_m);
    REQUIRE(steps.size() == 4);
    CHECK(steps.front() == at(ten_by_six, 0, 0));
    CHECK(steps[1] == at(ten_by_six, 4, 0));
    CHECK(steps[2] == at(ten_by_six, 8, 0));
    CHECK(steps.back() == at(ten_by_six, 9, 0));
    CHECK(footsteps(ten_by_six, {}, 0.4_m).empty());
    CHECK(footsteps(ten_by_six, {5}, 0.4_m).size() == 1);
    CHECK_THROWS_AS(footsteps(ten_by_six, path, {}), BrokenPromise);
}

TEST_CASE("strips cover every free cell once and end beside the exit")
{
    std::vector<bool> is_blocked = nothing_blocked(ten_by_six);
    is_blocked[33] = true;
    for (const Point exit : {Point{0.5_m, {}}, Point{0.5_m, 0.6_m}, Point{{}, 0.3_m}, Point{1.0_m, 0.3_m}}) {
        const auto cells = strips_toward(ten_by_six, is_blocked, exit);
        CHECK(std::set<std::size_t>(cells.begin(), cells.end()).size() == ten_by_six.size() - 1);
        CHECK(cells.size() == ten_by_six.size() - 1);
        const bool is_by_row = exit.x == 0.5_m;
        const std::size_t last = is_by_row ? ten_by_six.row(cells.back()) : ten_by_six.column(cells.back());
        const std::size_t wanted = exit.x == Length{} || exit.y == Length{} ? 0 : (is_by_row ? ten_by_six.rows() : ten_by_six.columns()) - 1;
        CHECK(last == wanted);
    }
    CHECK_THROWS_AS(strips_toward(ten_by_six, {}, {}), BrokenPromise);
    CHECK_THROWS_AS(walk(ten_by_six, {}, {}, {}), BrokenPromise);
}
