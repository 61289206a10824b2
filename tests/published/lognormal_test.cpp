#include "dust/lognormal.hpp"
#include "row.hpp"

using namespace flapdoor;
using dust::Average;
using dust::hatch_choate;
using published::check;
using published::Row;

namespace {

constexpr auto hatch = "recomputed from Hatch & Choate 1929";

double below(double um) { return dust::share_below({10.0_um, 2.5}, um * 1.0_um); }

}

TEST_CASE("averages of a lognormal spread follow Hatch and Choate")
{
    check({
        Row{"P-058 mass median, GSD 2", hatch_choate(Average::mass_median, 2), 4.226, 1e-3, hatch},
        Row{"P-058 surface median, GSD 2", hatch_choate(Average::surface_median, 2), 2.614, 1e-3, hatch},
        Row{"P-058 arithmetic mean, GSD 2", hatch_choate(Average::arithmetic_mean, 2), 1.2715, 1e-3, hatch},
        Row{"P-059 mass median, GSD 2.5", hatch_choate(Average::mass_median, 2.5), 12.41, 1e-3, hatch},
        Row{"P-059 diameter of mean mass, GSD 2.5", hatch_choate(Average::mean_mass, 2.5), 3.523, 1e-3, hatch},
        Row{"P-059 Sauter mean, GSD 2.5", hatch_choate(Average::sauter_mean, 2.5), 8.158, 1e-3, hatch},
        Row{"P-112 mean over median, GSD 4.3", dust::mean_over_median(4.3), 2.90, 2e-3,
            "recomputed for the GSD of Piacitelli & Sussell 2002, NIOSH record"},
    });
}

TEST_CASE("the mass below a size follows the normal curve (P-060)")
{
    constexpr auto source = "recomputed from the normal distribution, median 10 um, GSD 2.5";
    check({
        Row{"P-060 below 2.5 um", below(2.5), 0.0651, 0.002, source},
        Row{"P-060 below 10 um", below(10), 0.500, 0.002, source},
        Row{"P-060 below 30 um", below(30), 0.885, 0.002, source},
        Row{"P-060 below 100 um", below(100), 0.994, 0.002, source},
    });
}
