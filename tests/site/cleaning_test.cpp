#include "trial.hpp"

#include "dust/mopping.hpp"
#include "dust/resuspension.hpp"
#include "dust/vacuuming.hpp"
#include "dust/wiping.hpp"
#include "site/cleaning.hpp"
#include "site/landing.hpp"

#include <array>

namespace flapdoor::site {

namespace {

using dust::SizeClass;

/// A patch with one milligram free and a quarter of that bound in every class.
struct Patch {
    Trial trial;
    std::size_t surface, patch;

    Patch(const std::string& name, std::size_t which, job::Scenario scenario = job::shipped_scenario()) : trial(std::move(scenario)), surface(surface_named(trial.site, name)), patch(which)
    {
        for (const SizeClass k : dust::all_classes()) {
            strew(trial.site, surface, patch, k, 0.00125_g);
            Surface& s = trial.site.surfaces[surface];
            trial.site.ledger.move(s.free(patch, k), s.bound(patch, k), k, part(s.patches[patch].free[k], 0.2));
        }
        audit(trial.site);
    }

    Part part_of() const { return {surface, {patch}}; }
    double free(SizeClass k) const { return static_cast<double>(trial.site.surfaces[surface].patches[patch].free[k].dust.count) / 1e9; }
    double bound(SizeClass k) const { return static_cast<double>(trial.site.surfaces[surface].patches[patch].bound[k].dust.count) / 0.25e9; }
};

Patch floor_patch()
{
    const Trial trial;
    return {"Back bedroom, floor", free_floor_patch(trial.site)};
}

job::Scenario with_carpet()
{
    job::Scenario scenario = job::shipped_scenario();
    scenario.zones[0].floor = job::FloorKind::carpet;
    return scenario;
}

/// What one vacuuming leaves of a class on a floor of bare wood.
double left_by_vacuum(SizeClass k, double minutes, bool is_edge)
{
    const double coverage = dust::coverage_of(is_edge ? dust::edge_pass_coverage : dust::pass_coverage, 2);
    return 1.0 - coverage * (1.0 - dust::vacuum_residual(dust::vacuum_rate(dust::SurfaceKind::bare_wood, k, {}, is_edge), dust::minutes_per_m2(minutes)));
}

}

TEST_CASE("vacuuming a patch leaves what the rate and the coverage say, and all that is bound", "[cleaning]")
{
    for (const double minutes : {0.5, 2.5, 10.0}) {
        Patch patch = floor_patch();
        vacuum(patch.trial.site, patch.part_of(), minutes, true);
        audit(patch.trial.site);
        for (const SizeClass k : dust::all_classes()) {
            CHECK(patch.free(k) == Approx(left_by_vacuum(k, minutes, false)).epsilon(1e-6));
            CHECK(patch.bound(k) == 1.0);
        }
    }
}

TEST_CASE("the strip along a wall keeps more", "[cleaning]")
{
    Patch edge("Back bedroom, floor", 0);
    REQUIRE(edge.trial.site.surfaces[edge.surface].is_edge[0] != 0);
    vacuum(edge.trial.site, edge.part_of(), 2.5, true);
    CHECK(edge.free(SizeClass::um_20) == Approx(left_by_vacuum(SizeClass::um_20, 2.5, true)).epsilon(1e-6));
    CHECK(edge.free(SizeClass::um_20) > 2.0 * left_by_vacuum(SizeClass::um_20, 2.5, false));
}

TEST_CASE("a shop vacuum blows fine dust back into the room, a HEPA vacuum hardly any", "[cleaning]")
{
    for (const bool is_hepa : {true, false}) {
        Patch patch = floor_patch();
        vacuum(patch.trial.site, patch.part_of(), 2.5, is_hepa);
        const double through = dust::exhaust_penetration(is_hepa ? dust::VacuumKind::hepa_sealed : dust::VacuumKind::ordinary).typical;
        const auto in_air = [&](SizeClass k) { return static_cast<double>(patch.trial.site.room().air[k].dust.count); };
        const double sucked = 1e9 * (1.0 - left_by_vacuum(SizeClass::um_5, 2.5, false));
        CHECK(in_air(SizeClass::um_5) == Approx(sucked * through).epsilon(1e-4));
        CHECK(in_air(SizeClass::um_10) == 0.0);
        CHECK(static_cast<double>(patch.trial.site.vacuum.load.free[SizeClass::um_5].dust.count) == Approx(sucked * (1.0 - through)).epsilon(1e-6));
    }
}

TEST_CASE("a beater bar brings up what is in the pile", "[cleaning]")
{
    const Trial trial;
    const std::size_t middle = free_floor_patch(trial.site);
    Patch without("Back bedroom, floor", middle, with_carpet());
    Patch with_beater("Back bedroom, floor", middle, with_carpet());
    vacuum(without.trial.site, without.part_of(), 6.0, true, false);
    vacuum(with_beater.trial.site, with_beater.part_of(), 6.0, true, true);
    const dust::Nozzle beater{{0.3}, {0.3}, true};
    CHECK(with_beater.bound(SizeClass::um_20) == Approx(1.0 - dust::worked_loose(dust::SurfaceKind::carpet_fresh, beater, dust::minutes_per_m2(6.0))).epsilon(1e-6));
    CHECK(with_beater.bound(SizeClass::um_20) < without.bound(SizeClass::um_20));
    CHECK(without.bound(SizeClass::um_20) < 1.0);
}

TEST_CASE("a damp cloth takes its share of free and of bound dust and leaves the sill wet", "[cleaning]")
{
    Patch sill("South sill", 0);
    wipe(sill.trial.site, sill.part_of(), true);
    audit(sill.trial.site);
    const double fresh = dust::fresh_wipe(dust::Cloth::wet).typical;
    CHECK(sill.free(SizeClass::um_0_5) == Approx(1.0 - fresh).epsilon(1e-6));
    const Mass carried = 0.00105_g * 8.0;     // by then: free and bound dust of eight classes, on a face for two grams
    CHECK(sill.free(SizeClass::um_160) == Approx(1.0 - dust::wipe_share(dust::Cloth::wet, SizeClass::um_160, fresh, carried)).epsilon(0.01));
    CHECK(sill.bound(SizeClass::um_20) == Approx(1.0 - dust::surface_traits(dust::SurfaceKind::smooth_sealed).wet_bound).epsilon(1e-6));
    CHECK(sill.trial.site.surfaces[sill.surface].wet_until == sill.trial.site.now + sill.trial.site.scenario.drying);
}

TEST_CASE("one cloth for everything saturates and stops taking", "[cleaning]")
{
    const auto left = [](bool changes_cloth) {
        Trial trial;
        const std::size_t sill = surface_named(trial.site, "South sill");
        const std::size_t patches = trial.site.surfaces[sill].patches.size();
        for (std::size_t p = 0; p < patches; ++p) strew(trial.site, sill, p, SizeClass::um_80, 0.5_g);
        wipe(trial.site, whole(trial.site, sill), changes_cloth);
        audit(trial.site);
        return static_cast<double>(trial.site.surfaces[sill].patches.back().free[SizeClass::um_80].dust.count) / 5e11;
    };
    CHECK(left(true) < 0.2);
    CHECK(left(false) > 0.6);
}

TEST_CASE("a mop takes what the water and the floor leave it", "[cleaning]")
{
    for (const Rinsing rinsing : {Rinsing::separate_water, Rinsing::same_water}) {
        Patch patch = floor_patch();
        mop(patch.trial.site, patch.part_of(), rinsing, 0);
        audit(patch.trial.site);
        const dust::SurfaceTraits& wood = dust::surface_traits(dust::SurfaceKind::bare_wood);
        dust::Mopping job;
        job.removed = wood.wet_free;
        job.into_water = rinsing == Rinsing::separate_water ? dust::two_buckets : dust::one_bucket;
        job.floor = patch.trial.site.surfaces[patch.surface].patch_area;
        constexpr double missed = 0.03;
        const double loosened = wood.wet_bound * (1.0 - missed);
        const double expected = (1.0 + 0.25 * loosened) * (1.0 - (1.0 - missed) * (1.0 - dust::mop(job).floor));
        CHECK(patch.free(SizeClass::um_20) == Approx(expected).epsilon(1e-6));
        CHECK(patch.bound(SizeClass::um_20) == Approx(1.0 - loosened).epsilon(1e-6));
        CHECK(patch.trial.site.surfaces[patch.surface].wet_until == patch.trial.site.now + patch.trial.site.scenario.drying);
    }
}

TEST_CASE("dirty water brings dust back: one bucket leaves more on the floor than two, fresh water less", "[cleaning]")
{
    const auto left = [](const std::string& mop, int changes) {
        Trial trial;
        const std::size_t floor = surface_named(trial.site, "Back bedroom, floor");
        strew_all(trial.site, floor, whole(trial.site, floor).patches, 0.0001_g);
        trial.then("do = \"mop-floor\", mop = \"" + mop + "\", water-changes = " + std::to_string(changes));
        return total(trial.site.surfaces[floor]).dust;
    };
    CHECK(left("one-bucket", 0) > left("two-buckets", 0));
    CHECK(left("one-bucket", 4) < left("one-bucket", 0));
}

TEST_CASE("cleaning reaches only what lies open", "[cleaning]")
{
    Trial trial;
    const std::size_t floor = surface_named(trial.site, "Back bedroom, floor");
    const std::size_t patch = free_floor_patch(trial.site);
    strew(trial.site, floor, patch, SizeClass::um_20, 0.001_g);
    trial.then(R"(do = "lay-floor-sheet", sheeting = "poly", reach = "12 ft")").then(R"(do = "vacuum-surfaces", target = "floor", vacuum = "hepa-vacuum")");
    CHECK(trial.site.surfaces[floor].patches[patch].free[SizeClass::um_20].dust == picograms(0.001_g));
    for (const std::size_t p : floor_part(trial.site, job::CleaningPath::toward_door).patches) CHECK(trial.site.room().top[p].surface == floor);
}

TEST_CASE("cleaning goes from high to low and toward the door, or backwards when told", "[cleaning]")
{
    const Trial trial;
    const std::vector<Part> parts = parts_of(trial.site, job::Target::everything, job::CleaningPath::toward_door);
    REQUIRE(parts.size() == 5);     // dresser, two sills, radiator, floor
    for (std::size_t i = 1; i < parts.size(); ++i) CHECK(trial.site.surfaces[parts[i - 1].surface].height >= trial.site.surfaces[parts[i].surface].height);
    const std::vector<std::size_t> toward = parts.back().patches;
    std::vector<std::size_t> away = floor_part(trial.site, job::CleaningPath::from_door).patches;
    const plan::Point door{10.0_ft, 10.8_ft};
    const auto far = [&](std::size_t cell) { return plan::distance(trial.site.room().raster.center(cell), door); };
    CHECK(far(toward.back()) < far(toward.front()));
    std::reverse(away.begin(), away.end());
    CHECK(away == toward);
    CHECK(parts_of(trial.site, job::Target::sills, job::CleaningPath::toward_door).size() == 2);
    CHECK(parts_of(trial.site, job::Target::counters, job::CleaningPath::toward_door).empty());
}

TEST_CASE("whoever cleans from the door on treads on what was just cleaned", "[cleaning]")
{
    const auto trodden = [](const std::string& path) {
        Trial trial;
        return trial.play("do = \"vacuum-surfaces\", target = \"floor\", vacuum = \"hepa-vacuum\", path = \"" + path + "\"").measure("stepped-on-cleaned", "lee");
    };
    CHECK(trodden("toward-door") == 0.0);
    CHECK(trodden("from-door") > 20.0);
}

TEST_CASE("walls cleaned from the top down keep less than from the bottom up", "[cleaning]")
{
    const auto left = [](const std::string& order) {
        Trial trial;
        for (std::size_t s = 0; s < trial.site.surfaces.size(); ++s)
            if (trial.site.surfaces[s].role == SurfaceRole::wall) strew_all(trial.site, s, whole(trial.site, s).patches, 0.001_g);
        trial.then("do = \"vacuum-walls\", vacuum = \"hepa-vacuum\", order = \"" + order + "\"");
        Picograms sum;
        for (const Surface& surface : trial.site.surfaces)
            if (surface.role == SurfaceRole::wall) sum += total(surface).dust;
        return sum;
    };
    CHECK(left("top-down") < left("bottom-up"));
}

TEST_CASE("dry sweeping raises dust and leaves the finest where it is", "[cleaning]")
{
    Patch patch = floor_patch();
    patch.trial.then(R"(do = "sweep-floor", broom = "broom")");
    CHECK(patch.free(SizeClass::um_80) < 0.5);
    CHECK(patch.free(SizeClass::um_0_5) > 0.98);
    CHECK(patch.trial.site.store.load.free[SizeClass::um_80].dust > picograms(0.0005_g));
}

TEST_CASE("cleaning beyond the work area takes the dust of the hall within its reach", "[cleaning]")
{
    Trial trial;
    const std::size_t hall = surface_named(trial.site, "Hall, floor");
    const Zone& zone = trial.site.zones[1];
    const std::size_t near = zone.raster.cell_at({10.5_ft, 10.8_ft});
    const std::size_t far = zone.raster.cell_at({12.0_ft, 1.0_ft});
    const std::size_t floor = surface_named(trial.site, "Back bedroom, floor");
    for (const std::size_t cell : {near, far}) {
        strew(trial.site, floor, 0, SizeClass::um_20, 0.001_g);
        trial.site.ledger.move(trial.site.surfaces[floor].free(0, SizeClass::um_20), trial.site.surfaces[hall].free(cell, SizeClass::um_20), SizeClass::um_20,
                               trial.site.surfaces[floor].patches[0].free[SizeClass::um_20], dust::Pathway::doorway);
    }
    const Played played = trial.play(R"(do = "clean-beyond", reach = "2 ft", vacuum = "hepa-vacuum", mop = "two-buckets")");
    CHECK(played.measure("cleaned-margin") == Approx((2.0_ft).si));
    CHECK(trial.site.surfaces[hall].patches[near].free[SizeClass::um_20].dust < picograms(0.0002_g));
    CHECK(trial.site.surfaces[hall].patches[far].free[SizeClass::um_20].dust == picograms(0.001_g));
    CHECK(dust::total(trial.site.ledger.crossed(dust::Pathway::recovered)).dust < Picograms{});    // taken back
}

}
