#include "quiz/statistics/beta.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

namespace flapdoor::quiz {

// With whole parameters the share is a binomial tail that can be summed by hand: I_x(a, b) = P(at least a of a + b - 1).
TEST_CASE("the beta distribution agrees with sums done by hand")
{
    CHECK(beta_cdf(1, 1, 0.3) == Approx(0.3).margin(1e-13));
    CHECK(beta_cdf(2, 1, 0.3) == Approx(0.09).margin(1e-13));
    CHECK(beta_cdf(1, 5, 0.2) == Approx(1.0 - 0.32768).margin(1e-13));
    CHECK(beta_cdf(0.5, 0.5, 0.5) == Approx(0.5).margin(1e-13));
    CHECK(beta_cdf(0.5, 0.5, 0.25) == Approx(1.0 / 3.0).margin(1e-12));     // 2/pi asin(sqrt(x))
    CHECK(beta_cdf(3, 4, 0.0) == 0.0);
    CHECK(beta_cdf(3, 4, 1.0) == 1.0);
    CHECK(1.0 - beta_cdf(10, 2, 0.8) == Approx(0.677877).margin(5e-7));     // P(p > .8 | 9 of 10), uniform prior: SciPy 1.10.1
}

// F quantiles: any printed table, e.g. F(.95; 1, 10) = 4.96, F(.95; 5, 20) = 2.71, F(.975; 10, 10) = 3.72 (memory).
TEST_CASE("quantiles of F are those of printed tables")
{
    CHECK(f_quantile(1, 10, 0.95) == Approx(4.96).margin(0.005));
    CHECK(f_quantile(5, 20, 0.95) == Approx(2.71).margin(0.005));
    CHECK(f_quantile(10, 10, 0.975) == Approx(3.72).margin(0.005));
    CHECK(f_quantile(10, 10, 0.025) == Approx(1.0 / f_quantile(10, 10, 0.975)).epsilon(1e-9));
}

TEST_CASE("a quantile is where its share lies, and both ends mirror each other", "[property]")
{
    CHECK(rc::check([] {
        const double a = *rc::gen::inRange(1, 400) * 0.5, b = *rc::gen::inRange(1, 400) * 0.5;
        const double p = *rc::gen::inRange(1, 1000) / 1000.0;
        const double x = beta_quantile(a, b, p);
        RC_ASSERT(beta_cdf(a, b, x) == Approx(p).margin(1e-9));
        RC_ASSERT(beta_cdf(a, b, x) + beta_cdf(b, a, 1.0 - x) == Approx(1.0).margin(1e-9));
    }));
}

}
