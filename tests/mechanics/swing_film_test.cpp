#include "mechanics/swing_film.hpp"

#include <catch2/catch.hpp>

#include <cmath>

using namespace flapdoor;
using namespace flapdoor::mechanics;

TEST_CASE("a film of a passage tells the same figures as the passage, and a frame for each opening")
{
    for (const Heading heading : {Heading::into_room, Heading::out_of_room}) {
        const FlapDoor door;
        const SwingFilm film = film_swing(door, heading);
        const FlapSwing plain = swing(door, heading);
        REQUIRE(film.frames.size() == plain.openings.size());
        CHECK(film.swing.peak == plain.peak);
        CHECK(film.swing.open_for == plain.open_for);
        CHECK(film.swing.closing == plain.closing);
    }
}

TEST_CASE("sheets of a film keep their length, hang from their edges and lie on the grid")
{
    const FlapDoor door;
    const SwingFilm film = film_swing(door, Heading::into_room);
    for (const SwingFrame& frame : film.frames) {
        REQUIRE(frame.second.size() == 13);
        CHECK(frame.second.front() == SectionPoint{Length{}, door.height});
        double length = 0.0;
        for (std::size_t i = 1; i < frame.second.size(); ++i)
            length += std::hypot((frame.second[i].x - frame.second[i - 1].x).si, (frame.second[i].height - frame.second[i - 1].height).si);
        CHECK(length == Approx((door.height - door.hem_height).si).epsilon(0.03));
        for (const SectionPoint& p : frame.second) {
            const double grains = p.x.si / 1e-5;
            CHECK(std::fabs(grains - std::round(grains)) < 1e-6);
        }
    }
    CHECK(film.frames.front().passer < Length{});
    CHECK(film.frames.back().passer > 1.0_m);
}

TEST_CASE("the hem is carried the way people go, and a moment between two frames lies between them")
{
    const SwingFilm film = film_swing({}, Heading::into_room);
    double most = 0.0;
    for (const SwingFrame& frame : film.frames) most = std::max(most, frame.second.back().x.si);
    CHECK(most > 0.4);
    const SwingFrame between = frame_at(film, swing_grid * 10.5);
    const double a = film.frames[10].passer.si;
    const double b = film.frames[11].passer.si;
    CHECK(between.passer.si == Approx(0.5 * (a + b)));
    CHECK(frame_at(film, Time{-1.0}).passer == film.frames.front().passer);
    CHECK(frame_at(film, Time{1e6}).passer == film.frames.back().passer);
}

TEST_CASE("one sheet has no second line; without folds the film shows when the tape gives way")
{
    FlapDoor one;
    one.sheets = 1;
    for (const SwingFrame& frame : film_swing(one, Heading::into_room).frames) CHECK(frame.second.empty());
    FlapDoor taut;
    taut.has_folds = false;
    const SwingFilm torn = film_swing(taut, Heading::into_room);
    CHECK_FALSE(torn.frames.front().has_torn_loose);
    CHECK(torn.frames.back().has_torn_loose);
}

TEST_CASE("a slit cut through both sheets leaks and opens as if there were one")
{
    FlapDoor through;
    through.is_slit_through = true;
    CHECK(uncovered_share(through) == 1.0);
    FlapDoor one;
    one.sheets = 1;
    const FlapSwing a = swing(through, Heading::into_room);
    CHECK(a.openings.front().area == swing(one, Heading::into_room).openings.front().area);
    CHECK(a.open_for > swing({}, Heading::into_room).open_for);
}
