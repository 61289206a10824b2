#include "air/leak.hpp"
#include "air/passage.hpp"
#include "air/air_properties.hpp"
#include "dust/resuspension.hpp"
#include "dust/soles.hpp"
#include "row.hpp"

using namespace flapdoor;
using dust::SizeClass;
using dust::SurfaceKind;
using published::check;
using published::RangeRow;
using published::Row;

namespace {

constexpr Rate steps{6000.0 / 3600.0};

double per_hour(double per_step) { return dust::resuspension_rate(per_step, steps, 12.0_m2).si * 3600.0; }

}

TEST_CASE("walking raises dust at measured rates")
{
    constexpr auto walker = "Qian, Ferro et al. 2008, abstract: (1.4 +- 0.6)e-4 /h for PM10, one walker on carpet; within x3";
    constexpr auto band = "Tian et al. 2014, abstract: 1e-7 to 1e-4 per step over 0.4 to 10 um";
    check({Row{"P-104 1e-5 per step on 12 m2, 1/h", per_hour(1e-5), 1.0e-4, 1e-9, "recomputed"}});

    // PM10 by mass lies mostly in the upper two classes.
    const double pm10 = 0.5 * (per_hour(dust::raised_per_step(SizeClass::um_2_5, SurfaceKind::carpet_old)) +
                               per_hour(dust::raised_per_step(SizeClass::um_5, SurfaceKind::carpet_old)));
    check({RangeRow{"P-105 PM10, walker on carpet, 1/h", pm10, 1.4e-4 / 3, 1.4e-4 * 3, walker}});
    for (const SurfaceKind floor : {SurfaceKind::smooth_sealed, SurfaceKind::worn_linoleum, SurfaceKind::bare_wood, SurfaceKind::deteriorated, SurfaceKind::carpet_fresh,
                                    SurfaceKind::carpet_old})
        for (const SizeClass size : {SizeClass::um_0_5, SizeClass::um_1, SizeClass::um_2_5, SizeClass::um_5})
            check({RangeRow{"P-106 per step", dust::raised_per_step(size, floor), 1e-7, 1e-4, band}});
}

TEST_CASE("household chores raise fine dust at measured rates")
{
    const auto source = [](double mg_per_min) { return dust::chores_source(mg_per_min, 0.1_gpm2).si * 60e6; };
    // The same as the site takes it: a share of the dust of the area gone over, here at 1 min/m2.
    const double gone_over = dust::raised_by_chore(dust::minutes_per_m2(1.0)) * (0.1_gpm2).si * 1e6;
    check({
        RangeRow{"P-107 PM5, mg/min", source(dust::chores_mg_per_min.typical), 0.1, 1.4, "Ferro et al., abstract"},
        RangeRow{"P-107 PM5 of the area gone over, mg/min", gone_over, 0.1, 1.4, "Ferro et al., abstract"},
    });
}

TEST_CASE("the four ways out carry lead in the proportions worked out by hand (P-110)")
{
    constexpr auto source = "recomputed: 1 mg/m3 in the air, 5 g/m2 on the floor, 5 % lead";
    constexpr double lead_share = 0.05;
    const Density cloud{1e-6};
    const auto undercut = air::flow(air::leak_of({0.8_m * 13.0_mm, 0.6}, air::density({})), 1.0_Pa);
    const auto milligrams = [](auto dust_per_hour) { return dust_per_hour * lead_share * 1e6; };
    const Mass on_a_sole = 5.0_gpm2 * dust::sole_contact * 0.25;
    check({
        Row{"P-110 open return of 255 m3/h, mg/h", milligrams((cloud * 255.0_m3ph * 1.0_h).si), 12.75, 0.01, source},
        Row{"P-110 undercut at 1 Pa, mg/h", milligrams((cloud * undercut * 1.0_h).si), 1.45, 0.01, source},
        Row{"P-110 10 flap passages an hour, mg/h", milligrams((cloud * air::flap_passage).si * 10), 0.45, 0.01, source},
        Row{"P-110 10 exits an hour on two soles, mg/h", milligrams(on_a_sole.si * 2 * 10), 25, 0.01, source},
    });
}
