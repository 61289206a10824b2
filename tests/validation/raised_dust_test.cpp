#include "air_sampler.hpp"
#include "site/feet.hpp"
#include "site/passing_time.hpp"
#include "stage.hpp"
#include "study.hpp"

using namespace flapdoor;
using namespace flapdoor::validation;
using dust::SizeClass;

namespace {

constexpr dust::Lognormal carpet_dust{{10e-6}, 2.5};

double airborne(const Stage& stage, const Inlet& inlet)
{
    double sum = 0.0;
    for (const SizeClass k : dust::all_classes()) sum += inlet(k) * milligrams(stage.airborne(k).dust);
    return sum;
}

double on_floor(Stage& stage, const Inlet& inlet)
{
    double sum = 0.0;
    for (const dust::Load& load : stage.floor().patches)
        for (const SizeClass k : dust::all_classes()) sum += inlet(k) * milligrams(load.free[k].dust + load.bound[k].dust);
    return sum;
}

}

TEST_CASE("V-18 one walker on carpet raises dust at the measured rate, more of the coarse than of the fine")
{
    Study study("V-18", "Qian, Ferro et al. 2008, J Air Waste Manag Assoc 58:502, abstract (read): (1.4 +- 0.6)e-4 an hour for PM10; within x3");
    Rooms rooms;
    rooms.floor = "carpet";
    study.carry_out([&](std::uint64_t seed) {
        Stage stage(rooms, seed);
        stage.begin().strew(room, 1.0_gpm2, 0.01, carpet_dust);
        const double lying = on_floor(stage, up_to_10_um);
        const double before = airborne(stage, up_to_10_um);
        const double fine_before = airborne(stage, up_to_2_5_um);
        constexpr int steps = 3000;    // half an hour at 100 a minute; no time passes, so that none of it settles
        for (int i = 0; i < steps / 10; ++i) site::shuffle(stage.site, stage.ana(), stage.site.room().raster.rect().center(), 3.0_m, 10);
        const double raised = airborne(stage, up_to_10_um) - before;
        study.note("PM10 raised an hour, over what lies there", raised / lying * 6000.0 / steps);
        study.note("PM10 over PM2.5 in what is raised", raised / (airborne(stage, up_to_2_5_um) - fine_before));
    });
    study.expect("PM10 raised an hour, over what lies there", 1.4e-4 / 3.0, 1.4e-4 * 3.0, "(1.4 +- 0.6)e-4 an hour");
    study.expect("PM10 over PM2.5 in what is raised", 3.0, unbounded, "larger particles have higher rates");
}

TEST_CASE("V-19 an ordinary vacuum blows fine dust into the room, a HEPA vacuum hardly any")
{
    Study study("V-19", "Knibbs et al. 2012, Environ Sci Technol 46:534, abstract (read): PM2.5 of 21 vacuums over four decades; Corsi et al. 2008, abstract");
    study.carry_out([&](std::uint64_t seed) {
        const auto peak = [&](const std::string& machine, bool is_on_a_bench) {
            Stage stage(Rooms{}, seed);
            if (is_on_a_bench) stage.site.uncertain.raised = 0.0;   // the exhaust alone: neither nozzle nor feet raise anything
            stage.begin().wait(30).strew(room, 1.0_gpm2, 0.01, {{20e-6}, 2.5});
            double most = 0.0;
            stage.site.watcher = [&](const site::Site&) { most = std::max(most, airborne(stage, up_to_10_um)); };
            stage.play("do = \"vacuum-surfaces\", target = \"floor\", vacuum = \"" + machine + "\"");
            return most / stage.site.room().volume.si * 1e3;
        };
        study.note("ordinary vacuum's exhaust, PM10 at its peak, ug/m3", peak("shop-vacuum", true));
        study.note("exhaust, ordinary over HEPA", peak("shop-vacuum", true) / peak("hepa-vacuum", true));
        study.note("all that vacuuming raises, ordinary over HEPA", peak("shop-vacuum", false) / peak("hepa-vacuum", false));
    });
    study.expect("exhaust, ordinary over HEPA", 10.0, unbounded, "0.24 to 5400 ug/min over machines");
    study.expect("all that vacuuming raises, ordinary over HEPA", 1.0001, unbounded, "PM10 +17 ug/m3 with an ordinary vacuum");
    study.tell("ordinary vacuum's exhaust, PM10 at its peak, ug/m3", "+17 ug/m3 on average at ordinary house loadings");
    const auto spread = [&](double share) { return study.at("ordinary vacuum's exhaust, PM10 at its peak, ug/m3", share); };
    CHECK(spread(0.9) >= 10.0 * spread(0.1));   // a decade at least
}

TEST_CASE("V-21 dust raised from a carpet thins out with distance")
{
    Study study("V-21", "Rosati et al. 2008, Aerosol Sci Technol 42:472, abstract (read): 1.2 m from the walker, air handling on; band judgment");
    Rooms rooms;
    rooms.floor = "carpet";
    rooms.width = 6.0;
    rooms.depth = 5.0;
    rooms.has_registers = true;
    rooms.is_air_handling_on = true;
    rooms.return_flow = 170.0;
    rooms.supply_flow = 150.0;
    study.carry_out([&](std::uint64_t seed) {
        Stage stage(rooms, seed);
        stage.begin().wait(120).strew(room, 25.0_gpm2, 0.01, carpet_dust);   // enough to be counted in every draw; the share does not depend on it
        const Inlet few_um = [](SizeClass k) { return k == SizeClass::um_1 || k == SizeClass::um_2_5 ? 1.0 : 0.0; };
        const AirSampler at_the_walker{.nearest = 0.0, .farthest = 0.35, .low = 0.0, .high = 1.5, .inlet = few_um};
        const AirSampler away{.nearest = 1.05, .farthest = 1.35, .low = 0.0, .high = 1.5, .inlet = few_um};
        const plan::Point spot = stage.site.room().raster.rect().center();
        double near = 0.0;
        double far = 0.0;
        constexpr int seconds = 600;    // one step and a half each, so that the dust about the walker is as young as it was there
        for (int i = 0; i < seconds; ++i) {
            site::shuffle(stage.site, stage.ana(), spot, 0.3_m, 1 + i % 2);
            site::pass_time(stage.site, 1.0_s);
            if (i < seconds / 3) continue;
            near += at_the_walker.dust(stage.site, spot);
            far += away.dust(stage.site, spot);
        }
        study.note("1.2 m away over at the walker", far / near);
    });
    study.expect("1.2 m away over at the walker", 0.15, 0.60, "20 to 40 %");
}
