#include "dust/emission.hpp"
#include "row.hpp"

using namespace flapdoor;
using published::check;
using published::Row;

TEST_CASE("lead loadings convert and spread as arithmetic says")
{
    constexpr auto source = "recomputed; 1 ft2 = 0.09290304 m2 by definition";
    const Loading paint = 1.0_mgpcm2;
    const auto micrograms_per_m2 = [](Loading loading) { return loading.si * 1e9; };
    check({
        Row{"P-087 1 mg/cm2 of 1 ft2 spread over 100 ft2, ug/ft2", paint * (1.0_ft2 / 100.0_ft2) / 1.0_ugpft2, 9290, 1e-3, source},
        Row{"P-088 5 ug/ft2 in ug/m2", micrograms_per_m2(5.0_ugpft2), 53.8, 1e-3, source},
        Row{"P-088 40 ug/ft2 in ug/m2", micrograms_per_m2(40.0_ugpft2), 430.6, 1e-3, source},
        Row{"P-088 100 ug/ft2 in ug/m2", micrograms_per_m2(100.0_ugpft2), 1076, 1e-3, source},
        Row{"P-089 lead in a 0.5 mm film of 2000 kg/m3", dust::lead_fraction(paint, 0.5_mm * 2000.0_kgpm3), 0.01, 1e-12, source},
    });
}
