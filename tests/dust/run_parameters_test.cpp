#include "dust/run_parameters.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <vector>

using namespace flapdoor::dust;

namespace {

std::vector<double> drawn(double RunParameters::*member)
{
    std::vector<double> values;
    for (std::uint64_t seed = 0; seed < 4000; ++seed) values.push_back(draw_parameters(seed).*member);
    std::sort(values.begin(), values.end());
    return values;
}

}

TEST_CASE("one seed always draws the same parameters, another seed others")
{
    CHECK(draw_parameters(7) == draw_parameters(7));
    CHECK_FALSE(draw_parameters(7) == draw_parameters(8));
}

TEST_CASE("drawn multipliers have the median and the spread they claim")
{
    struct Claim {
        double RunParameters::*member;
        double median;
        double gsd;
    };
    for (const Claim& claim : {Claim{&RunParameters::yield, 1.0, 3.0}, Claim{&RunParameters::passage, 1.0, 1.8},
                               Claim{&RunParameters::raised, 1.0, 5.0}, Claim{&RunParameters::handling, 1.0, 10.0}}) {
        const std::vector<double> values = drawn(claim.member);
        CHECK(std::log(values[2000]) == Approx(std::log(claim.median)).margin(0.1 * std::log(claim.gsd)));
        CHECK(values[3365] / values[2000] == Approx(claim.gsd).epsilon(0.2));   // 84.1 %: one standard deviation
        CHECK(values.back() <= std::pow(claim.gsd, 2.5) * claim.median * 1.0001);
    }
}

TEST_CASE("what is known to lie in a range never leaves it")
{
    struct Claim {
        double RunParameters::*member;
        double least;
        double most;
    };
    for (const Claim& claim : {Claim{&RunParameters::sole_uptake, 0.10, 0.40}, Claim{&RunParameters::pad_capture, 0.2, 0.5},
                               Claim{&RunParameters::bound, 0.5, 1.5}, Claim{&RunParameters::edge_penalty, 2.0, 5.0},
                               Claim{&RunParameters::card_coverage, 0.002, 0.02}}) {
        const std::vector<double> values = drawn(claim.member);
        CHECK(values.front() >= claim.least);
        CHECK(values.back() <= claim.most);
        CHECK(values.front() < values.back());
    }
}
