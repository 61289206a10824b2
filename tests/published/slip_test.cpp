#include "dust/slip.hpp"
#include "air/air_properties.hpp"
#include "row.hpp"

using namespace flapdoor;
using dust::slip_correction;
using dust::SlipSet;
using published::check;
using published::Row;

namespace {

constexpr auto iso = "recomputed from the ISO 15900 constants (Kim et al. 2005, from memory)";
constexpr auto handbook = "slip table of Seinfeld & Pandis 2006 (Table 9.3) as reproduced in a public teaching note";

double iso_at(double um) { return slip_correction(um * 1.0_um, air::mean_free_path({})); }

}

TEST_CASE("the slip correction follows the ISO 15900 constants")
{
    check({
        Row{"P-009 slip at 0.01 um", iso_at(0.01), 22.43, 1e-3, iso},
        Row{"P-009 slip at 0.1 um", iso_at(0.1), 2.851, 1e-3, iso},
        Row{"P-009 slip at 0.2 um", iso_at(0.2), 1.846, 1e-3, iso},
        Row{"P-010 slip at 0.5 um", iso_at(0.5), 1.313, 1e-3, iso},
        Row{"P-010 slip at 1 um", iso_at(1), 1.155, 1e-3, iso},
        Row{"P-010 slip at 2 um", iso_at(2), 1.077, 1e-3, iso},
        Row{"P-011 slip at 5 um", iso_at(5), 1.0310, 5e-4, iso},
        Row{"P-011 slip at 10 um", iso_at(10), 1.0155, 5e-4, iso},
        Row{"P-011 slip at 100 um", iso_at(100), 1.0015, 5e-4, iso},
    });
}

TEST_CASE("every set of slip constants agrees with the handbook table")
{
    for (const SlipSet set : {SlipSet::iso_15900, SlipSet::allen_raabe_1985, SlipSet::davies_1945}) {
        CAPTURE(static_cast<int>(set));
        const auto at = [&](double um) { return slip_correction(um * 1.0_um, air::mean_free_path({}), set); };
        check({
            Row{"P-012 slip at 0.01 um", at(0.01), 22.2, 0.04, handbook},
            Row{"P-012 slip at 0.1 um", at(0.1), 2.85, 0.025, handbook},
            Row{"P-012 slip at 0.2 um", at(0.2), 1.865, 0.025, handbook},
            Row{"P-012 slip at 0.5 um", at(0.5), 1.326, 0.025, handbook},
            Row{"P-013 slip at 1 um", at(1), 1.164, 0.015, handbook},
            Row{"P-013 slip at 2 um", at(2), 1.082, 0.015, handbook},
            Row{"P-013 slip at 5 um", at(5), 1.032, 0.015, handbook},
            Row{"P-013 slip at 10 um", at(10), 1.016, 0.015, handbook},
            Row{"P-013 slip at 20 um", at(20), 1.008, 0.015, handbook},
            Row{"P-013 slip at 50 um", at(50), 1.003, 0.015, handbook},
        });
    }
}

TEST_CASE("the older sets of slip constants are kept as published")
{
    const auto davies = [](double um) { return slip_correction(um * 1.0_um, Length{66e-9}, SlipSet::davies_1945); };
    const auto allen_raabe = [](double um) { return slip_correction(um * 1.0_um, air::mean_free_path({}), SlipSet::allen_raabe_1985); };
    check({
        Row{"P-014 Davies at 0.1 um, free path 66 nm", davies(0.1), 2.889, 1e-3,
            "recomputed from Davies 1945 (University of Florida course pages)"},
        Row{"P-014 Davies at 1 um, free path 66 nm", davies(1), 1.166, 1e-3,
            "recomputed from Davies 1945 (University of Florida course pages)"},
        Row{"P-119 Allen & Raabe at 0.1 um", allen_raabe(0.1), 2.867, 1e-3, "recomputed from Allen & Raabe 1985 (constants from memory)"},
        Row{"P-119 Allen & Raabe at 1 um", allen_raabe(1), 1.152, 1e-3, "recomputed from Allen & Raabe 1985 (constants from memory)"},
    });
}
