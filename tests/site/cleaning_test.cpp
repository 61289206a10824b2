#include "trial.hpp"

#include "dust/mopping.hpp"
#include "dust/resuspension.hpp"
#include "dust/vacuuming.hpp"
#include "dust/wiping.hpp"
#include "site/cleaning.hpp"
#include "site/landing.hpp"

#include <array>
#include <cmath>

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

/// What the nozzle takes of a class on a floor of bare wood: two passes or as many as there is time for, the edges gone along
/// once more.
double taken_by_vacuum(SizeClass k, double minutes, bool is_edge)
{
    const dust::Exposure exposure = dust::minutes_per_m2(is_edge ? 2.0 * minutes : minutes);
    const int passes = std::max(is_edge ? 4 : 2, static_cast<int>(dust::strokes_for(exposure, {})));
    const double coverage = dust::coverage_of(is_edge ? dust::edge_pass_coverage : dust::pass_coverage, passes);
    return coverage * (1.0 - dust::vacuum_residual(dust::vacuum_rate(dust::SurfaceKind::bare_wood, k, {}, is_edge), exposure));
}

/// What going over it stirs up.
double stirred(SizeClass k, double minutes) { return dust::is_raised_by_chore(k) ? dust::raised_by_chore(dust::minutes_per_m2(minutes)) : 0.0; }

/// What both leave.
double left_by_vacuum(SizeClass k, double minutes, bool is_edge)
{
    return (1.0 - stirred(k, is_edge ? 2.0 * minutes : minutes)) * (1.0 - taken_by_vacuum(k, minutes, is_edge));
}

}

TEST_CASE("vacuuming a patch leaves what the rate and the coverage say, and all that is bound", "[cleaning]")
{
    for (const double minutes : {0.5, 2.5, 10.0}) {
        Patch patch = floor_patch();
        vacuum(patch.trial.site, patch.part_of(), {.minutes_per_square_meter = minutes});
        audit(patch.trial.site);
        for (const SizeClass k : dust::all_classes()) {
            CHECK(patch.free(k) == Approx(left_by_vacuum(k, minutes, false)).epsilon(1e-6).margin(2e-9)); // whole picograms
            CHECK(patch.bound(k) == 1.0);
        }
    }
}

TEST_CASE("the strip along a wall keeps more", "[cleaning]")
{
    Patch edge("Back bedroom, floor", 0);
    REQUIRE(edge.trial.site.surfaces[edge.surface].is_edge[0] != 0);
    vacuum(edge.trial.site, edge.part_of(), {});
    CHECK(edge.free(SizeClass::um_20) == Approx(left_by_vacuum(SizeClass::um_20, 2.5, true)).epsilon(1e-6));
    CHECK(edge.free(SizeClass::um_20) > 1.5 * left_by_vacuum(SizeClass::um_20, 2.5, false));
}

TEST_CASE("going along the edges once more, and crossing the first pass, each takes more", "[cleaning]")
{
    const auto left = [](const Vacuuming& how) {
        Patch edge("Back bedroom, floor", 0);
        vacuum(edge.trial.site, edge.part_of(), how);
        return edge.free(SizeClass::um_20);
    };
    const double usual = left({});
    const double careless_edges = left({.does_edges = false});
    CHECK(careless_edges == Approx(1.0 - dust::coverage_of(dust::edge_pass_coverage, 13) * (1.0 - dust::vacuum_residual(dust::vacuum_rate(dust::SurfaceKind::bare_wood, SizeClass::um_20, {}, true), dust::minutes_per_m2(2.5)))).epsilon(1e-6));
    CHECK(careless_edges > 1.5 * usual);
    CHECK(left({.crosses = false}) > 1.1 * usual);
}

TEST_CASE("a stroke hurried past 0.6 m/s cleans less than its time would say", "[cleaning]")
{
    const auto left = [](double minutes) {
        Patch patch = floor_patch();
        vacuum(patch.trial.site, patch.part_of(), {.minutes_per_square_meter = minutes});
        return patch.free(SizeClass::um_20);
    };
    CHECK(left(0.1) == Approx(left_by_vacuum(SizeClass::um_20, 0.1, false)).epsilon(1e-6));            // 0.56 m/s
    CHECK(left(0.09) == Approx(left_by_vacuum(SizeClass::um_20, 0.09 * 0.6, false)).epsilon(1e-6));    // 0.62 m/s
}

TEST_CASE("a shop vacuum blows fine dust back into the room, a HEPA vacuum hardly any, unless it leaks", "[cleaning]")
{
    job::Supply supply{{"v"}, "Vacuum", job::SupplyKindOf::hepa_vacuum};
    CHECK(vacuum_kind(supply) == dust::VacuumKind::hepa_sealed);
    supply.has_leak = true;
    CHECK(vacuum_kind(supply) == dust::VacuumKind::hepa_leaking);
    supply.kind = job::SupplyKindOf::shop_vacuum;
    CHECK(vacuum_kind(supply) == dust::VacuumKind::ordinary);
    for (const dust::VacuumKind kind : {dust::VacuumKind::hepa_sealed, dust::VacuumKind::hepa_leaking, dust::VacuumKind::ordinary}) {
        Patch patch = floor_patch();
        vacuum(patch.trial.site, patch.part_of(), {.kind = kind});
        const double through = dust::exhaust_penetration(kind).typical;
        const auto in_air = [&](SizeClass k) { return static_cast<double>(patch.trial.site.room().air[k].dust.count); };
        const double sucked = 1e9 * (1.0 - left_by_vacuum(SizeClass::um_5, 2.5, false));
        CHECK(in_air(SizeClass::um_5) == Approx(sucked * through).epsilon(1e-4));
        CHECK(in_air(SizeClass::um_10) == 0.0);
        CHECK(static_cast<double>(patch.trial.site.vacuum.load.free[SizeClass::um_5].dust.count) == Approx(sucked * (1.0 - through)).epsilon(1e-6));
    }
}

TEST_CASE("vacuuming stirs the finest dust into the air whatever the filter", "[cleaning]")
{
    Patch patch = floor_patch();
    vacuum(patch.trial.site, patch.part_of(), {});
    const double raised = static_cast<double>(patch.trial.site.room().air[SizeClass::um_1].dust.count);
    CHECK(raised == Approx(1e9 * stirred(SizeClass::um_1, 2.5)).epsilon(0.02));
    CHECK(stirred(SizeClass::um_1, 2.5) > 0.005);
}

TEST_CASE("a beater bar brings up what is in the pile", "[cleaning]")
{
    const Trial trial;
    const std::size_t middle = free_floor_patch(trial.site);
    Patch without("Back bedroom, floor", middle, with_carpet());
    Patch with_beater("Back bedroom, floor", middle, with_carpet());
    vacuum(without.trial.site, without.part_of(), {.minutes_per_square_meter = 6.0});
    vacuum(with_beater.trial.site, with_beater.part_of(), {.minutes_per_square_meter = 6.0, .has_beater = true});
    CHECK(with_beater.bound(SizeClass::um_20) == Approx(std::exp(-0.05 * 6.0)).epsilon(1e-6));
    CHECK(with_beater.bound(SizeClass::um_20) < without.bound(SizeClass::um_20));
    CHECK(without.bound(SizeClass::um_20) < 1.0);
}

TEST_CASE("a carpet that holds most of its dust in the pile is vacuumed as an old one", "[cleaning]")
{
    const auto left = [](double in_pile) {
        Patch patch("Back bedroom, floor", free_floor_patch(Trial().site), with_carpet());
        Surface& floor = patch.trial.site.surfaces[patch.surface];
        for (const SizeClass k : dust::all_classes()) patch.trial.site.ledger.move(floor.free(patch.patch, k), floor.bound(patch.patch, k), k, part(floor.patches[patch.patch].free[k], in_pile));
        const double before = patch.free(SizeClass::um_20), pile = patch.bound(SizeClass::um_20) * 0.25;
        vacuum(patch.trial.site, patch.part_of(), {.minutes_per_square_meter = 4.0});
        const double k = in_pile > 0.0 ? 0.1 : 0.2;
        const double fed_from_below = pile * 0.01 * (std::exp(-0.01 * 4.0) - std::exp(-k * 4.0)) / (k - 0.01);
        return (patch.free(SizeClass::um_20) - fed_from_below) / before;
    };
    CHECK(left(0.0) == Approx(std::exp(-0.2 * 4.0)).epsilon(1e-4));
    CHECK(left(0.8) == Approx(std::exp(-0.1 * 4.0)).epsilon(1e-4));
}

TEST_CASE("fresh dust gets deeper into the joint along a wall than into the open floor", "[cleaning]")
{
    const auto bound = [](std::size_t patch) {
        Trial trial;
        const std::size_t floor = surface_named(trial.site, "Back bedroom, floor");
        const std::size_t source = floor_part(trial.site, job::CleaningPath::toward_door).patches.back();
        strew(trial.site, floor, source, SizeClass::um_20, 0.001_g);
        lay_on(trial.site, trial.site.surfaces[floor].free(source, SizeClass::um_20), floor, patch, SizeClass::um_20, {picograms(0.001_g), {}});
        return static_cast<double>(trial.site.surfaces[floor].patches[patch].bound[SizeClass::um_20].dust.count) / 1e9;
    };
    const double open = dust::surface_traits(dust::SurfaceKind::bare_wood).bound_share.typical;
    CHECK(bound(free_floor_patch(Trial().site)) == Approx(open).epsilon(1e-6));
    CHECK(bound(0) == Approx(1.0 - (1.0 - open) * (1.0 - open) * (1.0 - open)).epsilon(1e-6));
}

TEST_CASE("who never crosses the first pass misses the same rows however long it takes", "[cleaning]")
{
    const auto left = [](double minutes, bool crosses) {
        Patch patch = floor_patch();
        vacuum(patch.trial.site, patch.part_of(), {.minutes_per_square_meter = minutes, .crosses = crosses});
        return patch.free(SizeClass::um_20);
    };
    CHECK(left(20.0, false) == Approx(1.0 - dust::pass_coverage).epsilon(1e-3));
    CHECK(left(20.0, true) < 1e-6);
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

TEST_CASE("a mop takes what it meets, loosens part of what is bound, and wets the floor", "[cleaning]")
{
    for (const bool is_edge : {false, true}) {
        Patch patch = is_edge ? Patch("Back bedroom, floor", 0) : floor_patch();
        mop(patch.trial.site, patch.part_of(), Rinsing::separate_water, 0);
        audit(patch.trial.site);
        const dust::SurfaceTraits& wood = dust::surface_traits(dust::SurfaceKind::bare_wood);
        const double met = dust::coverage_of(is_edge ? dust::edge_pass_coverage : dust::pass_coverage, 2);
        const double loosened = wood.wet_bound * met;
        CHECK(patch.free(SizeClass::um_20) == Approx((1.0 + 0.25 * loosened) * (1.0 - wood.wet_free * met)).epsilon(1e-3));
        CHECK(patch.bound(SizeClass::um_20) == Approx(1.0 - loosened).epsilon(1e-6));
        CHECK(patch.trial.site.surfaces[patch.surface].wet_until == patch.trial.site.now + patch.trial.site.scenario.drying);
    }
}

TEST_CASE("patch by patch the mop's water brings back what the closed form says", "[cleaning]")
{
    for (const Rinsing rinsing : {Rinsing::separate_water, Rinsing::same_water}) {
        Trial trial;
        const std::size_t surface = surface_named(trial.site, "Back bedroom, floor");
        Part middle{surface, {}};
        for (const std::size_t p : whole(trial.site, surface).patches)
            if (trial.site.surfaces[surface].is_edge[p] == 0) middle.patches.push_back(p);
        for (const std::size_t p : middle.patches) strew(trial.site, surface, p, SizeClass::um_20, 0.001_g);
        const double before = static_cast<double>(total(trial.site.surfaces[surface]).dust.count);
        mop(trial.site, middle, rinsing, 0);
        audit(trial.site);
        dust::Mopping job;
        job.removed = dust::surface_traits(dust::SurfaceKind::bare_wood).wet_free * dust::coverage_of(dust::pass_coverage, 2);
        job.into_water = rinsing == Rinsing::separate_water ? dust::two_buckets : dust::one_bucket;
        job.floor = trial.site.surfaces[surface].patch_area * static_cast<double>(middle.patches.size());
        CHECK(static_cast<double>(total(trial.site.surfaces[surface]).dust.count) / before == Approx(dust::mop(job).floor).epsilon(0.005));
    }
}

TEST_CASE("dirty water carries dust from a dirty corner over the clean floor that is mopped later", "[cleaning]")
{
    const auto later = [](Rinsing rinsing) {
        Trial trial;
        const Part floor = floor_part(trial.site, job::CleaningPath::toward_door);
        strew(trial.site, floor.surface, floor.patches.front(), SizeClass::um_20, 1.0_g);
        mop(trial.site, floor, rinsing, 0);
        return trial.site.surfaces[floor.surface].patches[floor.patches.back()].free[SizeClass::um_20].dust;
    };
    CHECK(later(Rinsing::same_water) > Picograms{});
    CHECK(static_cast<double>(later(Rinsing::same_water).count) == Approx(10.0 * static_cast<double>(later(Rinsing::separate_water).count)).epsilon(0.05));
}

TEST_CASE("a dry cloth takes what lies free from 2.5 um up and nothing bound", "[cleaning]")
{
    Patch sill("South sill", 0);
    wipe_dry(sill.trial.site, sill.part_of());
    audit(sill.trial.site);
    CHECK(sill.free(SizeClass::um_1) == 1.0);
    CHECK(sill.free(SizeClass::um_2_5) == Approx(1.0 - dust::fresh_wipe(dust::Cloth::electrostatic_dry).typical).epsilon(0.01));
    CHECK(sill.bound(SizeClass::um_20) == 1.0);
    CHECK(sill.trial.site.surfaces[sill.surface].wet_until <= sill.trial.site.now);
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
    CHECK(played.measure("cleaned-margin") == Approx((2.0_ft).si).margin(0.1));     // to the width of a cell
    CHECK(trial.site.surfaces[hall].patches[near].free[SizeClass::um_20].dust < picograms(0.0002_g));
    CHECK(trial.site.surfaces[hall].patches[far].free[SizeClass::um_20].dust == picograms(0.001_g));
    CHECK(dust::total(trial.site.ledger.crossed(dust::Pathway::recovered)).dust < Picograms{});    // taken back
}

}
