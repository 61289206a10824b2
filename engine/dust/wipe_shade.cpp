#include "dust/wipe_shade.hpp"

#include "core/insist.hpp"
#include "dust/visibility.hpp"

namespace flapdoor::dust {

double wipe_concentration(Area wiped, double pickup)
{
    insist(wiped.si > 0.0 && pickup > 0.0 && pickup <= 1.0, "a wipe gathers a share from an area");
    return pickup * (wiped / cloth_face);
}

double cloth_coverage(double surface_coverage, Area wiped, double pickup)
{
    insist(surface_coverage >= 0.0, "coverage is not negative");
    return surface_coverage * wipe_concentration(wiped, pickup);
}

bool matches_card(double coverage_on_cloth, double card) { return coverage_on_cloth <= card; }

Loading lead_that_just_passes(Area wiped, Length diameter, double lead_share, double card)
{
    insist(lead_share >= 0.0 && lead_share <= 1.0, "lead is a share of the dust");
    return monolayer(diameter) * (card / wipe_concentration(wiped) * lead_share);
}

}
