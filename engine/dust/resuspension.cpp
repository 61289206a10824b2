#include "dust/resuspension.hpp"

#include "core/insist.hpp"

#include <algorithm>

namespace flapdoor::dust {

double raised_per_step(SizeClass size, SurfaceKind floor)
{
    constexpr PerClass<double> hard = {{1e-7, 2e-6, 2e-6, 1e-5, 3e-5, 1e-5, 1e-5, 0.0, 0.0, 0.0}};
    constexpr PerClass<double> carpet = {{1e-7, 2e-6, 2e-6, 3e-5, 1e-4, 3e-5, 3e-5, 0.0, 0.0, 0.0}};
    return surface_traits(floor).is_carpet ? carpet[size] : hard[size];
}

Rate resuspension_rate(double per_step, Rate steps, Area floor)
{
    insist(floor.si > 0.0, "a floor has an area");
    return steps * (per_step * (footprint / floor));
}

Band exhaust_penetration(VacuumKind kind)
{
    switch (kind) {
        case VacuumKind::hepa_sealed: return {1e-4, 1e-5, 1e-3};
        case VacuumKind::hepa_leaking: return {0.01, 0.001, 0.1};
        case VacuumKind::ordinary: return {0.02, 0.001, 0.2};
    }
    insist(false, "every kind of vacuum has an exhaust");
    return {};
}

Swept dry_sweeping(SizeClass size)
{
    constexpr PerClass<double> to_pile = {{0.0, 0.0, 0.0, 0.0, 0.2, 0.2, 0.2, 0.6, 0.6, 0.8}};
    return {.to_pile = to_pile[size], .to_air = size <= SizeClass::um_10 ? 0.01 : 0.0};
}

SheetLoss sheet_removal(SheetHandling handling)
{
    switch (handling) {
        case SheetHandling::misted_folded_inward: return {.to_air = 1e-4, .to_floor = 1e-3};
        case SheetHandling::dry_folded_inward: return {.to_air = 1e-3, .to_floor = 7e-3};
        case SheetHandling::dry_balled_up: return {.to_air = 1e-2, .to_floor = 5e-2};
    }
    insist(false, "sheeting is taken up somehow");
    return {};
}

namespace {

constexpr Loading ordinary = 0.1_gpm2;

}

MassRate chores_source(double mg_per_min, Loading fine_dust)
{
    return MassRate{mg_per_min * 1e-6 / 60.0} * std::clamp(fine_dust / ordinary, 0.0, 100.0);
}

double raised_by_chore(Exposure exposure)
{
    insist(exposure.si >= 0.0, "time runs forward");
    return std::min(1.0, chores_source(chores_mg_per_min.typical, ordinary) * exposure / ordinary);
}

}
