#include "site/crossing.hpp"
#include "site/feet.hpp"
#include "dust/soles.hpp"
#include "stage.hpp"
#include "study.hpp"

using namespace flapdoor;
using namespace flapdoor::validation;

namespace {

constexpr dust::Lognormal fine_soil{{20e-6}, 2.0};

double on(const site::Body& body) { return milligrams(dust::dust_only(body.load).dust); }
double on_soles(const site::Worker& who)
{
    double sum = 0.0;
    for (const site::Shoe& shoe : who.shoes) sum += on(shoe.sole);
    return sum;
}

/// Somebody has walked about on a dusty floor long enough for the soles to have their fill.
void walk_about(Stage& stage, int rounds)
{
    const plan::Rect& floor = stage.site.room().raster.rect();
    for (int i = 0; i < rounds; ++i) {
        const double x = i % 2 == 0 ? 0.2 : 0.8;
        const double y = (i / 2) % 2 == 0 ? 0.2 : 0.8;
        site::walk_to(stage.site, stage.ana(), {floor.west + floor.width * x, floor.south + floor.depth * y});
    }
}

}

TEST_CASE("V-13 a tack pad takes part of what is on the soles, and less when it is dirty")
{
    Study study("V-13", "encyclopaedia entry citing a 2012 study (read, second-hand): 20 to 50 % on adhesive mats; J IEST 39(4):19, abstract");
    study.carry_out([&](std::uint64_t seed) {
        Stage stage(Rooms{}, seed);
        stage.play("do = \"hang-flap\", opening = \"door\", sheeting = \"sheeting\"").play("do = \"lay-tack-pad\", opening = \"door\", pad = \"tack-pad\"");
        stage.begin().strew(room, 40.0_gpm2, 0.01, fine_soil);
        double first = 0.0;
        double last = 0.0;
        constexpr int exits = 25;
        for (int i = 0; i < exits; ++i) {
            walk_about(stage, 4);
            const double pad = on(stage.site.tack_pad);
            const double floor = milligrams(stage.on_floor(hall).dust);
            stage.play("do = \"leave-work-area\", opening = \"door\"");
            const double caught = on(stage.site.tack_pad) - pad;
            last = caught / (caught + on_soles(stage.ana()) + milligrams(stage.on_floor(hall).dust) - floor);
            if (i == 0) first = last;
            stage.play("do = \"enter-work-area\", opening = \"door\"");
        }
        study.note("taken at the first exit, %", 100.0 * first);
        study.note("taken at the 25th exit, %", 100.0 * last);
        study.note("25th over first", last / first);
    });
    study.expect("taken at the first exit, %", 20, 75, "20 to 50 % a contact, two contacts a foot");
    study.expect("25th over first", 0.0, 0.99, "dirty mats take less");
    study.tell("taken at the 25th exit, %", "dirty mats take less");
    CHECK(study.at("taken at the first exit, %", 1.0) < 90.0);   // no draw makes a pad that keeps nearly all
}

TEST_CASE("V-14 soles walk their dust off on clean floor as was measured")
{
    Study study("V-14", "Rates of loss and replacement of very small particles on footwear, US Office of Justice Programs record (read): 1/(steps + 2.68), steps of each shoe; "
                        "Sippola et al. 2014, abstract (read)");
    Rooms rooms;
    rooms.hall_width = 18.2;
    study.carry_out([&](std::uint64_t seed) {
        Stage stage(rooms, seed);
        stage.begin().strew(room, 5.0_gpm2, 0.01, fine_soil);
        const double loading = milligrams(stage.on_floor(room).dust) / stage.floor().area().si;
        walk_about(stage, 12);
        study.note("soles in dust, over what two of them touch", on_soles(stage.ana()) / (loading * 2.0 * dust::sole_contact.si));

        const double before = milligrams(stage.on_floor(hall).dust);
        site::leave(stage.site, stage.ana(), false);
        const double carried = on_soles(stage.ana()) + milligrams(stage.on_floor(hall).dust) - before;
        // Straight on along the hall, a footfall every 0.7 m, one shoe after the other.
        const plan::Rect& floor = stage.site.zones[hall].raster.rect();
        const auto steps_of_each = [&] { return 0.5 * (stage.ana().shoes[0].clean_steps + stage.ana().shoes[1].clean_steps); };
        for (plan::Point at = stage.ana().at; at.x < floor.east() - 0.3_m; at.x = at.x + 0.7_m) {
            if (at.x > stage.ana().at.x) site::step_on(stage.site, stage.ana(), stage.site.zones[hall].raster.cell_at(at));
            for (const double steps : {5.0, 10.0})
                if (steps_of_each() == steps) study.note("left after " + std::to_string(static_cast<int>(steps)) + " steps of each shoe", on_soles(stage.ana()) / carried);
        }

        // What the hall floor got, in bands outward from the door.
        constexpr double band = 3.0;
        std::vector<double> bands(6, 0.0);
        const site::Surface& hall_floor = stage.site.surfaces[site::floor_of(stage.site, hall)];
        for (std::size_t p = 0; p < hall_floor.patches.size(); ++p) {
            const double out = (stage.site.zones[hall].raster.center(hall_floor.cells[p]).x - floor.west).si;
            bands[std::min<std::size_t>(bands.size() - 1, static_cast<std::size_t>(out / band))] += milligrams(dust::dust_only(hall_floor.patches[p]).dust);
        }
        study.note("bands of hall floor that have less than the one before", static_cast<double>(std::is_sorted(bands.rbegin(), bands.rend())));
    });
    study.expect("soles in dust, over what two of them touch", 0.10, 0.40, "equilibrium uptake 0.10 to 0.40");
    study.expect("left after 5 steps of each shoe", 0.349 - 0.05, 0.349 + 0.05, "2.68/(5 + 2.68) = 0.349");
    study.expect("left after 10 steps of each shoe", 0.211 - 0.05, 0.211 + 0.05, "2.68/(10 + 2.68) = 0.211");
    study.expect("bands of hall floor that have less than the one before", 1.0, 1.0, "most is lost in the first steps");
}

TEST_CASE("V-22 clothes pick dust up from the floor and shed it as was measured")
{
    Study study("V-22", "clothing study with fluorescent particles, PMC8620412, abstract (read): share of the dust on the floor in 20 min, on clothes");
    constexpr dust::Lognormal tracer{{5e-6}, 1.5};
    study.carry_out([&](std::uint64_t seed) {
        const auto gained = [&](const std::string& card) {
            Stage stage(Rooms{}, seed);
            stage.begin().strew(room, 1.0_gpm2, 0.01, tracer);
            const double before = on(stage.ana().clothes);
            const double floor = milligrams(stage.on_floor(room).dust);
            stage.play(card);
            return 100.0 * (on(stage.ana().clothes) - before) / floor;
        };
        study.note("20 min of light work, %", gained("do = \"disturb-paint\", component = \"paint\", technique = \"drill\", time = \"20 min\", share = 0.01"));
        study.note("20 min of vacuuming, %", gained("do = \"vacuum-surfaces\", target = \"floor\", vacuum = \"shop-vacuum\", minutes-per-square-meter = 1.667"));

        Stage stage(Rooms{}, seed);
        stage.begin().strew(room, 10.0_gpm2, 0.01, tracer);
        stage.play("do = \"disturb-paint\", component = \"paint\", technique = \"drill\", time = \"20 min\", share = 0.01").play("do = \"leave-work-area\", opening = \"door\"");
        const double worn = on(stage.ana().clothes);
        stage.wait(60);
        study.note("shed in an hour outside, %", 100.0 * (1.0 - on(stage.ana().clothes) / worn));
    });
    study.expect("20 min of light work, %", 0.07, 6.6, "0.07 to 6.6 %, office work to vacuuming");
    study.expect("20 min of vacuuming, %", 0.07, 6.6, "up to 6.6 %, dirty carpet");
    CHECK(study.median("20 min of vacuuming, %") > study.median("20 min of light work, %"));
    study.expect("shed in an hour outside, %", 42, 52, "46.8 % in an hour of light walking");
}
