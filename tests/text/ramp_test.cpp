#include "text/ramp.hpp"

#include "core/insist.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <limits>

using namespace flapdoor;
using text::contrast;
using text::dust_color;
using text::OkLab;
using text::ok_lab;
using text::Rgb;

namespace {

double distance(const OkLab& p, const OkLab& q)
{
    return std::sqrt((p.lightness - q.lightness) * (p.lightness - q.lightness) + (p.a - q.a) * (p.a - q.a) + (p.b - q.b) * (p.b - q.b));
}

}

TEST_CASE("OKLab of known colors is as published")
{
    // Ottosson 2020: white is (1, 0, 0); red, green and blue of sRGB as commonly tabulated.
    CHECK(ok_lab({255, 255, 255}).lightness == Approx(1.0).margin(1e-4));
    CHECK(ok_lab({255, 255, 255}).a == Approx(0.0).margin(1e-4));
    CHECK(ok_lab({255, 0, 0}).lightness == Approx(0.6280).margin(2e-4));
    CHECK(ok_lab({255, 0, 0}).a == Approx(0.2249).margin(2e-4));
    CHECK(ok_lab({255, 0, 0}).b == Approx(0.1258).margin(2e-4));
    CHECK(ok_lab({0, 0, 255}).lightness == Approx(0.4520).margin(2e-4));
    CHECK(ok_lab({0, 0, 0}).lightness == Approx(0.0).margin(1e-6));
}

TEST_CASE("dust grows darker all the way, from 0.95 to 0.25, in even steps")
{
    CHECK(ok_lab(dust_color(0.0)).lightness == Approx(0.95).margin(0.004));
    CHECK(ok_lab(dust_color(1.0)).lightness == Approx(0.25).margin(0.004));

    constexpr int steps = 32;
    double least = 1.0, most = 0.0;
    for (int i = 0; i < steps; ++i) {
        const OkLab here = ok_lab(dust_color(i / double{steps})), next = ok_lab(dust_color((i + 1) / double{steps}));
        CHECK(next.lightness < here.lightness);
        least = std::min(least, distance(here, next));
        most = std::max(most, distance(here, next));
    }
    CHECK(most / least < 1.25);     // whole-number channels make the steps a little uneven
}

TEST_CASE("shares outside 0 to 1 and not-a-number stay on the ramp")
{
    CHECK(dust_color(-3.0) == dust_color(0.0));
    CHECK(dust_color(7.0) == dust_color(1.0));
    CHECK(dust_color(std::numeric_limits<double>::quiet_NaN()) == dust_color(0.0));
}

TEST_CASE("levels are placed by decades")
{
    CHECK(text::share_of_decades(1.0, 1.0, 1000.0) == 0.0);
    CHECK(text::share_of_decades(10.0, 1.0, 1000.0) == Approx(1.0 / 3));
    CHECK(text::share_of_decades(1000.0, 1.0, 1000.0) == 1.0);
    CHECK(text::share_of_decades(0.0, 1.0, 1000.0) == 0.0);
    CHECK(text::share_of_decades(-5.0, 1.0, 1000.0) == 0.0);
    CHECK(text::share_of_decades(1e9, 1.0, 1000.0) == 1.0);
    CHECK_THROWS_AS(text::share_of_decades(1.0, 0.0, 1.0), BrokenPromise);
}

TEST_CASE("text and marks of a page stand out enough from the paper")
{
    // WCAG 2.1, 1.4.3 (text, 4.5) and 1.4.11 (graphics, 3).
    using namespace text::ink;
    CHECK(contrast(text::ink::text, paper) >= 7.0);
    CHECK(contrast(muted, paper) >= 4.5);
    CHECK(contrast(accent, paper) >= 4.5);
    CHECK(contrast(caution, paper) >= 4.5);
    CHECK(contrast(text::ink::line, paper) >= 3.0);
    CHECK(contrast({0, 0, 0}, {255, 255, 255}) == Approx(21.0));
    CHECK(contrast(accent, paper) == contrast(paper, accent));
    CHECK(text::to_hex(accent) == "#0F5A5E");
}
