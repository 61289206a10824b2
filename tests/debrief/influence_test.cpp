#include "debrief/influence.hpp"

#include "core/insist.hpp"
#include "debrief/uncertainty.hpp"

#include <catch2/catch.hpp>

#include <set>

using namespace flapdoor;
using namespace flapdoor::debrief;

TEST_CASE("rank correlation goes by order alone")
{
    CHECK(rank_correlation({1, 2, 3, 4}, {1, 10, 100, 1000}).value() == Approx(1.0));
    CHECK(rank_correlation({1, 2, 3, 4}, {9, 4, 1, 0}).value() == Approx(-1.0));
    // By hand: rank differences 1, 1, 1, 1, 0; 1 - 6 x 4 / (5 x 24) = 0.8.
    CHECK(rank_correlation({1, 2, 3, 4, 5}, {2, 1, 4, 3, 5}).value() == Approx(0.8));
    // Equal values share their mean rank, by hand: ranks 0.5 0.5 2 3 against 0 1 2 3; 4.5 / sqrt(4.5 x 5).
    CHECK(rank_correlation({7, 7, 8, 9}, {1, 2, 3, 4}).value() == Approx(0.948683298));
}

TEST_CASE("what never differs, or is too short, has no rank correlation")
{
    CHECK_FALSE(rank_correlation({1, 1, 1}, {1, 2, 3}));
    CHECK_FALSE(rank_correlation({1, 2}, {1, 2}));
    CHECK_THROWS_AS(rank_correlation({1, 2, 3}, {1, 2}), BrokenPromise);
}

TEST_CASE("chance reaches less far the more runs there are")
{
    CHECK(beyond_chance(1) == 1.0);
    CHECK(beyond_chance(3) == 1.0);
    CHECK(beyond_chance(20) == Approx(0.592).margin(0.001));
    CHECK(beyond_chance(200) == Approx(0.183).margin(0.001));
}

TEST_CASE("every parameter is told once, under a title of its own")
{
    std::set<std::string_view> titles;
    dust::RunParameters drawn;
    for (const Uncertainty& uncertainty : uncertainties) {
        titles.insert(uncertainty.title);
        drawn.*uncertainty.member = -1.0;
    }
    CHECK(titles.size() == uncertainties.size());
    for (const Uncertainty& uncertainty : uncertainties) CHECK(drawn.*uncertainty.member == -1.0);
    CHECK(drawn.card_coverage == -1.0);
    CHECK(drawn.yield == -1.0);
}
