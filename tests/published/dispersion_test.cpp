#include "dust/dispersion.hpp"
#include "row.hpp"

using namespace flapdoor;
using published::check;
using published::RangeRow;
using published::Row;

namespace {

constexpr auto regression = "recomputed from the regression of Cheng et al. 2011 (coefficients from memory)";
constexpr auto two_houses = "Cheng et al. 2011, abstract: 0.001 to 0.013 m2/s in two houses, below 0.2 to above 5 air changes an hour";
constexpr auto theory = "recomputed from the first mode of diffusion between walls";

double diffusivity(double per_hour, double volume = 30.0) { return dust::eddy_diffusivity(Volume{volume}, Rate{per_hour / 3600.0}).si; }

}

TEST_CASE("rooms stir as much as was measured")
{
    check({
        Row{"P-050 30 m3 at 0.5 /h", diffusivity(0.5), 1.53e-3, 0.01, regression},
        Row{"P-050 30 m3 at 1 /h", diffusivity(1), 2.23e-3, 0.01, regression},
        Row{"P-050 30 m3 at 3 /h", diffusivity(3), 5.02e-3, 0.01, regression},
        Row{"P-050 30 m3 at 5 /h", diffusivity(5), 7.80e-3, 0.01, regression},
        Row{"P-052 mixing time of 4 m at 0.005 m2/s", dust::mixing_time(4.0_m, 0.005_m2ps).si, 324, 0.01, theory},
        Row{"P-052 mixing time of 4 m at 0.05 m2/s", dust::mixing_time(4.0_m, 0.05_m2ps).si, 32.4, 0.01, theory},
    });
    check({
        RangeRow{"P-051 30 m3 at 0.2 /h", diffusivity(0.2), 0.001, 0.013, two_houses},
        RangeRow{"P-051 30 m3 at 5 /h", diffusivity(5), 0.001, 0.013, two_houses},
        RangeRow{"P-051 60 m3 at 5 /h", diffusivity(5, 60.0), 0.001, 0.013, two_houses},
        RangeRow{"P-051 a room at rest", dust::resting_room.si, 0.001, 0.013, two_houses},
    });
}
