#include "dust/mixed_zone.hpp"
#include "dust/mopping.hpp"
#include "row.hpp"

using namespace flapdoor;
using published::check;
using published::Row;

namespace {

constexpr auto balance = "recomputed from the mass balance of one stirred zone";
constexpr auto stirred = "recomputed: lognormal cloud, stirred settling, no ventilation";

double leaving(double um) { return dust::share_leaving(Rate{1.0 / 3600.0}, dust::settling_speed(um * 1.0_um, {}), 2.5_m); }

double settled(double median_um, double gsd, double hours)
{
    return dust::settled_share({median_um * 1.0_um, gsd}, 2.4_m, Time{hours * 3600.0}, {});
}

double built_up(double seconds)
{
    const dust::MassRate source{60e-6 / 3600.0};
    return dust::build_up(source, 30.0_m3, Rate{1.61 / 3600.0}, Time{seconds}).si * 1e6;
}

}

TEST_CASE("a stirred zone fills and empties by its mass balance")
{
    check({
        Row{"P-044 left after 1 h at 1.61 /h", dust::still_airborne(Rate{1.61 / 3600.0}, 1.0_h), 0.1999, 1e-3, balance},
        Row{"P-045 60 mg/h into 30 m3, 600 s, mg/m3", built_up(600), 0.2924, 1e-3, balance},
        Row{"P-045 60 mg/h into 30 m3, 3600 s, mg/m3", built_up(3600), 0.9939, 1e-3, balance},
        Row{"P-062 leaving at 1 um", leaving(1), 0.953, 0.02, balance},
        Row{"P-062 leaving at 5 um", leaving(5), 0.474, 0.02, balance},
        Row{"P-062 leaving at 10 um", leaving(10), 0.186, 0.02, balance},
        Row{"P-062 leaving at 20 um", leaving(20), 0.0546, 0.02, balance},
        Row{"P-062 leaving at 50 um", leaving(50), 0.0095, 0.02, balance},
        Row{"P-062 leaving at 100 um", leaving(100), 0.0028, 0.02, balance},
    });
}

TEST_CASE("nine tenths of a cloud of lead dust have settled after an hour")
{
    const dust::Lognormal usual = dust::usual_cloud;
    const double usual_1_h = dust::settled_share(usual, 2.4_m, 1.0_h, {});
    const double usual_2_h = dust::settled_share(usual, 2.4_m, 2.0_h, {});
    check({
        Row{"P-056 median 10 um, GSD 2.0, 1 h", settled(10, 2.0, 1), 0.876, 0.005, stirred},
        Row{"P-056 median 10 um, GSD 2.0, 2 h", settled(10, 2.0, 2), 0.943, 0.005, stirred},
        Row{"P-057 the usual cloud, 1 h", usual_1_h, 0.896, 0.005, stirred},
        Row{"P-057 the usual cloud, 2 h", usual_2_h, 0.949, 0.005, stirred},
        Row{"P-057 the usual cloud, 1 h, as measured", usual_1_h, 0.90, 0.02,
            "Choe et al. 2000, abstract: about 90 % of airborne lead gone in 1 h"},
    });
}

TEST_CASE("misting clears a room at the measured rate")
{
    constexpr auto source = "recomputed from 0.03 to 0.07 m3/s (Kokkonen et al., abstract) in 30 m3";
    const auto per_hour = [](double clears) { return dust::misting_rate(AirFlow{clears}, 30.0_m3).si * 3600.0; };
    check({
        Row{"P-114 0.03 m3/s", per_hour(0.03), 3.6, 1e-9, source},
        Row{"P-114 0.07 m3/s", per_hour(0.07), 8.4, 1e-9, source},
    });
}
