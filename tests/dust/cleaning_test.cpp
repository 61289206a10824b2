#include "core/insist.hpp"
#include "dust/mopping.hpp"
#include "dust/vacuuming.hpp"
#include "dust/wiping.hpp"

#include <catch2/catch.hpp>

#include <array>

using namespace flapdoor;
using namespace flapdoor::dust;

namespace {

constexpr std::array every_surface = {SurfaceKind::smooth_sealed, SurfaceKind::worn_linoleum, SurfaceKind::bare_wood,
                                      SurfaceKind::deteriorated,  SurfaceKind::carpet_fresh,  SurfaceKind::carpet_old};

double rate(SurfaceKind kind, SizeClass size, const Nozzle& nozzle = {}, bool is_edge = false)
{
    return vacuum_rate(kind, size, nozzle, is_edge).si;
}

}

TEST_CASE("surfaces give up what their table says")
{
    for (const SurfaceKind kind : every_surface) {
        const SurfaceTraits& traits = surface_traits(kind);
        CHECK(traits.bound_share.holds(traits.bound_share.typical));
        CHECK(traits.wet_bound <= traits.wet_free);
        CHECK(traits.vacuum.si > 0.0);
    }
    // Fifty percent left on a cracked floor however long it is vacuumed (Sussell et al. 1999, abstract: 2600 -> 1300 ug/ft2).
    const CleaningRate k = vacuum_rate(SurfaceKind::deteriorated, SizeClass::um_20, {}, false);
    CHECK(vacuum_removed(SurfaceKind::deteriorated, k, minutes_per_m2(1000)) == Approx(0.5));
}

TEST_CASE("fine dust, edges and hasty strokes clean slower")
{
    const SurfaceKind wood = SurfaceKind::bare_wood;
    CHECK(rate(wood, SizeClass::um_1) == Approx(0.5 * rate(wood, SizeClass::um_20)));
    CHECK(rate(wood, SizeClass::um_5) == Approx(0.8 * rate(wood, SizeClass::um_20)));
    CHECK(rate(wood, SizeClass::chips) == Approx(1.5 * rate(wood, SizeClass::um_20)));
    CHECK(rate(wood, SizeClass::um_20, {}, true) == Approx(rate(wood, SizeClass::um_20) / 3.0));
    CHECK(rate(wood, SizeClass::um_20, {.speed = Speed{0.8}}) == Approx(0.6 * rate(wood, SizeClass::um_20)));
    CHECK(rate(wood, SizeClass::um_20, {.speed = Speed{0.6}}) == Approx(rate(wood, SizeClass::um_20)));
}

TEST_CASE("a beater bar helps on carpet and nowhere else")
{
    const Nozzle beater{.has_beater = true};
    CHECK(rate(SurfaceKind::carpet_old, SizeClass::um_20, beater) == Approx(2.0 * rate(SurfaceKind::carpet_old, SizeClass::um_20)));
    CHECK(rate(SurfaceKind::smooth_sealed, SizeClass::um_20, beater) == Approx(rate(SurfaceKind::smooth_sealed, SizeClass::um_20)));
    CHECK(loosening_rate(SurfaceKind::carpet_old, beater) * minutes_per_m2(1) == Approx(0.05));
    CHECK(loosening_rate(SurfaceKind::carpet_old, {}) * minutes_per_m2(1) == Approx(0.01));
    CHECK(loosening_rate(SurfaceKind::worn_linoleum, beater).si == 0.0);
}

TEST_CASE("what comes up from a carpet while it is vacuumed is what many short steps say")
{
    for (const double k : {0.0, 0.05, 0.1, 0.4, 2.0})
        for (const double u : {0.0, 0.01, 0.05})
            for (const double minutes : {0.5, 10.0}) {
                double free = 0.0, bound = 1.0, taken = 0.0, of_free = 1.0;
                constexpr int steps = 200'000;
                const double dt = minutes / steps;
                for (int i = 0; i < steps; ++i) {
                    const double up = u * bound * dt, off = k * free * dt;
                    bound -= up;
                    free += up - off;
                    taken += off;
                    of_free -= k * of_free * dt;
                }
                const Suction all = suction(per_minute_per_m2(k), per_minute_per_m2(u), minutes_per_m2(minutes));
                INFO("k " << k << ", u " << u << ", " << minutes << " min/m2");
                CHECK(all.of_bound == Approx(taken).margin(1e-5));
                CHECK(all.loosened == Approx(1.0 - bound).margin(1e-5));
                CHECK(all.of_free == Approx(1.0 - of_free).margin(1e-5));
                CHECK(all.of_bound <= all.loosened);
            }
}

TEST_CASE("the joint along a wall holds more, never less, and never all")
{
    CHECK(bound_at_edge(0.03, 3.0) == Approx(1.0 - 0.97 * 0.97 * 0.97));
    for (const double share : {0.0, 0.05, 0.5, 0.9}) {
        CHECK(bound_at_edge(share, 1.0) == Approx(share));
        CHECK(bound_at_edge(share, 5.0) >= bound_at_edge(share, 2.0));
        CHECK(bound_at_edge(share, 5.0) < 1.0);
    }
    CHECK_THROWS_AS(bound_at_edge(0.1, 0.5), BrokenPromise);
}

TEST_CASE("strokes and exposure convert into each other")
{
    CHECK(exposure_of_stroke({}) / minutes_per_m2(1) == Approx(0.185).epsilon(2e-3));
    CHECK(strokes_for(exposure_of_stroke({}) * 7.0, {}) == Approx(7.0));
}

TEST_CASE("a second pass crosswise finds what the first one missed")
{
    CHECK(coverage_of(pass_coverage, 2) == Approx(1.0 - 0.15 * 0.15));
    CHECK(coverage_of(edge_pass_coverage, 2) < coverage_of(pass_coverage, 2));
    CHECK(coverage_of(pass_coverage, 0) == 0.0);
}

TEST_CASE("a loaded cloth takes less, and a full one nothing")
{
    const double fresh = fresh_wipe(Cloth::wet).typical;
    CHECK(wipe_share(Cloth::wet, SizeClass::um_10, fresh, {}) == 0.9);
    CHECK(wipe_share(Cloth::wet, SizeClass::um_10, fresh, 1.0_g) == Approx(0.45));
    CHECK(wipe_share(Cloth::wet, SizeClass::um_10, fresh, 5.0_g) == 0.0);
    CHECK(wipe_share(Cloth::electrostatic_dry, SizeClass::um_10, 0.8, 1.0_g) == 0.0);
    CHECK(wipe_share(Cloth::electrostatic_dry, SizeClass::um_1, 0.8, {}) == 0.0);
    CHECK(wipe_bound_share(Cloth::electrostatic_dry, SurfaceKind::worn_linoleum) == 0.0);
    CHECK(wipe_bound_share(Cloth::wet, SurfaceKind::worn_linoleum) == 0.9);
}

TEST_CASE("a small floor mopped from a full bucket hardly gets its dust back")
{
    const Mopping small{.removed = 0.9, .floor = 1.0_m2};
    CHECK(mop(small).floor == Approx(0.1).epsilon(0.04));
    const Mopping one{.removed = 0.9, .into_water = one_bucket, .floor = 12.0_m2};
    const Mopping two{.removed = 0.9, .into_water = two_buckets, .floor = 12.0_m2};
    CHECK(mop(one).floor == Approx(0.133).epsilon(0.005));
    CHECK(mop(two).floor == Approx(0.103).epsilon(0.005));
    CHECK(mop(two).rinsed == Approx(0.81));
}

TEST_CASE("mopping square by square comes to the closed form")
{
    const Mopping job{.removed = 0.9, .into_water = 1.0, .film = 0.1_mm, .floor = 60.0_m2};
    const int squares = 6000;
    const Area square = job.floor / squares;
    double in_water = 0.0;
    double on_floor = 0.0;
    for (int i = 0; i < squares; ++i) {
        const double returned = in_water * brought_back(job.film, square, job.water);
        in_water += job.removed / squares - returned;
        on_floor += (1.0 - job.removed) / squares + returned;
    }
    CHECK(on_floor == Approx(mop(job).floor).epsilon(1e-3));
    CHECK(in_water == Approx(mop(job).water).epsilon(1e-3));
}
