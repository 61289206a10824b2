#include "core/picograms.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <cmath>
#include <limits>

using namespace flapdoor;

static_assert(picograms(1.0_kg).count == 1'000'000'000'000'000);
static_assert(picograms(Mass{1.4e-15}).count == 1 && picograms(Mass{1.5e-15}).count == 2);
static_assert(picograms(Mass{-1.0}).count == 0);
static_assert(mass(Picograms{1'000'000'000'000}) == 1.0_g);
static_assert(part(Picograms{10}, 0.24).count == 2 && part(Picograms{10}, 0.26).count == 3);
static_assert(Amount{{1}, {0}}.is_zero() == false && Amount{}.is_zero());

TEST_CASE("a part is never negative and never more than there is", "[property]")
{
    const bool holds = rc::check([] {
        const Picograms of{*rc::gen::inRange<std::int64_t>(0, std::numeric_limits<std::int64_t>::max() / 4)};
        const double share = *rc::gen::element(-1.0, 0.0, 1e-300, 1e-9, 0.1, 0.5, 0.9999999999999999, 1.0, 2.0, std::nan(""), HUGE_VAL);
        const Picograms taken = part(of, share);
        RC_ASSERT(taken.count >= 0);
        RC_ASSERT(taken <= of);
        RC_ASSERT(share < 1.0 || taken == of || std::isnan(share));
    });
    CHECK(holds);
}

TEST_CASE("a larger share is never a smaller part", "[property]")
{
    const bool holds = rc::check([] {
        const Picograms of{*rc::gen::inRange<std::int64_t>(0, 1'000'000'000'000)};
        const double a = static_cast<double>(*rc::gen::inRange(0, 10'001)) / 10'000.0;
        const double b = static_cast<double>(*rc::gen::inRange(0, 10'001)) / 10'000.0;
        RC_ASSERT((a <= b) == (part(of, a) <= part(of, b)) || part(of, a) == part(of, b));
        RC_ASSERT(std::fabs(static_cast<double>(part(of, a).count) - a * static_cast<double>(of.count)) <= 0.5 + 1e-3);
    });
    CHECK(holds);
}

TEST_CASE("dust and its lead are taken together")
{
    const Amount half = part({{100}, {7}}, 0.5);
    CHECK(half == Amount{{50}, {4}});
    Amount rest{{100}, {7}};
    rest -= half;
    CHECK(rest == Amount{{50}, {3}});
    CHECK(rest + half == Amount{{100}, {7}});
}
