#include "trial.hpp"

#include "site/cleaning.hpp"
#include "site/effects.hpp"

namespace flapdoor::site {

namespace {

/// The same card played on a site with its old dust; the books are audited.
void play(Site& site, const std::string& card)
{
    const std::string text = "format = 1\nscenario = \"back-bedroom\"\ntitle = \"Trial\"\ncard = [{ " + card + ", by = [\"lee\"] }]\n";
    const job::Card read = job::sound(job::read_plan(text, "trial.toml", site.scenario)).cards.front();
    INFO(card);
    std::visit([&](const auto& step) {
        REQUIRE_FALSE(why_not(site, step, read.by).has_value());
        carry_out(site, step, read.by);
    }, read.step);
    audit(site);
}

double per_area(const Surface& surface) { return lead_loading(surface) / 1.0_ugpft2; }

}

TEST_CASE("floors, furniture and sills carry the old dust that the scenario gives them", "[old-dust]")
{
    job::Scenario scenario = job::shipped_scenario();
    scenario.zones[0].lead_before = 12.0_ugpft2;
    scenario.zones[0].dust_before = 0.5_gpm2;
    scenario.sills[0].lead_before = 300.0_ugpft2;
    scenario.sills[0].dust_before = 3.0_gpm2;
    const Site site = build(scenario, 1);
    audit(site);
    CHECK(per_area(site.surfaces[surface_named(site, "Back bedroom, floor")]) == Approx(12.0).epsilon(0.03));     // less what is under the radiator
    CHECK(per_area(site.surfaces[surface_named(site, "Dresser")]) == Approx(12.0).epsilon(1e-3));
    CHECK(per_area(site.surfaces[surface_named(site, "South sill")]) == Approx(300.0).epsilon(1e-3));
    CHECK(per_area(site.surfaces[surface_named(site, "Hall, floor")]) == Approx(scenario.zones[1].lead_before / 1.0_ugpft2).epsilon(1e-3));
    const Surface& floor = site.surfaces[surface_named(site, "Back bedroom, floor")];
    CHECK(mass(total(floor).dust) / floor.area() / 1.0_gpm2 == Approx(0.5).epsilon(0.03));
    for (const Surface& surface : site.surfaces)
        if (surface.role == SurfaceRole::wall) CHECK(total(surface).is_zero());
}

TEST_CASE("old dust is nobody's doing: it is neither released nor outside, and the books close", "[old-dust]")
{
    const Site site = build(job::shipped_scenario(), 1);
    CHECK(site.ledger.released().is_zero());
    CHECK(site.ledger.on(dust::Side::outside).is_zero());
    CHECK(site.ledger.on(dust::Side::inside).is_zero());
    CHECK(site.ledger.found().lead > Picograms{});
    CHECK(site.ledger.found() == site.ledger.old_on(dust::Side::inside) + site.ledger.old_on(dust::Side::outside));
    CHECK(site.ledger.closes());
}

TEST_CASE("lead in old dust is at most all of it", "[old-dust]")
{
    job::Scenario scenario = job::shipped_scenario();
    scenario.zones[0].dust_before = 0.01_gpm2;
    scenario.zones[0].lead_before = 10000.0_ugpft2;
    const Site site = build(scenario, 1);
    const Amount lies = total(site.surfaces[surface_named(site, "Back bedroom, floor")]);
    CHECK(lies.lead == lies.dust);
}

TEST_CASE("a floor under a carpet is clean; the carpet holds its dust in the pile", "[old-dust]")
{
    job::Scenario scenario = job::shipped_scenario();
    job::Carpet carpet;
    carpet.id = {"rug"};
    carpet.title = "Rug";
    carpet.zone = scenario.zones[0].id;
    carpet.west = 3.0_ft;
    carpet.south = 3.0_ft;
    carpet.width = 4.0_ft;
    carpet.depth = 4.0_ft;
    scenario.carpets.push_back(carpet);
    const Site site = build(scenario, 1);
    const Surface& rug = site.surfaces[surface_named(site, "Rug")];
    const Surface& floor = site.surfaces[surface_named(site, "Back bedroom, floor")];
    for (const std::size_t cell : rug.cells) CHECK(dust::total(floor.patches[cell]).is_zero());
    const dust::Load& load = rug.patches.front();
    CHECK(load.bound[dust::SizeClass::um_20].dust > load.free[dust::SizeClass::um_20].dust);
}

TEST_CASE("moving the dresser out takes its old dust along and blames nobody for it", "[old-dust]")
{
    Site site = build(job::shipped_scenario(), 1);
    play(site, R"(do = "move-out", object = "dresser")");
    CHECK(dust::total(site.ledger.crossed(dust::Pathway::tools)).is_zero());
    CHECK(site.ledger.on(dust::Side::outside).is_zero());
}

TEST_CASE("sheeting keeps the old dust where it is, and cleaning takes most of it", "[old-dust]")
{
    Site site = build(job::shipped_scenario(), 1);
    const std::size_t floor = surface_named(site, "Back bedroom, floor");
    const double before = per_area(site.surfaces[floor]);
    play(site, R"(do = "lay-floor-sheet", sheeting = "poly", reach = "12 ft")");
    play(site, R"(do = "vacuum-surfaces", target = "floor", vacuum = "hepa-vacuum")");
    CHECK(per_area(site.surfaces[floor]) > 0.95 * before);      // what lies beside it within reach is a few cells
    play(site, R"(do = "fold-sheeting")");
    play(site, R"(do = "vacuum-surfaces", target = "floor", vacuum = "hepa-vacuum")");
    play(site, R"(do = "mop-floor", mop = "two-buckets")");
    CHECK(per_area(site.surfaces[floor]) < 0.5 * before);
    CHECK(per_area(site.surfaces[floor]) > 0.02 * before);      // what is trodden in stays
    CHECK(site.ledger.released().is_zero());
    CHECK(site.ledger.on(dust::Side::contained).is_zero());     // the vacuum holds old dust only
    CHECK(site.ledger.old_on(dust::Side::contained).lead > Picograms{});
}

}
