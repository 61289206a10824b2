#include "mechanics/flap_swing.hpp"

#include "core/insist.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

using namespace flapdoor;
using namespace flapdoor::mechanics;

namespace {

FlapDoor with(auto change)
{
    FlapDoor door;
    change(door);
    return door;
}

const FlapDoor careful{};
const FlapDoor no_dowel = with([](FlapDoor& d) { d.dowel = {}; });
const FlapDoor one_layer = with([](FlapDoor& d) { d.sheets = 1; });
const FlapDoor untaped = with([](FlapDoor& d) { d.is_taped = false; });
const FlapDoor too_short = with([](FlapDoor& d) { d.hem_height = 0.61_m; });
const FlapDoor no_folds = with([](FlapDoor& d) { d.has_folds = false; });

double open_for(const FlapDoor& door, Heading heading = Heading::into_room) { return swing(door, heading).open_for.si; }
Area at_rest(const FlapDoor& door) { return swing(door, Heading::into_room).openings.front().area; }

const Lean& lean_at(const std::vector<Lean>& leans, Pressure across)
{
    const auto found = std::find_if(leans.begin(), leans.end(), [&](const Lean& lean) { return lean.across == across; });
    REQUIRE(found != leans.end());
    return *found;
}

}

TEST_CASE("a passage opens a flap door, and it falls shut in about one swing")
{
    for (const Heading heading : {Heading::into_room, Heading::out_of_room}) {
        const FlapSwing passage = swing(careful, heading);
        CHECK(passage.peak.si == Approx(0.46).epsilon(0.05));
        CHECK(passage.open_for.si == Approx(0.44).epsilon(0.06));
        CHECK(passage.closing > 2.0_s);
        CHECK(passage.closing < 5.0_s);
        CHECK_FALSE(passage.has_torn_loose);
        CHECK(passage.openings.front().angle == 0.0);
        CHECK(passage.openings.back().area < passage.openings.front().area + 0.02_m2);
        CHECK(std::fabs(passage.openings.back().angle) < 0.05);
    }
}

TEST_CASE("the second sheet swings the way that people go")
{
    const auto widest = [](Heading heading) {
        double most = 0.0;
        for (const Opening& opening : swing(careful, heading).openings)
            if (std::fabs(opening.angle) > std::fabs(most)) most = opening.angle;
        return most;
    };
    CHECK(widest(Heading::into_room) == Approx(0.75).epsilon(0.1));
    CHECK(widest(Heading::out_of_room) == Approx(-0.75).epsilon(0.1));
}

TEST_CASE("each fault of a flap door shows in its own figures")
{
    const double usual = open_for(careful);
    SECTION("without folds the slit sheet is torn from its tape and stays open")
    {
        const FlapSwing torn = swing(no_folds, Heading::into_room);
        CHECK(torn.has_torn_loose);
        CHECK(torn.open_for.si / usual == Approx(3.4).epsilon(0.1));
        CHECK(swing(no_folds, Heading::out_of_room).has_torn_loose);
    }
    SECTION("a slit sheet held at its head alone is pushed out of the way whole")
    {
        CHECK(open_for(untaped) / usual == Approx(10.3).epsilon(0.1));
        CHECK(swing(untaped, Heading::into_room).peak.si > 1.5);
    }
    SECTION("one layer opens for a passage much as two do, but does not shut the slit at rest")
    {
        CHECK(open_for(one_layer) / usual == Approx(1.0).epsilon(0.1));
        CHECK(at_rest(one_layer) / at_rest(careful) == Approx(1.0 / 0.3).epsilon(0.05));
    }
    SECTION("without its dowel the second sheet does not lie on the slit, and a third of the pressure lifts it as far")
    {
        CHECK(open_for(no_dowel) / usual == Approx(1.0).epsilon(0.1));
        CHECK(at_rest(no_dowel) / at_rest(careful) == Approx(1.0 / 0.3).epsilon(0.05));
        CHECK(lean_at(leans(no_dowel), 0.4_Pa).angle == Approx(0.295).epsilon(0.02));
        CHECK(lean_at(leans(careful), 0.4_Pa).angle == Approx(0.089).epsilon(0.02));
    }
    SECTION("a short second sheet leaves the foot of the slit bare, for which it is back sooner")
    {
        CHECK(uncovered_share(too_short) == Approx(0.46 / 1.70));
        CHECK(at_rest(too_short) / at_rest(careful) == Approx(1.63).epsilon(0.05));
        CHECK(open_for(too_short) < usual);
    }
}

TEST_CASE("finer links and steps change the figures by less than a tenth")
{
    for (const FlapDoor& door : {careful, no_folds, untaped}) {
        for (const Heading heading : {Heading::into_room, Heading::out_of_room}) {
            const FlapSwing usual = swing(door, heading);
            const FlapSwing finer = swing(door, heading, 1.0_mps, {Time{1.0 / 480.0}, 40}, 24);
            CHECK(usual.open_for.si == Approx(finer.open_for.si).epsilon(0.1));
            CHECK(usual.peak.si == Approx(finer.peak.si).epsilon(0.1));
            CHECK(usual.has_torn_loose == finer.has_torn_loose);
        }
    }
    const std::vector<Lean> usual = leans(careful);
    const std::vector<Lean> finer = leans(careful, {Time{1.0 / 480.0}, 40}, 24);
    for (const Pressure across : {0.1_Pa, 0.4_Pa}) {
        CHECK(lean_at(usual, across).angle == Approx(lean_at(finer, across).angle).epsilon(0.03));
        CHECK(lean_at(usual, across).slit.si == Approx(lean_at(finer, across).slit.si).epsilon(0.05));
    }
}

TEST_CASE("how fast somebody walks through hardly matters")
{
    // As the one field record of doors found (Hayden et al., NIOSH record 20031962), there for rigid doors.
    const double usual = open_for(careful);
    for (const Speed pace : {0.5_mps, 0.75_mps, 1.25_mps, 1.5_mps}) CHECK(swing(careful, Heading::into_room, pace).open_for.si == Approx(usual).epsilon(0.1));
}

TEST_CASE("what comes out of the solver lies on its grid and is the same each time")
{
    const FlapSwing once = swing(careful, Heading::into_room);
    const FlapSwing again = swing(careful, Heading::into_room);
    REQUIRE(once.openings.size() == again.openings.size());
    for (std::size_t i = 0; i < once.openings.size(); ++i) {
        CHECK(once.openings[i].area == again.openings[i].area);
        CHECK(once.openings[i].angle == again.openings[i].angle);
        const double square_centimeters = once.openings[i].area.si * 1e4;
        CHECK(std::fabs(square_centimeters - std::nearbyint(square_centimeters)) < 1e-6);
    }
    CHECK(once.open_for == again.open_for);
}

TEST_CASE("a door that nobody could hang is a mistake of ours")
{
    CHECK_THROWS_AS(swing(with([](FlapDoor& d) { d.width = 0.1_m; }), Heading::into_room), BrokenPromise);
    CHECK_THROWS_AS(swing(with([](FlapDoor& d) { d.sheets = 3; }), Heading::into_room), BrokenPromise);
    CHECK_THROWS_AS(leans(with([](FlapDoor& d) { d.slit_length = 2.0_m; })), BrokenPromise);
    CHECK_THROWS_AS(swing(careful, Heading::into_room, 5.0_mps), BrokenPromise);
}
