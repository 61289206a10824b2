#include "dust/mopping.hpp"
#include "dust/vacuuming.hpp"
#include "dust/wiping.hpp"
#include "row.hpp"

#include <array>

using namespace flapdoor;
using dust::minutes_per_m2;
using dust::SizeClass;
using dust::SurfaceKind;
using published::check;
using published::RangeRow;
using published::Row;

namespace {

constexpr auto linoleum_fit = "recomputed from the two-compartment fit to Ewers et al. 1994 (abstract: >75 %, plateau after 2 min/m2)";
constexpr auto carpet_fit = "recomputed from the first-order fit to Ewers et al. 1994 (abstract: >70 % needs 6 min/m2)";
constexpr auto arithmetic = "recomputed";
constexpr auto mop_law = "recomputed from the closed form of mopping with water that gets dirtier";

dust::CleaningRate plain_rate(SurfaceKind kind) { return dust::vacuum_rate(kind, SizeClass::um_20, {}, false); }
double linoleum(double minutes)
{
    return dust::vacuum_removed(SurfaceKind::worn_linoleum, plain_rate(SurfaceKind::worn_linoleum), minutes_per_m2(minutes));
}
double carpet_free(double minutes) { return 1.0 - dust::vacuum_residual(plain_rate(SurfaceKind::carpet_fresh), minutes_per_m2(minutes)); }
dust::Mopping big_floor(double liters_per_m2, double into_water)
{
    return {.removed = 0.9, .into_water = into_water, .film = Length{liters_per_m2 * 1e-3}, .floor = 60.0_m2, .water = 8.0_L};
}
double mopped(double liters_per_m2) { return dust::mop(big_floor(liters_per_m2, dust::one_bucket)).floor; }

}

TEST_CASE("vacuuming takes what the fits to measured floors say")
{
    check({
        Row{"P-093 linoleum, 0.5 min/m2", linoleum(0.5), 0.412, 0.005, linoleum_fit},
        Row{"P-093 linoleum, 1 min/m2", linoleum(1), 0.606, 0.005, linoleum_fit},
        Row{"P-093 linoleum, 2 min/m2", linoleum(2), 0.741, 0.005, linoleum_fit},
        Row{"P-093 linoleum, 5 min/m2", linoleum(5), 0.780, 0.005, linoleum_fit},
        Row{"P-095 carpet, free dust, 1 min/m2", carpet_free(1), 0.181, 0.005, carpet_fit},
        Row{"P-095 carpet, free dust, 6 min/m2", carpet_free(6), 0.699, 0.005, carpet_fit},
        Row{"P-095 carpet, free dust, 10 min/m2", carpet_free(10), 0.865, 0.005, carpet_fit},
        Row{"P-096 strokes in 2 min/m2", dust::strokes_for(minutes_per_m2(2), {}), 10.8, 0.01, arithmetic},
        Row{"P-096 strokes in 5 min/m2", dust::strokes_for(minutes_per_m2(5), {}), 27, 0.01, arithmetic},
    });
    check({
        RangeRow{"linoleum at 5 min/m2", linoleum(5), 0.75, 0.85, "Ewers et al. 1994, abstract: above 75 %"},
        RangeRow{"bare wood, free dust at 5 min/m2", 1.0 - dust::vacuum_residual(plain_rate(SurfaceKind::bare_wood), minutes_per_m2(5)),
                 0.95, 1.0, "Ewers et al. 1994, abstract: above 95 %"},
        RangeRow{"bare wood, all dust at 5 min/m2", dust::vacuum_removed(SurfaceKind::bare_wood, plain_rate(SurfaceKind::bare_wood), minutes_per_m2(5)),
                 0.95, 1.0, "Ewers et al. 1994, abstract: above 95 % of the total dust"},
    });
}

TEST_CASE("repeated cleaning multiplies what is left")
{
    check({
        Row{"P-097 one pass of 0.6", dust::coverage_of(0.6, 1), 0.600, 1e-12, arithmetic},
        Row{"P-097 two passes", dust::coverage_of(0.6, 2), 0.840, 1e-12, arithmetic},
        Row{"P-097 three passes", dust::coverage_of(0.6, 3), 0.936, 1e-12, arithmetic},
        Row{"P-097 four passes", dust::coverage_of(0.6, 4), 0.9744, 1e-12, arithmetic},
        Row{"P-098 0.85, 0.90 and 0.60 in a row", dust::residual_after(std::array{0.85, 0.90, 0.60}), 0.006, 1e-9, arithmetic},
    });
}

TEST_CASE("one bucket brings dust back to a large floor")
{
    check({
        Row{"P-117 60 m2 in 8 L, 0.02 L/m2", mopped(0.02), 0.1642, 5e-3, mop_law},
        Row{"P-117 60 m2 in 8 L, 0.05 L/m2", mopped(0.05), 0.2495, 5e-3, mop_law},
        Row{"P-117 60 m2 in 8 L, 0.1 L/m2", mopped(0.1), 0.3668, 5e-3, mop_law},
        Row{"60 m2, two buckets, 0.05 L/m2", dust::mop(big_floor(0.05, dust::two_buckets)).floor, 0.115, 5e-3, mop_law},
    });
}

TEST_CASE("floor and buckets hold all that lay on the floor (P-100)")
{
    for (const double film : {0.02, 0.05, 0.1})
        for (const double into_water : {dust::one_bucket, dust::two_buckets}) {
            const dust::Mopped after = dust::mop(big_floor(film, into_water));
            CHECK(after.floor + after.water + after.rinsed == Approx(1.0).epsilon(1e-12));
        }
}
