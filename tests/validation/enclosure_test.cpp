#include "air_sampler.hpp"
#include "site/crossing.hpp"
#include "stage.hpp"
#include "study.hpp"

using namespace flapdoor;
using namespace flapdoor::validation;
using dust::SizeClass;

namespace {

/// Air that one exit swaps, by a tracer that fills the work room, m3.
double swapped_air(const Rooms& rooms, std::uint64_t seed)
{
    Stage stage(rooms, seed);
    stage.play("do = \"hang-flap\", opening = \"door\", sheeting = \"sheeting\"").begin();
    constexpr SizeClass k = SizeClass::um_0_5;
    site::Site& site = stage.site;
    const Picograms amount = picograms(1.0_g);
    site.ledger.release(site.paint, {site.room().air[k], site.room().air_account}, k, {amount, {}});
    const double per_m3 = milligrams(stage.airborne(k).dust) / site.room().volume.si;
    const double before = milligrams(site.zones[hall].air[k].dust);
    site::leave(site, stage.ana(), false);
    site::audit(site);
    return (milligrams(site.zones[hall].air[k].dust) - before) / per_m3;
}

Rooms ventilated(double supply, double exhaust)
{
    Rooms rooms;
    rooms.has_registers = true;
    rooms.is_air_handling_on = true;
    rooms.supply_flow = supply;
    rooms.return_flow = exhaust;
    return rooms;
}

/// Dust up to 10 um that a spell of sanding sent to the hall and the house, mg: while the worker stays inside, and with
/// the way out at the end.
struct Spread {
    double stayed = 0.0, with_passage = 0.0;
};

double got_out(const Stage& stage)
{
    double sum = 0.0;
    for (const SizeClass k : dust::all_classes()) {
        for (const dust::Pathway way : {dust::Pathway::seam, dust::Pathway::doorway}) sum += up_to_10_um(k) * milligrams(stage.site.ledger.crossed(way)[k].dust);
        sum -= up_to_10_um(k) * milligrams(stage.site.outdoors.load.free[k].dust);
    }
    return sum;
}

Spread spread(Stage& stage)
{
    stage.play("do = \"disturb-paint\", component = \"paint\", technique = \"machine-sand\", is-misted = false, time = \"20 min\"").wait(60);
    Spread out{.stayed = got_out(stage)};
    site::leave(stage.site, stage.ana(), false);
    out.with_passage = got_out(stage);
    return out;
}

/// A room that becomes an enclosure, with a fan that draws four air changes an hour off to the outdoors; the air handling is off.
Stage fan_drawn_room(std::uint64_t seed)
{
    Rooms rooms;
    rooms.has_window = true;
    rooms.has_registers = true;
    rooms.exhaust = 4.0 * rooms.width * rooms.depth * rooms.ceiling;
    return Stage(rooms, seed);
}

/// Junctions sealed: registers covered, the flap door's sheets and the window's seam taped.
void seal(Stage& stage)
{
    for (const std::string id : {"supply", "return"})
        stage.play("do = \"close-register\", opening = \"" + id + "\"").play("do = \"cover-register\", opening = \"" + id + "\", sheeting = \"sheeting\"");
    stage.play("do = \"hang-flap\", opening = \"door\", sheeting = \"sheeting\"").play("do = \"tape-seam\", opening = \"door\", tape = \"tape\"");
    stage.play("do = \"tape-seam\", opening = \"window\", tape = \"tape\"");
}

double behind_sheeting(const Stage& stage) { return stage.site.air.pressure[room].si - stage.site.air.pressure[hall].si; }

}

TEST_CASE("V-15 what a passage swaps follows the net flow through the door, not the air change")
{
    Study study("V-15", "Kalliomaki et al. 2016, 2021, abstracts; Hayden et al., NIOSH record 20031962 (read): isolation rooms with rigid doors");
    study.carry_out([&](std::uint64_t seed) {
        const double volume = 4.0 * 3.0 * 2.4;
        const double still = swapped_air(Rooms{}, seed);
        const double six = swapped_air(ventilated(6.0 * volume, 6.0 * volume), seed);
        study.note("one passage, no ventilation, m3", still);
        study.note("12 over 6 air changes an hour, balanced", swapped_air(ventilated(12.0 * volume, 12.0 * volume), seed) / six);
        study.note("100 L/s more drawn off than blown in, over balanced", swapped_air(ventilated(6.0 * volume, 6.0 * volume + 360.0), seed) / six);
    });
    study.expect("one passage, no ventilation, m3", 0.27, 2.42, "0.27 to 2.42 m3 over doors and settings");
    study.expect("12 over 6 air changes an hour, balanced", 0.8, 1.2, "small effect");
    study.expect("100 L/s more drawn off than blown in, over balanced", 0.0, 0.7, "the flow differential is what counts");
}

TEST_CASE("V-16 a sealed enclosure keeps its dust, a leaky one or one with an open window does not")
{
    Study study("V-16", "Kokkonen et al. 2017, Ann Work Expo Health 61:681, abstract (read): 12 renovation sites held under negative pressure; ratio judgment");
    study.carry_out([&](std::uint64_t seed) {
        Stage tight = fan_drawn_room(seed);
        seal(tight);
        const Spread from_tight = spread(tight);
        Stage leaky = fan_drawn_room(seed);   // one loose sheet in the door, nothing else touched
        leaky.play("do = \"hang-flap\", opening = \"door\", sheeting = \"sheeting\", sheets = 1, is-taped = false");
        const Spread from_leaky = spread(leaky);
        Stage open = fan_drawn_room(seed);
        seal(open);
        open.play("do = \"open-window\", opening = \"window\"");
        const Spread from_open = spread(open);
        study.note("sealed, between passages, mg", from_tight.stayed);
        study.note("leaky, between passages, mg", from_leaky.stayed);
        study.note("window open, between passages, mg", from_open.stayed);
        study.note("sealed, with one exit, mg", from_tight.with_passage);
        study.note("leaky over sealed, with one exit", from_leaky.with_passage / from_tight.with_passage);
        study.note("window open over shut, with one exit", from_open.with_passage / from_tight.with_passage);
        study.note("pressure behind sealed sheeting, Pa", behind_sheeting(tight));
        study.note("pressure behind leaky sheeting, Pa", behind_sheeting(leaky));
        study.note("pressure with the window open, Pa", behind_sheeting(open));
    });
    for (const std::string figure : {"sealed, between passages, mg", "leaky, between passages, mg", "window open, between passages, mg", "sealed, with one exit, mg"})
        study.tell(figure, "not told");
    study.expect("leaky over sealed, with one exit", 5.0, unbounded, "adjacent areas much cleaner when junctions were sealed");
    study.expect("window open over shut, with one exit", 1.0001, unbounded, "adjacent areas cleaner without natural ventilation");
    study.tell("pressure behind sealed sheeting, Pa", "-5 Pa was enough");
    study.tell("pressure behind leaky sheeting, Pa", "leaky enclosures did not hold it");
    study.tell("pressure with the window open, Pa", "not told");
}
