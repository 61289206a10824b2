#include "rules/deadlines.hpp"

#include <catch2/catch.hpp>

// Dates of 40 CFR 745.84 and 745.86. Expected dates counted by hand; each K number is one worked check.

using namespace flapdoor::rules;
using namespace std::chrono;

TEST_CASE("the pamphlet is neither too old nor too late (40 CFR 745.84(a))")
{
    CHECK_FALSE(is_pamphlet_in_time(PamphletProof::signed_for, 61));    // K-100
    CHECK(is_pamphlet_in_time(PamphletProof::signed_for, 60));
    CHECK(is_pamphlet_in_time(PamphletProof::signed_for, 0));
    CHECK_FALSE(is_pamphlet_in_time(PamphletProof::mailed, 6));         // K-101
    CHECK(is_pamphlet_in_time(PamphletProof::mailed, 7));
    CHECK(is_pamphlet_in_time(PamphletProof::refusal_noted, 3));        // K-102
    CHECK_FALSE(is_pamphlet_in_time(PamphletProof::none, 3));
}

TEST_CASE("the report is due with the invoice or after 30 days (40 CFR 745.86(c)(1))")
{
    CHECK(report_due(2027y / March / 1, 2027y / March / 20) == 2027y / March / 20);     // K-103
    CHECK(report_due(2027y / March / 1, 2027y / April / 15) == 2027y / March / 31);
    CHECK(report_due(2027y / March / 1, std::nullopt) == 2027y / March / 31);
    CHECK(report_due(2027y / December / 15, std::nullopt) == 2028y / January / 14);
}

TEST_CASE("records are kept three years (40 CFR 745.86(a))")
{
    CHECK(records_kept_until(2027y / March / 1) == 2030y / March / 1);                  // K-104
    CHECK(records_kept_until(2028y / February / 29) == 2031y / February / 28);
}
