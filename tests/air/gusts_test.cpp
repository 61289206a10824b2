#include "air/gusts.hpp"

#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>

using namespace flapdoor;
using namespace flapdoor::air;

namespace {

Link link_of(const Leak& leak) { return {.from = 0, .to = outdoors, .leak = leak, .drive = {}, .forward = {}, .backward = {}}; }

}

TEST_CASE("a pressure that wanders about nothing swaps air through a leak")
{
    for (const double exponent : {0.5, 0.65, 1.0}) {
        CAPTURE(exponent);
        const TwoWayFlow swapped = mean_flow(link_of({.at_one_pascal = {0.01}, .exponent = exponent}), {}, 1.0_Pa);
        // Half the mean of |x|^n for a standard normal x.
        const double half_moment = 0.5 * std::pow(2.0, exponent / 2.0) * std::tgamma((exponent + 1.0) / 2.0) / std::sqrt(std::numbers::pi);
        CHECK(swapped.out.si == Approx(0.01 * half_moment).epsilon(2e-2));
        CHECK(swapped.in.si == Approx(swapped.out.si).epsilon(1e-12));
    }
}

TEST_CASE("still air through a leak goes one way")
{
    const Leak leak{.at_one_pascal = {0.01}, .exponent = 0.65};
    const TwoWayFlow still = mean_flow(link_of(leak), 4.0_Pa, {});
    CHECK(still.out.si == Approx(flow(leak, 4.0_Pa).si));
    CHECK(still.in.si == 0.0);
}

TEST_CASE("drafts carry as much back as forth, and nothing against a pressure well above them")
{
    const Link leak = link_of({.at_one_pascal = {0.01}, .exponent = 0.5});
    const TwoWayFlow none = with_drafts(leak, {});
    CHECK(none.out.si > 0.0);
    CHECK(none.out.si == Approx(none.in.si).epsilon(1e-12));
    const TwoWayFlow little = with_drafts(leak, draft_rms);
    CHECK(little.net().si == Approx(flow(leak, draft_rms).si));
    CHECK(little.in.si > 0.0);
    CHECK(little.in < none.in);
    CHECK(with_drafts(leak, draft_rms * 5.0).in.si == 0.0);
    CHECK(with_drafts(leak, -draft_rms * 5.0).out.si == 0.0);
}

TEST_CASE("a flap lets less out by drafts than a plain hole of its size when it is pushed open")
{
    Link flap = link_of({.at_one_pascal = {0.01}, .exponent = 0.5});
    flap.backward = {{Pressure{}, 0.1}};
    const TwoWayFlow swapped = with_drafts(flap, {});
    CHECK(swapped.in.si < 0.2 * with_drafts(link_of(flap.leak), {}).in.si);
}

TEST_CASE("the moments of wind are a pascal on every side, as often one way as the other, and sides do not know of each other")
{
    const std::vector<Gust>& moments = gusts();
    const auto n = static_cast<double>(moments.size());
    for (std::size_t a = 0; a < house_sides; ++a) {
        double mean = 0.0;
        for (const Gust& moment : moments) mean += moment[a].si / n;
        CHECK(mean == Approx(0.0).margin(1e-12));
        for (std::size_t b = 0; b < house_sides; ++b) {
            double together = 0.0;
            for (const Gust& moment : moments) together += moment[a].si * moment[b].si / n;
            CAPTURE(a, b);
            if (a == b) CHECK(together == Approx(1.0));
            else CHECK(std::abs(together) < 0.25);
        }
    }
    double most = 0.0;
    for (const Gust& moment : moments)
        for (const Pressure side : moment) most = std::max(most, side.si);
    CHECK(most > 1.8);      // gusts now and then
}
