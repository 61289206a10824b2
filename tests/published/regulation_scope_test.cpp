#include "rules/scope.hpp"

#include <catch2/catch.hpp>

// Does the renovation rule apply? Expected answers worked out by hand from the paragraph beside each row; each K number
// is one worked check.

using namespace flapdoor;
using namespace flapdoor::rules;

namespace {

JobScope house_of_1930(std::vector<RoomWork> interior)
{
    JobScope job;
    job.built = 1930;
    job.interior = std::move(interior);
    return job;
}

}

TEST_CASE("the rule begins with housing built before 1978 (40 CFR 745.82(a), 745.83)")
{
    JobScope job = house_of_1930({{"bedroom", 8.0_ft2}});
    job.built = 1977;
    CHECK(scope_of(job) == Scope::covered);         // K-01
    job.built = 1978;
    CHECK(scope_of(job) == Scope::outside);         // K-02
    job.built = 1977;
    job.is_paid = false;
    CHECK(scope_of(job) == Scope::outside);         // compensation is part of what a renovation firm does
    job.is_paid = true;
    job.is_for_elderly_without_child = true;
    CHECK(scope_of(job) == Scope::outside);         // TSCA 401: no target housing
    job.housing = job::HousingKind::child_occupied_facility;
    CHECK(scope_of(job) == Scope::covered);
    job.housing = job::HousingKind::other;
    CHECK(scope_of(job) == Scope::outside);
}

TEST_CASE("minor work is up to 6 sq ft a room, without windows, demolition or barred practices (40 CFR 745.83)")
{
    CHECK(scope_of(house_of_1930({{"bedroom", 6.0_ft2}})) == Scope::minor);                                             // K-03
    CHECK(scope_of(house_of_1930({{"bedroom", 6.1_ft2}})) == Scope::covered);                                           // K-04
    CHECK(scope_of(house_of_1930({{"bedroom", 4.0_ft2}, {"hall", 4.0_ft2}, {"bath", 4.0_ft2}})) == Scope::minor);       // K-05
    CHECK(scope_of(house_of_1930({{"bedroom", 4.0_ft2, 1}, {"bedroom", 4.0_ft2, 20}})) == Scope::covered);              // within 30 days: one job of 8
    CHECK(scope_of(house_of_1930({{"bedroom", 4.0_ft2, 1}, {"bedroom", 4.0_ft2, 45}})) == Scope::minor);                // K-07
    CHECK(scope_of(house_of_1930({{"bedroom", 4.0_ft2, 1}, {"bedroom", 4.0_ft2, 30}})) == Scope::covered);
    CHECK(scope_of(house_of_1930({{"bedroom", 4.0_ft2, 1}, {"bedroom", 4.0_ft2, 31}})) == Scope::minor);

    JobScope window = house_of_1930({{"bedroom", 3.0_ft2}});
    window.replaces_window = true;
    CHECK(scope_of(window) == Scope::covered);      // K-08
    JobScope machine = house_of_1930({{"bedroom", 2.0_ft2}});
    machine.uses_barred_practice = true;
    CHECK(scope_of(machine) == Scope::covered);     // K-09
    JobScope wall = house_of_1930({{"bedroom", 5.0_ft2}});
    wall.demolishes_painted_area = true;
    CHECK(scope_of(wall) == Scope::covered);
    JobScope outside = house_of_1930({});
    outside.exterior = 20.0_ft2;
    CHECK(scope_of(outside) == Scope::minor);
    outside.exterior = 20.1_ft2;
    CHECK(scope_of(outside) == Scope::covered);
}

TEST_CASE("paint counts as lead paint from 1.0 mg/cm2 or 0.5 % on (40 CFR 745.82(a))")
{
    CHECK(is_lead_paint({Tester::certified_renovator, true, 1.0, 0.0}));            // K-11
    CHECK(is_lead_paint({Tester::inspector, true, 0.0, 0.5}));
    CHECK_FALSE(is_lead_paint({Tester::certified_renovator, true, 0.9, 0.4}));
}

TEST_CASE("only tests by certified people, of every affected part, exempt a job (40 CFR 745.82(a)(1)-(3))")
{
    const PaintTest low{Tester::certified_renovator, true, 0.9, 0.4};
    CHECK(exempts({low, low}));                                                     // K-12
    CHECK_FALSE(exempts({low, {Tester::trained_worker, true, 0.0, 0.0}}));          // K-13
    CHECK_FALSE(exempts({low, {Tester::certified_renovator, false, 0.0, 0.0}}));
    CHECK_FALSE(exempts({low, {Tester::risk_assessor, true, 1.0, 0.0}}));
    CHECK_FALSE(exempts({}));
    JobScope job = house_of_1930({{"bedroom", 30.0_ft2}});
    job.is_shown_free_of_lead = exempts({low});
    CHECK(scope_of(job) == Scope::outside);
}

TEST_CASE("assisted housing asks for safe practices beyond 2 sq ft a room (24 CFR 35.1350(d))")
{
    JobScope job = house_of_1930({{"bedroom", 3.0_ft2}});
    job.is_assisted_housing = true;
    CHECK(scope_of(job) == Scope::minor);           // K-14: minor under the renovation rule,
    CHECK(asks_for_safe_practices(job));            // yet not under the other one
    job.interior = {{"bedroom", 2.0_ft2}};
    CHECK_FALSE(asks_for_safe_practices(job));
    job.interior = {{"bedroom", 30.0_ft2}};
    job.is_assisted_housing = false;
    CHECK_FALSE(asks_for_safe_practices(job));
}

TEST_CASE("a child-occupied facility is visited often and long enough by a child under six (40 CFR 745.83)")
{
    const std::vector<double> two_days{0, 3, 0, 3, 0, 0, 0};
    CHECK(is_child_occupied({5, std::vector(10, two_days)}));
    CHECK_FALSE(is_child_occupied({6, std::vector(10, two_days)}));
    CHECK_FALSE(is_child_occupied({5, std::vector(9, two_days)}));                                                  // 54 h a year
    CHECK_FALSE(is_child_occupied({5, std::vector(20, std::vector<double>{0, 6, 0, 0, 0, 0, 0})}));                 // one day a week
    CHECK_FALSE(is_child_occupied({5, std::vector(20, std::vector<double>{0, 2.9, 0, 3.1, 0, 0, 0})}));             // one long day
}
