#include "debrief/band.hpp"

#include "core/insist.hpp"
#include "debrief/level.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <limits>

using namespace flapdoor;
using namespace flapdoor::debrief;

TEST_CASE("quantiles lie straight between neighbors in the rising order")
{
    // Definition 7 of Hyndman & Fan 1996, by hand: place share x (n - 1).
    const std::vector<double> five{50.0, 10.0, 30.0, 20.0, 40.0};
    CHECK(quantile(five, 0.0) == 10.0);
    CHECK(quantile(five, 0.1) == Approx(14.0));
    CHECK(quantile(five, 0.5) == 30.0);
    CHECK(quantile(five, 0.9) == Approx(46.0));
    CHECK(quantile(five, 1.0) == 50.0);
    CHECK(quantile({3.0, 1.0}, 0.5) == 2.0);
    CHECK(quantile({7.0}, 0.9) == 7.0);
    CHECK_THROWS_AS(quantile({}, 0.5), BrokenPromise);
    CHECK_THROWS_AS(quantile({1.0}, 1.1), BrokenPromise);
    CHECK_THROWS_AS(quantile({1.0, std::numeric_limits<double>::quiet_NaN()}, 0.5), BrokenPromise);
}

TEST_CASE("the band of eleven runs leaves one out at either end")
{
    const Band band = band_of({10, 0, 9, 1, 8, 2, 7, 3, 6, 4, 5});
    CHECK(band.low == 1.0);
    CHECK(band.median == 5.0);
    CHECK(band.high == 9.0);
    CHECK(band.runs == 11);
    CHECK(band.is_band());
}

TEST_CASE("fewer than ten runs tell the least and the most, and say so")
{
    const Band two = band_of({4.0, 1.0});
    CHECK(two.low == 1.0);
    CHECK(two.median == 2.5);
    CHECK(two.high == 4.0);
    CHECK_FALSE(two.is_band());
    CHECK(meaning_of_band(0) == "no run, no band");
    CHECK(meaning_of_band(1) == "one run, no band");
    CHECK(meaning_of_band(2) == "least to most of 2 runs (too few for a band)");
    CHECK(meaning_of_band(10) == "10 to 90 % of 10 runs");
}

TEST_CASE("a band holds its median and lies within what it was made from", "[property]")
{
    CHECK(rc::check([] {
        const auto count = *rc::gen::inRange<std::size_t>(1, 60);
        std::vector<double> values;
        for (std::size_t i = 0; i < count; ++i) values.push_back(std::exp(*rc::gen::inRange(-200, 200) / 10.0));
        const Band band = band_of(values);
        RC_ASSERT(band.low <= band.median && band.median <= band.high);
        RC_ASSERT(band.low >= *std::min_element(values.begin(), values.end()));
        RC_ASSERT(band.high <= *std::max_element(values.begin(), values.end()));
        RC_ASSERT(band.runs == count);
        std::reverse(values.begin(), values.end());
        RC_ASSERT(band_of(values) == band);
    }));
}

TEST_CASE("a range tells its unit once where it is the same")
{
    const auto show = [](double value) { return value < 1000.0 ? std::to_string(static_cast<int>(value)) + " ug" : std::to_string(static_cast<int>(value / 1000.0)) + " mg"; };
    CHECK(range_text({4.0, 10.0, 38.0, 20}, show) == "4 to 38 ug");
    CHECK(range_text({4.0, 10.0, 38000.0, 20}, show) == "4 ug to 38 mg");
    CHECK(range_text({4.0, 4.0, 4.2, 20}, show) == "4 ug");
    CHECK(loading_text({0.3125, 1.0, 41.7, 20}) == "1 (0.31 to 42) ug/ft2");
    CHECK(amount_text({12.0, 130.0, 1200.0, 20}) == "130 ug (12 ug to 1.2 mg)");
    CHECK(amount_text({12.0, 130.0, 260.0, 20}) == "130 (12 to 260) ug");
    CHECK(loading_text({1.0, 1.0, 1.0, 1}) == "1 ug/ft2 (one run)");
    CHECK(exposure_text({0.5, 3.14, 25.4, 20}) == "typical 3.1, one in ten 25 ug/m3");
}
