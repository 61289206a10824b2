#include "trial.hpp"

#include "dust/soles.hpp"
#include "dust/tack_pad.hpp"
#include "site/cleaning.hpp"
#include "site/crossing.hpp"
#include "site/feet.hpp"
#include "site/passing_time.hpp"

#include <algorithm>

#include <rapidcheck.h>

namespace flapdoor::site {

namespace {

constexpr dust::SizeClass fine = dust::SizeClass::um_5;

/// Dust onto both soles, half on each, by way of the floor.
void load_soles(Trial& trial, Mass amount)
{
    const std::size_t floor = surface_named(trial.site, "Back bedroom, floor");
    for (Shoe& shoe : lee(trial).shoes) {
        strew(trial.site, floor, 0, fine, amount * 0.5);
        trial.site.ledger.move(trial.site.surfaces[floor].free(0, fine), shoe.sole.free(fine), fine, trial.site.surfaces[floor].patches[0].free[fine]);
    }
}

double on_soles(Trial& trial)
{
    double sum = 0.0;
    for (const Shoe& shoe : lee(trial).shoes) sum += static_cast<double>(shoe.sole.load.free[fine].dust.count);
    return sum;
}

}

TEST_CASE("soles lose dust over clean floor as a power law, not by halves", "[feet]")
{
    Trial trial;
    load_soles(trial, 0.1_g);
    const double start = on_soles(trial);
    const std::size_t floor = surface_named(trial.site, "Back bedroom, floor");
    int steps = 0;
    const plan::Raster& raster = trial.site.room().raster;
    for (const std::size_t cell : raster.cells_in({1.0_ft, 1.0_ft, 8.0_ft, 8.0_ft})) {
        // A sole covers two cells: steps stand so far apart that none treads in what another left.
        if (raster.column(cell) % 3 != 0 || raster.row(cell) % 3 != 0 || trial.site.room().is_blocked[cell]) continue;
        step_on(trial.site, lee(trial), cell);
        ++steps;
        INFO(steps);
        // One shoe after the other comes down, and each loses by its own steps.
        CHECK(on_soles(trial) / start == Approx(0.5 * dust::sole_remaining((steps + 1) / 2) + 0.5 * dust::sole_remaining(steps / 2)).epsilon(1e-6));
        CHECK(total(trial.site.surfaces[floor]).dust.count == static_cast<std::int64_t>(start - on_soles(trial)));
    }
    CHECK(steps > 30);
    CHECK(lee(trial).shoes[0].clean_steps == (steps + 1) / 2);
    CHECK(lee(trial).shoes[1].clean_steps == steps / 2);
    audit(trial.site);
}

TEST_CASE("a step in dust takes up what the contact carries, less by what the sole holds already", "[feet]")
{
    Trial trial;
    const std::size_t patch = free_floor_patch(trial.site);
    const std::size_t floor = trial.site.room().top[patch].surface;
    for (const std::size_t p : trial.site.room().raster.cells_within({5.0_ft, 6.0_ft, {}, {}}, 0.5_m)) strew(trial.site, floor, p, fine, 0.001_g);
    lee(trial).shoes[0].clean_steps = 17;
    step_on(trial.site, lee(trial), patch);
    const double raised = static_cast<double>(airborne(trial.site, fine).count);
    CHECK(raised > 0.0);
    // A sole is larger than a cell of the floor: it takes from two, and from each what its contact covers.
    const double cells_under_sole = dust::sole_contact / trial.site.surfaces[floor].patch_area;
    CHECK(cells_under_sole > 1.8);
    CHECK(on_soles(trial) == Approx((1e9 * cells_under_sole - raised) * dust::sole_pickup(fine, dust::SoleKind::smooth)).epsilon(1e-3));
    CHECK(lee(trial).shoes[0].clean_steps == 0);     // fresh dust: the count starts again
    audit(trial.site);

    Trial full;
    load_soles(full, dust::sole_capacity * 4.0);
    strew(full.site, floor, patch, dust::SizeClass::um_20, 0.001_g);
    step_on(full.site, lee(full), patch);
    for (const Shoe& shoe : lee(full).shoes) CHECK(shoe.sole.load.free[dust::SizeClass::um_20].is_zero());
}

TEST_CASE("walking about in even dust fills each sole to its equilibrium and no further", "[feet]")
{
    for (const double uptake : {0.10, 0.22, 0.40}) {
        Trial trial;
        trial.site.uncertain.sole_uptake = uptake;
        const std::size_t floor = surface_named(trial.site, "Back bedroom, floor");
        for (const std::size_t p : whole(trial.site, floor).patches) strew(trial.site, floor, p, fine, 0.05_g);
        const double under_sole = 5e10 * (dust::sole_contact / trial.site.surfaces[floor].patch_area);
        const std::vector<std::size_t> way = trial.site.room().raster.cells_in({3.0_ft, 3.0_ft, 4.0_ft, 5.0_ft});
        for (std::size_t i = 0; i < way.size(); i += 4) step_on(trial.site, lee(trial), way[i]);
        for (const Shoe& shoe : lee(trial).shoes) {
            CHECK(static_cast<double>(shoe.sole.load.free[fine].dust.count) / under_sole == Approx(uptake).epsilon(0.1));
            CHECK(shoe.clean_steps == 0);
        }
        audit(trial.site);
    }
}

TEST_CASE("whatever steps are taken on whatever floor, soles and floor and air hold what they held, and no sole more than it can", "[property][feet]")
{
    const bool holds = rc::check([] {
        Trial trial;
        const Zone& room = trial.site.room();
        for (int n = *rc::gen::inRange(1, 40); n > 0; --n) {
            const auto cell = *rc::gen::inRange<std::size_t>(0, room.top.size());
            const Spot spot = room.top[cell];
            const auto k = static_cast<dust::SizeClass>(*rc::gen::inRange(0, static_cast<int>(dust::class_count)));
            strew(trial.site, spot.surface, spot.patch, k, Mass{*rc::gen::inRange(0, 1'000'000'000) * 1e-12});
            for (int steps = *rc::gen::inRange(1, 6); steps > 0; --steps) {
                const auto to = *rc::gen::inRange<std::size_t>(0, room.top.size());
                if (!room.is_blocked[to]) step_on(trial.site, lee(trial), to);
            }
        }
        audit(trial.site);    // every picogram, patch by patch
        RC_ASSERT(trial.site.ledger.on(dust::Side::inside) == trial.site.ledger.released());
        for (const Shoe& shoe : lee(trial).shoes) RC_ASSERT(mass(dust::total(shoe.sole.load).dust) <= dust::sole_capacity * 1.5);
    });
    CHECK(holds);
}

TEST_CASE("a clean sole on clean floor carries and leaves nothing", "[feet]")
{
    Trial trial;
    const std::uint64_t before = fingerprint(trial.site);
    walk_to(trial.site, lee(trial), {2.0_ft, 8.0_ft});
    CHECK(trial.site.ledger.released().is_zero());
    CHECK(on_soles(trial) == 0.0);
    CHECK(fingerprint(trial.site) != before);   // but it is somewhere else
}

TEST_CASE("people walk around furniture", "[feet]")
{
    Trial trial;
    Worker& who = lee(trial);
    const Zone& room = trial.site.room();
    who.at = {5.0_ft, 12.5_ft};                 // west of the dresser, which reaches from 5.5 to 8.5 ft
    load_soles(trial, 1.0_g);
    walk_to(trial.site, who, {9.2_ft, 12.5_ft});
    CHECK(plan::distance(who.at, {9.2_ft, 12.5_ft}) < 0.1_m);
    CHECK(total(trial.site.surfaces[surface_named(trial.site, "Dresser")]).is_zero());
    const Surface& floor = trial.site.surfaces[surface_named(trial.site, "Back bedroom, floor")];
    int prints = 0;
    bool went_south = false;
    for (std::size_t cell = 0; cell < room.top.size(); ++cell) {
        if (floor.patches[cell].free[fine].is_zero() || cell == 0) continue;
        CHECK_FALSE(room.is_blocked[cell]);
        went_south = went_south || room.raster.center(cell).y < 11.6_ft;
        ++prints;
    }
    CHECK(prints >= 3);
    CHECK(went_south);
}

TEST_CASE("going out over a tack pad leaves on it what two contacts take", "[feet]")
{
    Trial trial;
    trial.after("tack-pad");
    lee(trial).at = {9.9_ft, 10.8_ft};          // at the door
    load_soles(trial, 0.05_g);
    const std::size_t floor = surface_named(trial.site, "Back bedroom, floor");
    const double start = on_soles(trial);
    leave(trial.site, lee(trial), false);
    const double dropped_inside = static_cast<double>(total(trial.site.surfaces[floor]).dust.count);
    const double on_pad = static_cast<double>(trial.site.tack_pad.load.free[fine].dust.count);
    CHECK(on_pad / (start - dropped_inside) == Approx(dust::captured_in(dust::pad_capture.typical, dust::contacts_per_foot)).epsilon(1e-3));
    CHECK_FALSE(lee(trial).is_inside);
    CHECK(lee(trial).zone == 1);
    CHECK(on_soles(trial) < start - dropped_inside - on_pad);   // the hall got some of the rest
    audit(trial.site);
}

TEST_CASE("a full tack pad takes nothing, and without one the hall gets more", "[feet]")
{
    const auto hall_gets = [](const std::string& pad, Mass on_pad) {
        Trial trial;
        if (!pad.empty()) trial.then("do = \"lay-tack-pad\", opening = \"door\", pad = \"" + pad + "\"");
        if (on_pad > Mass{}) {
            const std::size_t floor = surface_named(trial.site, "Back bedroom, floor");
            strew(trial.site, floor, 0, dust::SizeClass::um_40, on_pad);
            trial.site.ledger.move(trial.site.surfaces[floor].free(0, dust::SizeClass::um_40), trial.site.tack_pad.free(dust::SizeClass::um_40), dust::SizeClass::um_40,
                                   trial.site.surfaces[floor].patches[0].free[dust::SizeClass::um_40]);
        }
        load_soles(trial, 0.05_g);
        leave(trial.site, lee(trial), false);
        audit(trial.site);
        return total(trial.site.surfaces[surface_named(trial.site, "Hall, floor")]).dust;
    };
    const Picograms bare = hall_gets("", Mass{});
    CHECK(hall_gets("tack-pad", Mass{}) < bare);
    CHECK(hall_gets("tack-pad", 3.0_g) == bare);        // 5 g/m2 on 0.55 m2 is full
    CHECK(hall_gets("doormat", Mass{}) == bare);
}

TEST_CASE("what goes out on soles and clothes is booked to its pathway, and comes back with them", "[feet]")
{
    Trial trial;
    load_soles(trial, 0.05_g);
    leave(trial.site, lee(trial), false);
    const Amount out = dust::total(trial.site.ledger.crossed(dust::Pathway::shoes));
    CHECK(out == trial.site.ledger.on(dust::Side::outside));
    const Amount left_there = total(trial.site.surfaces[surface_named(trial.site, "Hall, floor")]);
    CHECK(left_there.dust > Picograms{});
    enter(trial.site, lee(trial), false);
    CHECK(lee(trial).is_inside);
    CHECK(dust::total(trial.site.ledger.crossed(dust::Pathway::shoes)).dust < out.dust);
    audit(trial.site);
}

TEST_CASE("cleaning off takes dust from clothes and soles, each by its own care", "[feet]")
{
    const auto left_on = [](const std::string& care) {
        Trial trial;
        trial.first_dust();
        load_soles(trial, 0.1_g);
        const double before = on_soles(trial);
        trial.then("do = \"clean-off\", vacuum = \"hepa-vacuum\"" + care);
        return on_soles(trial) / before;
    };
    CHECK(left_on("") == Approx(0.2).epsilon(1e-3));
    CHECK(left_on(", soles = \"wipe\"") == Approx(0.2).epsilon(1e-3));
    CHECK(left_on(", soles = \"none\"") == 1.0);
    CHECK(left_on(", soles = \"covers-off\"") == 1.0);      // no covers were worn

    Trial covered;
    covered.after("gear").first_dust();
    load_soles(covered, 0.1_g);
    const double before = on_soles(covered);
    covered.then(R"(do = "clean-off", clothes = "none", soles = "covers-off")");
    CHECK(on_soles(covered) / before == Approx(dust::left_under_shoe_cover.typical).epsilon(1e-3));
    CHECK_FALSE(lee(covered).has_covers);
    CHECK(lee(covered).has_clean_soles);
}

TEST_CASE("brushing clothes puts into the air what vacuuming takes", "[feet]")
{
    const auto cared = [](const std::string& care) {
        Trial trial;
        trial.then(R"(do = "disturb-paint", component = "casing-1", technique = "hand-sand", is-misted = false, time = "3 min", share = 0.2)");
        REQUIRE(dust::total(lee(trial).clothes.load).dust > Picograms{});
        const Picograms worn = dust::total(lee(trial).clothes.load).dust;
        trial.then("do = \"clean-off\", vacuum = \"hepa-vacuum\", soles = \"none\", clothes = \"" + care + "\"");
        return static_cast<double>(dust::total(lee(trial).clothes.load).dust.count) / static_cast<double>(worn.count);
    };
    CHECK(cared("vacuum") == Approx(0.1).epsilon(0.02));
    CHECK(cared("brush") == Approx(0.4).epsilon(0.02));
    CHECK(cared("none") < 1.0);     // clothes shed by themselves while one stands there
    CHECK(cared("none") > 0.95);
}

TEST_CASE("leaving tells whether soles and clothes were cleaned since the last dirty step", "[feet]")
{
    Trial dirty;
    dirty.first_dust();
    const Played as_is = dirty.play(R"(do = "leave-work-area", opening = "door")");
    CHECK(as_is.measure("soles-cleaned", "lee") == 0.0);
    CHECK(as_is.measure("clothes-cleaned", "lee") == 0.0);
    Trial clean;
    clean.first_dust().then(R"(do = "clean-off", vacuum = "hepa-vacuum")");
    const Played cared = clean.play(R"(do = "leave-work-area", opening = "door")");
    CHECK(cared.measure("soles-cleaned", "lee") == 1.0);
    CHECK(cared.measure("clothes-cleaned", "lee") == 1.0);
}

TEST_CASE("what feet whirl up in the work room hangs about them first, and wisps of it are mixed in at once", "[feet]")
{
    Trial trial;
    const std::size_t patch = free_floor_patch(trial.site);
    const plan::Point here = trial.site.room().raster.center(patch);
    strew(trial.site, trial.site.room().top[patch].surface, patch, fine, 0.1_g);
    step_on(trial.site, lee(trial), patch);
    REQUIRE(trial.site.cloud.count() == 1);
    CHECK(trial.site.room().air[fine].is_zero());
    const plan::Rect& floor = trial.site.room().raster.rect();
    const plan::Point puff{floor.west + Length{static_cast<double>(trial.site.cloud.x[0])}, floor.south + Length{static_cast<double>(trial.site.cloud.y[0])}};
    CHECK(plan::distance(puff, here) < 0.45_m);
    CHECK(trial.site.cloud.z[0] < 0.61F);

    // Beside a room full of dust one step is nothing to be seen.
    const std::size_t wide = surface_named(trial.site, "Back bedroom, floor");
    strew(trial.site, wide, 0, fine, 100.0_g);
    raise_into_air(trial.site, trial.site.surfaces[wide].free(0, fine), trial.site.work_room, fine, trial.site.surfaces[wide].patches[0].free[fine]);
    const Picograms before = airborne(trial.site, fine);
    step_on(trial.site, lee(trial), patch);
    CHECK(trial.site.cloud.count() == 1);
    CHECK(airborne(trial.site, fine) > before);
    audit(trial.site);
}

TEST_CASE("a walk leaves its dust along the way", "[feet]")
{
    Trial trial;
    for (const std::size_t cell : trial.site.room().raster.cells_in(trial.site.room().raster.rect()))
        if (trial.site.surfaces[trial.site.room().top[cell].surface].role == SurfaceRole::floor)
            strew(trial.site, trial.site.room().top[cell].surface, trial.site.room().top[cell].patch, fine, 0.01_g);
    walk_to(trial.site, lee(trial), {2.0_ft, 2.0_ft});
    walk_to(trial.site, lee(trial), {10.0_ft, 11.0_ft});
    REQUIRE(trial.site.cloud.count() > 1);
    const auto [least, most] = std::minmax_element(trial.site.cloud.y.begin(), trial.site.cloud.y.end());
    CHECK(*most - *least > 1.0F);
}

}
