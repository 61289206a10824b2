#include "trial.hpp"

#include "dust/resuspension.hpp"
#include "site/cleaning.hpp"
#include "site/feet.hpp"
#include "site/landing.hpp"

namespace flapdoor::site {

namespace {

using dust::SizeClass;

/// What folding a strewn sheet lets go, of one gram of 10 to 20 um.
struct Fold {
    double to_air, to_floor, in_bundle;
};

Fold folded(const std::string& sheet, bool is_misted, const std::string& side)
{
    Trial trial;
    trial.after("hvac-off window close-return cover-return close-supply cover-supply");
    trial.then("do = \"lay-floor-sheet\", sheeting = \"poly\", reach = \"12 ft\"" + sheet);
    const std::size_t surface = trial.site.sheeting.front();
    const std::size_t cell = trial.site.room().raster.cell_at({5.0_ft, 6.0_ft});
    const Surface& s = trial.site.surfaces[surface];
    const auto patch = static_cast<std::size_t>(std::find(s.cells.begin(), s.cells.end(), cell) - s.cells.begin());
    strew(trial.site, surface, patch, SizeClass::um_20, 1.0_g);
    if (is_misted) trial.after("mist");
    trial.then("do = \"fold-sheeting\", dirty-side = \"" + side + "\"");
    CHECK(trial.site.sheet == SheetState::folded);
    for (const std::size_t index : trial.site.sheeting) CHECK(total(trial.site.surfaces[index]).is_zero());
    const double in_bundle = static_cast<double>(trial.site.bundle.load.free[SizeClass::um_20].dust.count) / 1e12;
    const Surface& floor = trial.site.surfaces[surface_named(trial.site, "Back bedroom, floor")];
    const double under = static_cast<double>(dust::total(floor.patches[cell]).dust.count) / 1e12;
    return {1.0 - in_bundle - under, under, in_bundle};
}

}

TEST_CASE("misted sheeting folded dirty side in keeps its dust, dry it spills, balled up it throws it about", "[sheeting]")
{
    const Fold misted = folded("", true, "inward");
    const Fold dry = folded("", false, "inward");
    const Fold balled = folded("", true, "outward");
    const auto spill = [](dust::SheetHandling handling) { return dust::sheet_removal(handling).to_floor; };
    CHECK(misted.to_floor == Approx(spill(dust::SheetHandling::misted_folded_inward)).epsilon(0.15));
    CHECK(dry.to_floor == Approx(spill(dust::SheetHandling::dry_folded_inward)).epsilon(0.15));
    CHECK(balled.to_floor == Approx(spill(dust::SheetHandling::dry_balled_up)).epsilon(0.15));
    CHECK(misted.in_bundle > dry.in_bundle);
    CHECK(dry.in_bundle > balled.in_bundle);
    CHECK(dry.to_air > 5.0 * misted.to_air);
    CHECK(balled.to_air > 5.0 * dry.to_air);
}

TEST_CASE("an untaped sheet spills more than a taped one", "[sheeting]")
{
    CHECK(folded(", is-taped = false", true, "inward").to_floor > 2.0 * folded("", true, "inward").to_floor);
}

TEST_CASE("sheeting dries again: misted too early is folded dry", "[sheeting]")
{
    Trial trial;
    trial.after("sheet mist");
    const Surface& sheet = trial.site.surfaces[trial.site.sheeting.front()];
    CHECK(sheet.wet_until - trial.site.now == Time{60.0 * dust::misted_minutes.typical});
    trial.then(R"(do = "wait", time = "16 min")");
    CHECK(trial.site.now > sheet.wet_until);
}

TEST_CASE("a step on misted sheeting raises a tenth of what it raises dry", "[sheeting]")
{
    const auto raised = [](bool is_misted) {
        Trial trial;
        trial.after("sheet");
        if (is_misted) trial.after("mist");
        const std::size_t surface = trial.site.sheeting.front();
        const std::size_t patch = trial.site.surfaces[surface].patches.size() / 2;
        strew(trial.site, surface, patch, SizeClass::um_10, 1.0_g);
        step_on(trial.site, worker(trial.site, {"lee"}), trial.site.surfaces[surface].cells[patch]);
        Picograms aloft = trial.site.room().air[SizeClass::um_10].dust;
        for (std::size_t i = 0; i < trial.site.cloud.count(); ++i)
            if (trial.site.cloud.size[i] == SizeClass::um_10) aloft += trial.site.cloud.amount[i].dust;
        return static_cast<double>(aloft.count);
    };
    CHECK(raised(false) > 0.0);
    CHECK(raised(true) / raised(false) == Approx(dust::misted_factor.typical).epsilon(1e-3));
}

TEST_CASE("the bundle goes into its bag, and the bag out with all of it", "[sheeting]")
{
    Trial trial;
    trial.after("sheet");
    strew_all(trial.site, trial.site.sheeting.front(), {5, 50, 500}, 0.1_g);
    trial.after("mist fold bag-sheet");
    CHECK(trial.site.sheet == SheetState::bagged);
    CHECK(dust::total(trial.site.bundle.load).is_zero());
    const Bag& bag = *find_bag(trial.site, {"bag-2"});
    CHECK(bag.holds_sheeting);
    CHECK(dust::total(bag.content.load).dust > picograms(2.6_g));
    trial.after("close-bag-2 vac-bag-2 out-4");
    CHECK(dust::total(find_bag(trial.site, {"bag-2"})->content.load).is_zero());
    CHECK(dust::total(trial.site.store.load).dust > picograms(2.6_g));
    trial.then(R"(do = "lay-floor-sheet", sheeting = "poly")");     // and a new one may be laid
    CHECK(trial.site.sheet == SheetState::laid);
}

TEST_CASE("what falls on sheeting or a cover does not reach what lies under its middle", "[sheeting]")
{
    Trial trial;
    trial.after("radiator sheet");
    trial.then(R"(do = "disturb-paint", component = "casing-1", technique = "hand-scrape", is-misted = false, time = "2 min", share = 0.1)");
    CHECK(total(trial.site.surfaces[surface_named(trial.site, "Old radiator")]).is_zero());
    CHECK(total(trial.site.surfaces[surface_named(trial.site, "cover of Old radiator")]).dust > Picograms{});
    const Surface& sheet = trial.site.surfaces[trial.site.sheeting.front()];
    const Surface& floor = trial.site.surfaces[surface_named(trial.site, "Back bedroom, floor")];
    Picograms above, below;
    for (std::size_t p = 0; p < sheet.cells.size(); ++p) {
        if (sheet.is_edge[p] != 0) continue;
        above += dust::total(sheet.patches[p]).dust;
        below += dust::total(floor.patches[sheet.cells[p]]).dust;
    }
    CHECK(above > Picograms{});
    CHECK(below == Picograms{});
}

TEST_CASE("work on thin sheeting tears it in places, and what is torn lets dust through", "[sheeting]")
{
    const auto worn = [](int layers, double handling) {
        Trial trial;
        trial.site.uncertain.handling = handling;
        trial.then("do = \"lay-floor-sheet\", sheeting = \"poly\", reach = \"12 ft\", layers = " + std::to_string(layers));
        const Surface& sheet = trial.site.surfaces[trial.site.sheeting.front()];
        for (int step = 0; step < 4000; ++step) wear_sheeting(trial.site, sheet.cells[static_cast<std::size_t>(step) % sheet.cells.size()]);
        return static_cast<int>(std::count(sheet.is_torn.begin(), sheet.is_torn.end(), 1));
    };
    const int one = worn(1, 20.0);      // about one step in a hundred at that handling
    CHECK(one > 20);
    CHECK(one < 70);
    CHECK(worn(2, 20.0) < one / 2);
    CHECK(worn(1, 1.0) < one / 5);

    Trial trial;
    trial.after("sheet");
    const std::size_t surface = trial.site.sheeting.front();
    Surface& sheet = trial.site.surfaces[surface];
    const std::size_t patch = sheet.patches.size() / 2;
    REQUIRE(sheet.is_edge[patch] == 0);
    const dust::Load& below = trial.site.surfaces[surface_named(trial.site, "Back bedroom, floor")].patches[sheet.cells[patch]];
    const auto drop = [&] {
        strew(trial.site, surface, patch, SizeClass::um_40, 0.01_g);
        seep(trial.site, surface, patch, SizeClass::um_40, {picograms(0.01_g), {}});
    };
    drop();
    CHECK(dust::total(below).is_zero());
    sheet.is_torn.assign(sheet.patches.size(), 0);
    sheet.is_torn[patch] = 1;
    drop();
    CHECK(static_cast<double>(dust::total(below).dust.count) == Approx(0.3 * 0.01e12).epsilon(1e-6));
    audit(trial.site);
}

TEST_CASE("tools lie in what falls about the work and carry as much as they cover", "[sheeting]")
{
    Trial trial;
    trial.then(R"(do = "disturb-paint", component = "casing-1", technique = "hand-sand", is-misted = false, time = "5 min", share = 0.5)");
    const double on_tools = static_cast<double>(dust::dust_only(trial.site.tools.load).dust.count);
    CHECK(on_tools > 0.0);
    CHECK(trial.site.tools.load.free[SizeClass::chips].dust == Picograms{});
    const double fallen = static_cast<double>(total(trial.site.surfaces[surface_named(trial.site, "Back bedroom, floor")]).dust.count);
    CHECK(on_tools < 0.1 * fallen);     // 0.05 m2 of the two or three square meters it falls on
    CHECK(on_tools > 0.002 * fallen);
    audit(trial.site);
}

}
