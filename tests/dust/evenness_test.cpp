#include "still_room.hpp"

#include "dust/evenness.hpp"

#include <catch2/catch.hpp>

#include <numeric>

using namespace flapdoor;
using namespace flapdoor::dust;

namespace {

Spread counted(const Cloud& cloud, const CoarseBoxes& boxes, double mass = 1.0)
{
    Spread spread;
    for (std::size_t i = 0; i < cloud.count(); ++i) spread.add(boxes.box_at(cloud.x[i], cloud.y[i], cloud.z[i]), mass);
    return spread;
}

/// Every parcel east of the middle goes west with some chance.
Cloud leaning_west(Cloud cloud, float width, double chance)
{
    const Luck luck{21, Stream::parameter};
    for (std::size_t i = 0; i < cloud.count(); ++i)
        if (cloud.x[i] > 0.5F * width && luck.uniform(i, 0) < chance) cloud.x[i] -= 0.5F * width;
    return cloud;
}

}

TEST_CASE("boxes hold the air that furniture leaves")
{
    CloudRoom room = still_room(3.0_m, 3.0_m, 2.0_m, 0.1_m);
    stand(room, 0, 0, 9, 9, 1.0F);      // the lower south-west box is full
    const CoarseBoxes boxes(room);
    CHECK(boxes.air(boxes.box_at(0.5F, 0.5F, 0.5F)) == 0.0);
    CHECK(boxes.air(boxes.box_at(0.5F, 0.5F, 1.5F)) == Approx(1.0 / 17.0));
    double all = 0.0;
    for (std::size_t box = 0; box < CoarseBoxes::count; ++box) all += boxes.air(box);
    CHECK(all == Approx(1.0));
    CHECK(boxes.box_at(3.0F, 3.0F, 2.0F) == CoarseBoxes::count - 1);
}

TEST_CASE("an even cloud counts as even nearly always, a leaning one never when there is enough of it")
{
    const CloudRoom room = still_room(4.0_m, 3.0_m, 2.4_m, 0.1_m);
    const CoarseBoxes boxes(room);
    int even = 0;
    int leaning_few = 0;
    int leaning_many = 0;
    for (std::uint64_t seed = 0; seed < 200; ++seed) {
        even += counted(scattered(room, 300, seed), boxes).is_even(boxes);
        leaning_few += counted(leaning_west(scattered(room, 60, seed), 4.0F, 0.3), boxes).is_even(boxes);
        leaning_many += counted(leaning_west(scattered(room, 2'000, seed), 4.0F, 0.3), boxes).is_even(boxes);
    }
    CHECK(even >= 194);             // one in a hundred fails by chance
    CHECK(leaning_few > 100);       // sixty parcels cannot tell
    CHECK(leaning_many == 0);
}

TEST_CASE("too few parcels are no evidence, however heavy one of them is")
{
    const CloudRoom room = still_room(4.0_m, 3.0_m, 2.4_m, 0.1_m);
    const CoarseBoxes boxes(room);
    CHECK_FALSE(counted(scattered(room, 35, 1), boxes).is_even(boxes));
    CHECK_FALSE(Spread{}.is_even(boxes));
    Spread spread = counted(scattered(room, 500, 1), boxes);
    CHECK(spread.effective_parcels() == Approx(500.0));
    CHECK(spread.is_even(boxes));
    spread.add(0, 1000.0);
    CHECK(spread.effective_parcels() < 3.0);
    CHECK_FALSE(spread.is_even(boxes));
}

TEST_CASE("what lies low is not even")
{
    const CloudRoom room = still_room(4.0_m, 3.0_m, 2.4_m, 0.1_m);
    const CoarseBoxes boxes(room);
    Cloud cloud = scattered(room, 1'000, 3);
    for (float& z : cloud.z) z *= 0.7F;
    CHECK_FALSE(counted(cloud, boxes).is_even(boxes));
}
