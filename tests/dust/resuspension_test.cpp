#include "dust/resuspension.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;
using namespace flapdoor::dust;

TEST_CASE("steps raise more of the larger fine dust, and none of the sand")
{
    CHECK(raised_per_step(SizeClass::um_10, SurfaceKind::bare_wood) >= 3.0 * raised_per_step(SizeClass::um_2_5, SurfaceKind::bare_wood));
    for (const SizeClass size : {SizeClass::um_80, SizeClass::um_160, SizeClass::chips}) {
        CHECK(raised_per_step(size, SurfaceKind::bare_wood) == 0.0);
        CHECK(raised_per_step(size, SurfaceKind::carpet_old) == 0.0);
    }
}

TEST_CASE("carpet gives more than a hard floor from 5 um up, and the same below")
{
    for (const SizeClass size : all_classes()) {
        const double hard = raised_per_step(size, SurfaceKind::smooth_sealed);
        const double carpet = raised_per_step(size, SurfaceKind::carpet_fresh);
        if (size < SizeClass::um_5) CHECK(carpet == hard);
        else if (hard > 0.0) CHECK(carpet > hard);
    }
}

TEST_CASE("a filter that leaks is nearer to no filter than to a sealed one")
{
    CHECK(exhaust_penetration(VacuumKind::ordinary).typical >= 10.0 * exhaust_penetration(VacuumKind::hepa_sealed).typical);
    CHECK(exhaust_penetration(VacuumKind::hepa_leaking).typical > 10.0 * exhaust_penetration(VacuumKind::hepa_sealed).typical);
    for (const VacuumKind kind : {VacuumKind::hepa_sealed, VacuumKind::hepa_leaking, VacuumKind::ordinary})
        CHECK(exhaust_penetration(kind).holds(exhaust_penetration(kind).typical));
}

TEST_CASE("a dry broom moves sand and stirs up what is breathed")
{
    for (const SizeClass size : all_classes()) {
        const Swept swept = dry_sweeping(size);
        CHECK(swept.to_pile + swept.to_air <= 1.0);
        CHECK((swept.to_air > 0.0) == (size <= SizeClass::um_10));
    }
    CHECK(dry_sweeping(SizeClass::um_80).to_pile > dry_sweeping(SizeClass::um_20).to_pile);
}

TEST_CASE("sheeting balled up dry loses the most")
{
    const SheetLoss careful = sheet_removal(SheetHandling::misted_folded_inward);
    const SheetLoss dry = sheet_removal(SheetHandling::dry_folded_inward);
    const SheetLoss careless = sheet_removal(SheetHandling::dry_balled_up);
    CHECK(careful.to_air < dry.to_air);
    CHECK(dry.to_air < careless.to_air);
    CHECK(careful.to_floor < dry.to_floor);
    CHECK(dry.to_floor < careless.to_floor);
}

TEST_CASE("chores raise dust by the loading, a hundredfold at most")
{
    CHECK(chores_source(0.37, 0.2_gpm2) == chores_source(0.37, 0.1_gpm2) * 2.0);
    CHECK(chores_source(0.37, Loading{1.0}) == chores_source(0.37, 0.1_gpm2) * 100.0);
    CHECK(chores_source(0.37, {}).si == 0.0);
}

TEST_CASE("a chore raises 0.0037 of the finest dust for each minute on a square meter")
{
    CHECK(raised_by_chore(minutes_per_m2(1.0)) == Approx(0.0037));
    CHECK(raised_by_chore(minutes_per_m2(2.5)) == Approx(2.5 * 0.0037));
    CHECK(raised_by_chore(minutes_per_m2(1e6)) == 1.0);
    CHECK(is_raised_by_chore(SizeClass::um_2_5));
    CHECK_FALSE(is_raised_by_chore(SizeClass::um_5));
}
