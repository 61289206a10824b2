#include "dust/visibility.hpp"
#include "dust/wipe_shade.hpp"
#include "row.hpp"

using namespace flapdoor;
using published::check;
using published::RangeRow;
using published::Row;

namespace {

constexpr auto spheres = "recomputed from the shadow of spheres";
constexpr auto hancock = "recomputed from the 0.2 % threshold of Hancock, Esmen & Furber 1976 (abstract; authors from memory)";

double just_visible(double lead_share) { return dust::monolayer(20.0_um) * (dust::just_seen * lead_share) / 1.0_ugpft2; }

}

TEST_CASE("dust shows by the area it covers")
{
    check({
        Row{"P-090 one layer of 20 um, g/m2", dust::monolayer(20.0_um).si * 1e3, 26.7, 5e-3, spheres},
        Row{"P-090 0.2 % of it, mg/m2", dust::monolayer(20.0_um).si * dust::just_seen * 1e6, 53.3, 5e-3, spheres},
        Row{"P-091 just visible at 0.5 % lead, ug/ft2", just_visible(0.005), 25, 0.01, hancock},
        Row{"P-091 just visible at 5 % lead, ug/ft2", just_visible(0.05), 248, 0.01, hancock},
        Row{"P-091 just visible at 15 % lead, ug/ft2", just_visible(0.15), 743, 0.01, hancock},
    });
    check({
        RangeRow{"P-120 just noticeable step", dust::just_noticed_step, 0.0045 / 2, 0.0045 * 2,
                 "Hancock, Esmen & Furber 1976, abstract: 0.45 %"},
        RangeRow{"P-120 called dirty", dust::called_dirty, 0.007 / 2, 0.007 * 2, "Hancock, Esmen & Furber 1976, abstract: 0.7 %"},
        RangeRow{"seen at 4 ug/cm2 on steel in room light",
                 dust::seen_probability(dust::area_coverage(Loading{40e-6}, 20.0_um), dust::Background::dark_floor, dust::Light::room), 0.1,
                 0.9, "cleaning-validation practice: visual limits near 4 ug/cm2 (pharmaceutical technology articles)"},
    });
}

TEST_CASE("a wipe gathers what no eye can see on the floor (P-092)")
{
    constexpr auto source = "recomputed: 0.7 of 40 ft2 or of 0.2 m2 on a face of 0.04 m2";
    check({
        Row{"P-092 40 ft2", dust::wipe_concentration(dust::most_floor_per_cloth), 65.0, 5e-3, source},
        Row{"P-092 sill of 0.2 m2", dust::wipe_concentration(0.2_m2), 3.5, 5e-3, source},
    });
}
