#include "dust/mixed_zone.hpp"

#include "core/insist.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <cmath>
#include <numeric>

using namespace flapdoor;
using namespace flapdoor::dust;

namespace {

/// Masses after the spell, by the balance of each zone.
std::vector<double> after(const CoupledZones& zones, const std::vector<double>& start, Time spell)
{
    const std::vector<double> integrals = time_integrals(zones, start, spell);
    std::vector<double> end = start;
    for (std::size_t to = 0; to < start.size(); ++to) {
        end[to] -= zones.loss[to].si * integrals[to];
        for (std::size_t from = 0; from < start.size(); ++from) end[to] += zones.passing[to * start.size() + from].si * integrals[from];
    }
    return end;
}

}

TEST_CASE("one zone empties by the exponential law, however fast")
{
    for (const double loss : {1e-7, 1e-3, 0.3, 5.0, 90.0}) {
        CoupledZones zone(1);
        zone.loss[0] = Rate{loss};
        INFO("loss " << loss);
        CHECK(time_integrals(zone, {7.0}, 10.0_s)[0] == Approx(-7.0 * std::expm1(-10.0 * loss) / loss).epsilon(1e-11));
    }
    CHECK(time_integrals(CoupledZones(1), {7.0}, 10.0_s)[0] == 70.0);
}

TEST_CASE("two zones that exchange air follow the closed solution")
{
    // m' = -A m with A = [[a, -c], [-b, d]]: eigenvalues of a symmetric part, solved by hand for equal rates.
    constexpr double exchange = 0.02;
    constexpr double loss = 0.005;
    CoupledZones zones(2);
    zones.loss = {Rate{exchange + loss}, Rate{exchange + loss}};
    zones.pass(0, 1) = zones.pass(1, 0) = Rate{exchange};
    const std::vector<double> end = after(zones, {1.0, 0.0}, 30.0_s);
    const double sum = std::exp(-loss * 30.0);
    const double difference = std::exp(-(loss + 2.0 * exchange) * 30.0);
    CHECK(end[0] == Approx(0.5 * (sum + difference)).epsilon(1e-12));
    CHECK(end[1] == Approx(0.5 * (sum - difference)).epsilon(1e-12));
}

TEST_CASE("dust that passes through a zone on its way is counted in it")
{
    // A chain: 0 -> 1 -> gone (Bateman).
    CoupledZones zones(2);
    zones.loss = {Rate{0.3}, Rate{0.1}};
    zones.pass(0, 1) = Rate{0.3};
    const std::vector<double> end = after(zones, {5.0, 0.0}, 10.0_s);
    CHECK(end[1] == Approx(5.0 * 0.3 / (0.1 - 0.3) * (std::exp(-3.0) - std::exp(-1.0))).epsilon(1e-12));
}

TEST_CASE("a spell is the sum of its halves, nothing is negative and what is not lost stays", "[property]")
{
    const bool holds = rc::check([] {
        const auto count = *rc::gen::inRange<std::size_t>(1, 6);
        CoupledZones zones(count);
        std::vector<double> start;
        for (std::size_t from = 0; from < count; ++from) {
            start.push_back(*rc::gen::element(0.0, 1.0, 1e9));
            for (std::size_t to = 0; to < count; ++to) {
                if (to == from) continue;
                const Rate rate{*rc::gen::element(0.0, 1e-4, 0.01, 0.7)};
                zones.pass(from, to) = rate;
                zones.loss[from] += rate;
            }
        }
        const double before = std::accumulate(start.begin(), start.end(), 0.0);
        const std::vector<double> closed = after(zones, start, 10.0_s);
        RC_ASSERT(std::abs(std::accumulate(closed.begin(), closed.end(), 0.0) - before) <= 1e-11 * before);
        for (Rate& loss : zones.loss) loss += Rate{*rc::gen::element(0.0, 1e-3, 2.0)};
        const std::vector<double> whole = time_integrals(zones, start, 10.0_s);
        const std::vector<double> first = time_integrals(zones, start, 4.0_s);
        const std::vector<double> second = time_integrals(zones, after(zones, start, 4.0_s), 6.0_s);
        for (std::size_t z = 0; z < count; ++z) {
            RC_ASSERT(whole[z] >= 0.0);
            RC_ASSERT(std::abs(whole[z] - first[z] - second[z]) <= 1e-10 * (1.0 + before * 10.0));
        }
    });
    CHECK(holds);
}

TEST_CASE("a zone cannot pass on more than it loses")
{
    CoupledZones zones(2);
    zones.loss[0] = Rate{0.1};
    zones.pass(0, 1) = Rate{0.2};
    CHECK_THROWS_AS(time_integrals(zones, {1.0, 0.0}, 1.0_s), BrokenPromise);
    CHECK_THROWS_AS(time_integrals(CoupledZones(2), {1.0}, 1.0_s), BrokenPromise);
}
