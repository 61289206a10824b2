#include "dust/exposure.hpp"
#include "row.hpp"

#include <array>

using namespace flapdoor;
using published::check;
using published::Row;

namespace {

constexpr auto iso = "recomputed from ISO 7708 (from memory)";
constexpr auto boxes = "recomputed from the two-box balance";

double near_mg(double exchange_per_min)
{
    return dust::near_field(dust::MassRate{1e-6 / 60.0}, 20.0_m3ph, AirFlow{exchange_per_min / 60.0}).si * 1e6;
}

Time time_at(double micrograms) { return dust::time_to_reach(dust::lead_limit, dust::Concentration{micrograms * 1e-9}); }

}

TEST_CASE("sampling conventions take the agreed shares")
{
    check({
        Row{"P-064 inhalable at 10 um", dust::inhalable_share(10.0_um), 0.774, 0.002, iso},
        Row{"P-064 inhalable at 20 um", dust::inhalable_share(20.0_um), 0.651, 0.002, iso},
        Row{"P-064 inhalable at 100 um", dust::inhalable_share(100.0_um), 0.501, 0.002, iso},
        Row{"P-064 thoracic at 10 um", dust::thoracic_share(10.0_um), 0.500, 0.004, iso},
        Row{"P-064 respirable at 4 um", dust::respirable_share(4.0_um), 0.500, 0.004, iso},
    });
}

TEST_CASE("the worker breathes the near field")
{
    const std::array day{dust::Spell{{136e-9}, 2.0_h}, dust::Spell{{5e-9}, 6.0_h}};
    check({
        Row{"P-108 far field, mg/m3", dust::far_field(dust::MassRate{1e-6 / 60.0}, 20.0_m3ph).si * 1e6, 3.00, 1e-3, boxes},
        Row{"P-108 near field at 5 m3/min", near_mg(5), 3.20, 1e-3, boxes},
        Row{"P-108 near field at 10 m3/min", near_mg(10), 3.10, 1e-3, boxes},
        Row{"P-109 2 h at 136 and 6 h at 5 ug/m3", dust::eight_hour_average(day).si * 1e9, 37.75, 1e-9, "recomputed from the definition"},
        Row{"P-113 hours at 167 ug/m3", time_at(167) / 1.0_h, 2.4, 0.01, "Piacitelli & Sussell 2002, NIOSH record"},
        Row{"P-113 hours at 91 ug/m3", time_at(91) / 1.0_h, 4.4, 0.01, "Piacitelli & Sussell 2002, NIOSH record"},
    });
}
