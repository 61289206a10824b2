#include "dust/apportion.hpp"

#include "core/insist.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <cmath>
#include <numeric>

using namespace flapdoor;
using namespace flapdoor::dust;

TEST_CASE("pieces add up to the amount, and each is within a picogram of its share", "[property]")
{
    const bool holds = rc::check([] {
        const Amount amount{{*rc::gen::inRange<std::int64_t>(0, 1'000'000'000'000)}, {*rc::gen::inRange<std::int64_t>(0, 1'000)}};
        const auto parts = *rc::gen::container<std::vector<int>>(*rc::gen::inRange<std::size_t>(1, 40), rc::gen::inRange(0, 1000));
        std::vector<double> weights(parts.begin(), parts.end());
        weights[*rc::gen::inRange<std::size_t>(0, weights.size())] += 0.25;
        const double sum = std::accumulate(weights.begin(), weights.end(), 0.0);

        const std::vector<Amount> pieces = apportion(amount, weights);
        RC_ASSERT(pieces.size() == weights.size());
        Amount all;
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            all += pieces[i];
            const auto is_near = [&](Picograms piece, Picograms whole) {
                const double wanted = static_cast<double>(whole.count) * (weights[i] / sum);
                return piece.count >= 0 && std::fabs(static_cast<double>(piece.count) - wanted) <= 1.001;
            };
            RC_ASSERT(is_near(pieces[i].dust, amount.dust));
            RC_ASSERT(is_near(pieces[i].lead, amount.lead));
        }
        RC_ASSERT(all == amount);
    });
    CHECK(holds);
}

TEST_CASE("who has no weight gets nothing, wherever it stands")
{
    const std::vector<double> weights{0.0, 1.0, 0.0, 2.0, 0.0};
    const std::vector<Amount> pieces = apportion({{300}, {3}}, weights);
    CHECK(pieces == std::vector<Amount>{{}, {{100}, {1}}, {}, {{200}, {2}}, {}});
}

TEST_CASE("a few picograms are not rounded away among many")
{
    const std::vector<double> weights(1000, 1.0);
    Amount all;
    for (const Amount& piece : apportion({{7}, {1}}, weights)) {
        CHECK(piece.dust.count <= 1);
        all += piece;
    }
    CHECK(all == Amount{{7}, {1}});
}

TEST_CASE("somebody must take the amount, and nobody less than nothing", "[promise]")
{
    const Amount amount{{10}, {1}};
    CHECK_THROWS_AS(apportion(amount, {}), BrokenPromise);
    CHECK_THROWS_AS(apportion(amount, std::vector<double>{0.0, 0.0}), BrokenPromise);
    CHECK_THROWS_AS(apportion(amount, std::vector<double>{2.0, -1.0}), BrokenPromise);
    CHECK_THROWS_AS(apportion(amount, std::vector<double>{1.0, std::nan("")}), BrokenPromise);
}
