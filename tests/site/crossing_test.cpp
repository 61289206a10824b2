#include "trial.hpp"

#include "air/passage.hpp"
#include "site/crossing.hpp"
#include "site/passing_time.hpp"

namespace flapdoor::site {

namespace {

constexpr dust::SizeClass one_micron = dust::SizeClass::um_1;

/// Share of the room's mixed dust that one passage out takes along, as a volume.
double swapped(const std::string& flap, double uncertain = 1.0)
{
    Trial trial;
    trial.after("hvac-off window close-return cover-return close-supply cover-supply close-closet cover-closet");
    if (!flap.empty()) trial.then("do = \"hang-flap\", opening = \"door\", sheeting = \"poly\"" + flap);
    trial.site.uncertain.passage = uncertain;
    const std::size_t floor = surface_named(trial.site, "Back bedroom, floor");
    strew(trial.site, floor, 0, one_micron, 1.0_g);
    raise_into_air(trial.site, trial.site.surfaces[floor].free(0, one_micron), trial.site.work_room, one_micron, trial.site.surfaces[floor].patches[0].free[one_micron]);
    leave(trial.site, worker(trial.site, {"lee"}), false);
    audit(trial.site);
    const Picograms out = trial.site.ledger.crossed(dust::Pathway::doorway)[one_micron].dust;
    return mass(out) / 1.0_g * trial.site.room().volume.si;
}

const std::string careful = ", gap = \"3 in\"";

}

TEST_CASE("a careful flap swaps the typical volume in a passage, an open doorway the most", "[crossing]")
{
    const double good = swapped(careful);
    CHECK(good == Approx(air::flap_passage.si).epsilon(0.15));      // the shipped doorway is not far from the usual one
    CHECK(swapped("") == Approx(air::hinged_door_passage.si).epsilon(0.02));
    CHECK(swapped(careful, 1.5) == Approx(1.5 * good).epsilon(0.01));
}

TEST_CASE("a flap that stands open for longer swaps more, but never more than a doorway without one", "[crossing]")
{
    const double good = swapped(careful);
    CHECK(swapped(careful + ", has-folds = false") > 1.5 * good);
    CHECK(swapped(careful + ", is-taped = false") > 1.5 * good);
    CHECK(swapped(careful + ", is-taped = false") <= air::hinged_door_passage.si * 1.001);
    CHECK(swapped(careful + ", sheets = 1") == Approx(good).epsilon(0.15));
}

}
