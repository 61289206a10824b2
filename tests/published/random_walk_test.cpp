#include "../dust/moving_air.hpp"
#include "row.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

using namespace flapdoor;
using namespace flapdoor::dust;
using published::check;
using published::RangeRow;
using published::Row;

// The parcel kernel against what diffusion theory says of the same box. Steps are the longest that `motion` allows for the
// cell named in each case: coarse cells where the answer does not depend on them, so that the slow walks stay short.

namespace {

constexpr auto einstein = "Einstein 1905: the variance of a free walk grows by 2 K t";
constexpr auto stirred_loss = "well-stirred loss, exp(-v_d t/H)";
constexpr auto partial_absorption = "series solution of diffusion between a mirror and a partly absorbing wall (Carslaw & Jaeger, Conduction of Heat in "
                                    "Solids, radiation boundary), recomputed apart from this program";
constexpr auto column_equation = "implicit solution of the settling and diffusion equation in a column, floor flux v_s c, recomputed apart from this program";
constexpr auto stirred_settling = "stirred settling, exp(-v_s t/H) at t = H/v_s; quiet settling has emptied the column by then";
constexpr auto chi_square = "uniform clouds stay uniform between mirrors; Pearson's chi square, p = 0.001 by Wilson & Hilferty 1931";

constexpr std::uint64_t seed = 20240817;

/// What is still in the air of a column at t = H/v_s, uniform at the start.
/// @param peclet     v_s H/K
/// @param steps_high the height counted in standard deviations of one diffusive step
double left_in_column(double peclet, double steps_high, std::uint64_t parcels)
{
    constexpr Length height = 2.4_m;
    constexpr Diffusivity K = 0.02_m2ps;
    const Length cell = height * (3.0 / steps_high);
    const Speed settling = K * peclet / height;
    const CloudRoom room = still_room(cell * 3.0, cell * 3.0, height, cell);
    Cloud cloud = scattered(room, parcels, seed);
    advance(cloud, room, alike(motion(height / settling, K, cell, height, settling, {}, as_long_as_physics_permits)), seed, 2);
    return share(cloud, Fate::airborne);
}

double chi_square_limit(double degrees)
{
    const double k = 2.0 / (9.0 * degrees);
    return degrees * std::pow(1.0 - k + 3.0902 * std::sqrt(k), 3);
}

/// Pearson's chi square of parcels against air, in boxes of a group of cells by a layer of the height.
RangeRow uniform(std::string_view label, const Cloud& cloud, const CloudRoom& room, std::size_t layers, const auto& group_of)
{
    const double layer = static_cast<double>(room.ceiling) / static_cast<double>(layers);
    std::vector<double> air(room.raster.size() * layers, 0.0);
    std::vector<double> found(air.size(), 0.0);
    double all_air = 0.0;
    for (std::size_t cell = 0; cell < room.raster.size(); ++cell)
        for (std::size_t k = 0; k < layers; ++k) {
            const double bottom = std::max(layer * static_cast<double>(k), static_cast<double>(room.top[cell]));
            const double free = std::max(0.0, layer * static_cast<double>(k + 1) - bottom);
            air[group_of(cell) * layers + k] += free;
            all_air += free;
        }
    for (std::size_t i = 0; i < cloud.count(); ++i) {
        const auto k = std::min(layers - 1, static_cast<std::size_t>(static_cast<double>(cloud.z[i]) / layer));
        found[group_of(cell_below(room, cloud, i)) * layers + k] += 1.0;
    }
    double chi_square_sum = 0.0;
    double boxes = 0.0;
    for (std::size_t box = 0; box < air.size(); ++box) {
        const double expected = air[box] / all_air * static_cast<double>(cloud.count());
        if (expected < 5.0) {   // inside furniture, or a sliver that rounding left
            CHECK(found[box] <= 5.0 * expected + 5.0);
            continue;
        }
        chi_square_sum += (found[box] - expected) * (found[box] - expected) / expected;
        boxes += 1.0;
    }
    return {label, chi_square_sum, 0.0, chi_square_limit(boxes - 1.0), chi_square};
}

}

TEST_CASE("a free walk spreads as diffusion does")
{
    const CloudRoom room = still_room(16.0_m, 16.0_m, 16.0_m, 0.1_m);
    constexpr std::size_t parcels = 40'000;
    Cloud cloud;
    for (std::size_t i = 0; i < parcels; ++i) cloud.add(8.0F, 8.0F, 8.0F, SizeClass::um_1, i, {{1}, {}});
    advance(cloud, room, alike(motion(60.0_s, 0.005_m2ps, 0.1_m, 16.0_m, {}, {}, as_long_as_physics_permits)), seed, 2);
    REQUIRE(share(cloud, Fate::airborne) == 1.0);

    double xx = 0.0;
    double yy = 0.0;
    double zz = 0.0;
    for (std::size_t i = 0; i < parcels; ++i) {
        const auto squared = [](float at) { return (static_cast<double>(at) - 8.0) * (static_cast<double>(at) - 8.0); };
        xx += squared(cloud.x[i]) / parcels;
        yy += squared(cloud.y[i]) / parcels;
        zz += squared(cloud.z[i]) / parcels;
    }
    const double counting = 3.0 * std::sqrt(2.0 / parcels);
    check({
        Row{"P-047 variance along x, m2", xx, 0.600, counting, einstein},
        Row{"P-047 variance along y, m2", yy, 0.600, counting, einstein},
        Row{"P-047 variance along z, m2", zz, 0.600, counting, einstein},
        Row{"P-047 rms along x, m", std::sqrt(xx), 0.775, counting, einstein},
        Row{"P-048 rms radius in plan, m", std::sqrt(xx + yy), 1.095, 0.01, einstein},
        Row{"P-048 rms radius in space, m", std::sqrt(xx + yy + zz), 1.342, 0.01, einstein},
    });
}

TEST_CASE("a uniform cloud that loses nothing stays uniform, in every cell around furniture")
{
    // A cupboard one cell off the wall, a chest and a thin full-height screen: narrow gaps, corners, tops.
    CloudRoom room = still_room(1.2_m, 1.0_m, 1.2_m, 0.1_m);
    stand(room, 1, 2, 2, 5, 0.95F);
    stand(room, 6, 5, 9, 7, 0.45F);
    stand(room, 5, 0, 5, 3, room.ceiling);
    Cloud cloud = scattered(room, 400'000, seed);
    advance(cloud, room, alike(motion(8.0_s, 0.005_m2ps, 0.1_m, 1.2_m, {}, {}, as_long_as_physics_permits)), seed, 2);
    REQUIRE(share(cloud, Fate::airborne) == 1.0);
    check({uniform("P-049 chi square, cells by twelfths of the height", cloud, room, 12, [](std::size_t cell) { return cell; })});
}

TEST_CASE("a uniform cloud stays uniform beside the rim of a chest")
{
    // Rows are added up: what a wrong rule does to the air just above and below a rim then stands out from counting noise.
    CloudRoom room = still_room(0.6_m, 0.4_m, 0.6_m, 0.1_m);
    stand(room, 3, 0, 5, 3, 0.3F);
    Cloud cloud = scattered(room, 600'000, seed);
    advance(cloud, room, alike(motion(3.0_s, 0.005_m2ps, 0.1_m, 0.6_m, {}, {}, as_long_as_physics_permits)), seed, 2);
    REQUIRE(share(cloud, Fate::airborne) == 1.0);
    check({uniform("P-049 chi square, columns by twentieths of the height", cloud, room, 20, [&](std::size_t cell) { return room.raster.column(cell); })});
}

TEST_CASE("a uniform cloud stays uniform in air that goes round and round, in every cell around furniture")
{
    CloudRoom room = still_room(1.2_m, 1.0_m, 1.2_m, 0.1_m);
    stand(room, 1, 2, 2, 5, 0.95F);
    stand(room, 6, 5, 9, 7, 0.45F);
    stand(room, 5, 0, 5, 3, room.ceiling);
    stir(room, 0.02);
    REQUIRE(wind(room) > 0.05_mps);
    REQUIRE(wind(room) < 1.0_mps);
    Cloud cloud = scattered(room, 400'000, seed);
    advance(cloud, room, alike(motion(8.0_s, 0.005_m2ps, 0.1_m, 1.2_m, {}, {}, as_long_as_physics_permits, wind(room))), seed, 2);
    REQUIRE(share(cloud, Fate::airborne) == 1.0);
    check({uniform("P-049 chi square, cells by twelfths of the height, in moving air", cloud, room, 12, [](std::size_t cell) { return cell; })});
}

TEST_CASE("a wall that keeps some of what touches it takes what theory says")
{
    // Two such walls 5 m apart are one wall and a mirror 2.5 m apart; the other two walls are too far away to be touched.
    const CloudRoom room = still_room(5.0_m, 200.0_m, 2.4_m, 0.5_m);
    Cloud cloud = scattered(room, 40'000, seed);
    for (float& y : cloud.y) y = 100.0F;
    advance(cloud, room, alike(motion(800.0_s, 0.05_m2ps, 0.5_m, 2.4_m, {}, Speed{1e-3}, as_long_as_physics_permits)), seed, 2);
    const double found = share(cloud, Fate::airborne);
    check({
        RangeRow{"P-053 airborne after 800 s", found, 0.726 - 0.01, 0.726 + 0.01, stirred_loss},
        RangeRow{"P-053 airborne after 800 s, diffusion counted", found, 0.7299 - 0.005, 0.7299 + 0.005, partial_absorption},
    });
}

TEST_CASE("dust falls through stirred air as the column equation says")
{
    const auto row = [](std::string_view label, double found, double expected) { return RangeRow{label, found, expected - 0.01, expected + 0.01, column_equation}; };
    check({
        row("P-054 Peclet number 0.01", left_in_column(0.01, 4.0, 20'000), 0.367),
        row("P-054 Peclet number 0.1", left_in_column(0.1, 10.0, 20'000), 0.362),
        row("P-054 Peclet number 0.5", left_in_column(0.5, 20.0, 20'000), 0.340),
        row("P-054 Peclet number 1", left_in_column(1.0, 24.0, 20'000), 0.316),
        row("P-054 Peclet number 2", left_in_column(2.0, 36.0, 20'000), 0.278),
        row("P-054 Peclet number 5", left_in_column(5.0, 72.0, 20'000), 0.212),
        row("P-054 Peclet number 10", left_in_column(10.0, 72.0, 20'000), 0.163),
        row("P-054 Peclet number 36", left_in_column(36.0, 72.0, 20'000), 0.092),
    });
}

TEST_CASE("falling dust meets the stirred and the quiet limit")
{
    check({
        RangeRow{"P-055 stirred limit", left_in_column(0.01, 4.0, 50'000), 0.3679 - 0.005, 0.3679 + 0.005, stirred_settling},
        RangeRow{"P-055 quiet limit", left_in_column(1e6, 100.0, 50'000), 0.0, 0.005, stirred_settling},
    });
}
