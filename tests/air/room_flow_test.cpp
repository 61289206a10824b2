#include "air/room_flow.hpp"

#include "core/insist.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <vector>

using namespace flapdoor;
using namespace flapdoor::air;

namespace {

constexpr double ceiling = 2.4;

RoomPlan bare_room(std::size_t columns, std::size_t rows, Length cell = 0.1_m)
{
    RoomPlan room{plan::Raster({{}, {}, cell * static_cast<double>(columns), cell * static_cast<double>(rows)}, cell), {}};
    room.free_height.assign(room.raster.size(), ceiling);
    return room;
}

void stand(RoomPlan& room, std::size_t west, std::size_t south, std::size_t east, std::size_t north, double free)
{
    for (std::size_t row = south; row <= north; ++row)
        for (std::size_t column = west; column <= east; ++column) room.free_height[row * room.raster.columns() + column] = free;
}

/// Air that leaves a cell through its sides, less what is blown in there.
double left_over(const RoomPlan& room, const SideFlows& flows, const std::vector<double>& sources, std::size_t cell)
{
    const std::size_t columns = room.raster.columns();
    double out = flows.east[cell] + flows.north[cell] - sources[cell];
    if (room.raster.column(cell) > 0) out -= flows.east[cell - 1];
    if (cell >= columns) out -= flows.north[cell - columns];
    return out;
}

double worst_left_over(const RoomPlan& room, const SideFlows& flows, const std::vector<double>& sources)
{
    double worst = 0.0;
    for (std::size_t cell = 0; cell < sources.size(); ++cell) worst = std::max(worst, std::abs(left_over(room, flows, sources, cell)));
    return worst;
}

/// Air out of the block of cells [west, east] x [south, north].
double out_of_block(const RoomPlan& room, const SideFlows& flows, std::size_t west, std::size_t south, std::size_t east, std::size_t north)
{
    const std::size_t columns = room.raster.columns();
    double out = 0.0;
    for (std::size_t row = south; row <= north; ++row) {
        out += flows.east[row * columns + east];
        if (west > 0) out -= flows.east[row * columns + west - 1];
    }
    for (std::size_t column = west; column <= east; ++column) {
        out += flows.north[north * columns + column];
        if (south > 0) out -= flows.north[(south - 1) * columns + column];
    }
    return out;
}

}

TEST_CASE("air goes straight and evenly through a corridor")
{
    // 0.06 m3/s through 1 m by 2.4 m is 2.5 cm/s.
    const RoomPlan corridor = bare_room(40, 10);
    std::vector<double> sources(corridor.raster.size(), 0.0);
    for (std::size_t row = 0; row < 10; ++row) sources[row * 40] = 0.006, sources[row * 40 + 39] = -0.006;
    const SideFlows flows = RoomFlow().solve(corridor, sources);
    for (std::size_t row = 0; row < 10; ++row)
        for (std::size_t column = 0; column < 39; ++column) {
            CHECK(flows.east[row * 40 + column] / (0.1 * ceiling) == Approx(0.025).epsilon(1e-9));
            CHECK(std::abs(flows.north[row * 40 + column]) < 1e-12);
        }
    CHECK(fastest(corridor, flows).si == Approx(0.025));
}

TEST_CASE("what a source blows in crosses every closed line around it, and nothing crosses one around no source", "[property]")
{
    const bool holds = rc::check([] {
        const auto columns = *rc::gen::inRange<std::size_t>(6, 20);
        const auto rows = *rc::gen::inRange<std::size_t>(6, 20);
        RoomPlan room = bare_room(columns, rows);
        for (double& free : room.free_height) free = *rc::gen::element(ceiling, ceiling, ceiling, 1.5, 0.4);
        const auto from = *rc::gen::inRange<std::size_t>(0, room.raster.size());
        const auto to = *rc::gen::inRange<std::size_t>(0, room.raster.size());
        std::vector<double> sources(room.raster.size(), 0.0);
        sources[from] += 0.05;
        sources[to] -= 0.05;
        const SideFlows flows = RoomFlow().solve(room, sources);
        RC_ASSERT(worst_left_over(room, flows, sources) < 1e-14);
        const auto west = *rc::gen::inRange<std::size_t>(0, columns);
        const auto east = *rc::gen::inRange<std::size_t>(west, columns);
        const auto south = *rc::gen::inRange<std::size_t>(0, rows);
        const auto north = *rc::gen::inRange<std::size_t>(south, rows);
        double inside = 0.0;
        for (std::size_t row = south; row <= north; ++row)
            for (std::size_t column = west; column <= east; ++column) inside += sources[row * columns + column];
        RC_ASSERT(std::abs(out_of_block(room, flows, west, south, east, north) - inside) < 1e-13);
    });
    CHECK(holds);
}

TEST_CASE("nothing flows through what reaches the ceiling; all of it goes through the gap")
{
    RoomPlan room = bare_room(21, 15);
    stand(room, 10, 0, 10, 11, 0.0);    // a screen with a gap of three cells in the north
    std::vector<double> sources(room.raster.size(), 0.0);
    sources[2 * 21 + 2] = 0.04;
    sources[2 * 21 + 18] = -0.04;
    const SideFlows flows = RoomFlow().solve(room, sources);
    double through_gap = 0.0;
    for (std::size_t row = 0; row < 15; ++row) {
        if (row <= 11) {
            CHECK(flows.east[row * 21 + 9] == 0.0);
            CHECK(flows.east[row * 21 + 10] == 0.0);
            CHECK(flows.north[row * 21 + 10] == 0.0);
        }
        else through_gap += flows.east[row * 21 + 10];
    }
    CHECK(through_gap == Approx(0.04).epsilon(1e-10));
    CHECK(worst_left_over(room, flows, sources) < 1e-14);
}

TEST_CASE("a room that is its own mirror image has a flow that is")
{
    RoomPlan room = bare_room(24, 15);
    stand(room, 8, 4, 15, 7, 0.9);
    std::vector<double> sources(room.raster.size(), 0.0);
    for (std::size_t row = 0; row < 4; ++row) sources[row * 24] = sources[row * 24 + 23] = 0.01;
    sources[14 * 24 + 11] = sources[14 * 24 + 12] = -0.04;
    const SideFlows flows = RoomFlow().solve(room, sources);
    for (std::size_t row = 0; row < 15; ++row)
        for (std::size_t column = 0; column < 23; ++column) {
            CHECK(flows.east[row * 24 + column] == Approx(-flows.east[row * 24 + 22 - column]).margin(1e-13));
            CHECK(flows.north[row * 24 + column] == Approx(flows.north[row * 24 + 23 - column]).margin(1e-13));
        }
}

TEST_CASE("less air goes over a chest than beside it, and less still over a wardrobe")
{
    const auto over = [](double free) {
        RoomPlan room = bare_room(30, 20);
        stand(room, 12, 5, 17, 14, free);
        std::vector<double> sources(room.raster.size(), 0.0);
        for (std::size_t row = 0; row < 20; ++row) sources[row * 30] = 0.002, sources[row * 30 + 29] = -0.002;
        const SideFlows flows = RoomFlow().solve(room, sources);
        double sum = 0.0;
        for (std::size_t row = 5; row < 15; ++row) sum += flows.east[row * 30 + 14];
        return sum;
    };
    CHECK(over(ceiling) == Approx(0.02));
    CHECK(over(1.6) < 0.95 * over(ceiling));
    CHECK(over(0.4) < 0.6 * over(1.6));
    CHECK(over(0.4) > 0.0);
    CHECK(over(0.0) == 0.0);
}

TEST_CASE("sources that do not add up leak evenly out of the part of the room they are in")
{
    RoomPlan room = bare_room(10, 6);
    stand(room, 4, 0, 4, 5, 0.0);
    std::vector<double> sources(room.raster.size(), 0.0);
    sources[0] = 0.024;     // into the western part, 24 cells
    const SideFlows flows = RoomFlow().solve(room, sources);
    std::vector<double> balanced = sources;
    for (std::size_t row = 0; row < 6; ++row)
        for (std::size_t column = 0; column < 4; ++column) balanced[row * 10 + column] -= 0.001;
    CHECK(worst_left_over(room, flows, balanced) < 1e-15);
    for (std::size_t row = 0; row < 6; ++row)
        for (std::size_t column = 5; column < 10; ++column) CHECK(std::abs(flows.east[row * 10 + column]) < 1e-15);
}

TEST_CASE("a set of barriers met again is not factored again, and copies know it too")
{
    const RoomPlan open = bare_room(12, 9);
    RoomPlan screened = open;
    stand(screened, 6, 0, 6, 5, 0.0);
    std::vector<double> sources(open.raster.size(), 0.0);
    sources[0] = 0.01;
    sources[107] = -0.01;
    RoomFlow flow;
    const SideFlows first = flow.solve(open, sources);
    flow.solve(screened, sources);
    CHECK(flow.solve(open, sources).east == first.east);
    CHECK(flow.factored() == 2);
    RoomFlow copy = flow;
    copy.solve(screened, sources);
    CHECK(copy.factored() == 2);
    CHECK(RoomFlow().solve(open, sources).east == first.east);   // what is kept changes no bit
    for (double free : {2.0, 1.9, 1.8, 1.7}) {
        stand(screened, 1, 1, 2, 2, free);
        flow.solve(screened, sources);
    }
    CHECK(flow.solve(open, sources).north == first.north);
    CHECK(flow.factored() == 7);   // four others in between: it was forgotten
}

TEST_CASE("air cannot be blown into a wall")
{
    RoomPlan room = bare_room(5, 5);
    stand(room, 2, 2, 2, 2, 0.0);
    std::vector<double> sources(25, 0.0);
    sources[12] = 0.01;
    CHECK_THROWS_AS(RoomFlow().solve(room, sources), BrokenPromise);
    sources[12] = std::nan("");
    CHECK_THROWS_AS(RoomFlow().solve(room, sources), BrokenPromise);
    CHECK_THROWS_AS(RoomFlow().solve(room, std::vector<double>(24, 0.0)), BrokenPromise);
}
