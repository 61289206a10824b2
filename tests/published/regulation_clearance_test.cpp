#include "rules/clearance.hpp"
#include "rules/worker_limits.hpp"

#include <catch2/catch.hpp>

// Clearance samples in place of the cloth check, and the limits for workers. Expected answers read from the paragraph beside
// each row; each K number is one worked check.

using namespace flapdoor;
using namespace flapdoor::rules;

TEST_CASE("a clearance sample has to be below its level (89 FR 89416; 40 CFR 745.227(e)(8)(vii))")
{
    CHECK_FALSE(is_cleared(SampledSurface::floor, 5.0_ugpft2));     // K-93: equal to the level fails
    CHECK(is_cleared(SampledSurface::floor, 4.9_ugpft2));
    CHECK_FALSE(is_cleared(SampledSurface::sill, 40.0_ugpft2));
    CHECK(is_cleared(SampledSurface::sill, 39.0_ugpft2));
    CHECK_FALSE(is_cleared(SampledSurface::trough, 100.0_ugpft2));
    CHECK(is_cleared(SampledSurface::trough, 99.0_ugpft2));
}

TEST_CASE("samples wait an hour after the final cleaning (40 CFR 745.227(e)(8)(iv))")
{
    const Time mopped = 15.0_h;
    CHECK(mopped + 40.0_min < earliest_sample(mopped));             // K-94: too early
    CHECK(mopped + 60.0_min >= earliest_sample(mopped));
}

TEST_CASE("samples stand in for cloths only when all of it is agreed (40 CFR 745.85(c))")
{
    CHECK(may_replace_cloths({true, true, true, true}));
    CHECK_FALSE(may_replace_cloths({false, true, true, true}));     // K-95: the customer merely likes samples
    CHECK_FALSE(may_replace_cloths({true, false, true, true}));
    CHECK_FALSE(may_replace_cloths({true, true, false, true}));
    CHECK_FALSE(may_replace_cloths({true, true, true, false}));
}

TEST_CASE("a longer shift has a lower mean (29 CFR 1926.62(c))")
{
    const auto micrograms = [](Time shift) { return allowed_mean(shift) / 1e-9_kgpm3; };
    CHECK(micrograms(8.0_h) == Approx(50.0));
    CHECK(micrograms(4.0_h) == Approx(50.0));
    CHECK(micrograms(10.0_h) == Approx(40.0));                      // K-44
    CHECK(micrograms(12.0_h) == Approx(33.3).margin(0.05));
}
