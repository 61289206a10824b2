#include "dust/settling.hpp"
#include "dust/drag.hpp"
#include "row.hpp"

using namespace flapdoor;
using dust::drag_coefficient;
using dust::drag_coefficient_schiller_naumann;
using published::check;
using published::Row;

namespace {

constexpr auto clift = "recomputed from Clift, Grace & Weber 1978 with ISO 15900 slip (constants from memory)";
constexpr auto schiller = "recomputed from Schiller & Naumann 1933 (form from memory)";
constexpr auto hinds = "Hinds, Aerosol Technology, property tables (from memory)";
constexpr auto measured = "experimental drag points on a university course page";
constexpr auto stokes = "recomputed from Stokes' drag with ISO 15900 slip";
constexpr auto einstein = "recomputed from Einstein's relation with ISO 15900 slip";

double speed(double um) { return dust::settling_speed(um * 1.0_um, {}).si; }
double fall_time(double um) { return 1.5 / speed(um); }

}

TEST_CASE("dust settles as fast as the standard drag curve says")
{
    check({
        Row{"P-015 settling at 0.1 um", speed(0.1), 8.53e-7, 0.01, clift},
        Row{"P-015 settling at 0.3 um", speed(0.3), 4.14e-6, 0.01, clift},
        Row{"P-015 settling at 0.5 um", speed(0.5), 9.82e-6, 0.01, clift},
        Row{"P-015 settling at 0.1 um, handbook", speed(0.1), 8.8e-7, 0.04, hinds},
        Row{"P-016 settling at 1 um", speed(1), 3.456e-5, 0.01, clift},
        Row{"P-016 settling at 1 um, handbook", speed(1), 3.48e-5, 0.01, hinds},
        Row{"P-016 settling at 2 um", speed(2), 1.290e-4, 0.01, clift},
        Row{"P-016 settling at 5 um", speed(5), 7.71e-4, 0.01, clift},
        Row{"P-017 settling at 10 um", speed(10), 3.038e-3, 0.01, clift},
        Row{"P-017 settling at 10 um, handbook", speed(10), 3.06e-3, 0.01, hinds},
        Row{"P-017 settling at 20 um", speed(20), 1.203e-2, 0.01, clift},
        Row{"P-018 settling at 30 um", speed(30), 2.681e-2, 0.02, clift},
        Row{"P-018 settling at 50 um", speed(50), 7.22e-2, 0.02, clift},
        Row{"P-019 settling at 100 um", speed(100), 0.250, 0.03, clift},
        Row{"P-019 settling at 100 um, handbook", speed(100), 0.249, 0.03, hinds},
        Row{"P-019 Stokes alone at 100 um", dust::stokes_speed(100.0_um, {}).si, 0.300, 0.03, "recomputed from Stokes' law"},
        Row{"P-020 settling at 200 um", speed(200), 0.693, 0.04, clift},
        Row{"P-020 settling at 500 um", speed(500), 2.01, 0.04, clift},
        Row{"P-022 falling 1.5 m at 10 um, s", fall_time(10), 494, 0.03, clift},
        Row{"P-022 falling 1.5 m at 50 um, s", fall_time(50), 20.8, 0.03, clift},
        Row{"P-022 falling 1.5 m at 100 um, s", fall_time(100), 6.0, 0.03, clift},
    });
}

TEST_CASE("the drag curve keeps to its formulas and to measured spheres")
{
    check({
        Row{"P-023 drag at Re 0.1", drag_coefficient(0.1), 244.3, 2e-3, clift},
        Row{"P-023 drag at Re 1", drag_coefficient(1), 27.16, 2e-3, clift},
        Row{"P-023 drag at Re 10", drag_coefficient(10), 4.258, 2e-3, clift},
        Row{"P-023 drag at Re 100", drag_coefficient(100), 1.087, 2e-3, clift},
        Row{"P-024 short form at Re 1", drag_coefficient_schiller_naumann(1), 27.60, 2e-3, schiller},
        Row{"P-024 short form at Re 10", drag_coefficient_schiller_naumann(10), 4.151, 2e-3, schiller},
        Row{"P-024 short form at Re 100", drag_coefficient_schiller_naumann(100), 1.092, 2e-3, schiller},
        Row{"P-024 short form at Re 500", drag_coefficient_schiller_naumann(500), 0.5627, 2e-3, schiller},
        Row{"P-026 drag at Re 57.5", drag_coefficient(57.5), 1.479, 0.06, measured},
        Row{"P-026 drag at Re 144.5", drag_coefficient(144.5), 0.9204, 0.06, measured},
        Row{"P-026 drag at Re 265", drag_coefficient(265), 0.7194, 0.06, measured},
        Row{"P-026 drag at Re 513", drag_coefficient(513), 0.5623, 0.06, measured},
        Row{"P-027 drag at Re 0.1585", drag_coefficient(0.1585), 169.8, 0.15, measured},
        Row{"P-027 drag at Re 0.4786", drag_coefficient(0.4786), 58.88, 0.15, measured},
    });
}

TEST_CASE("small dust forgets its own motion at once and hardly diffuses")
{
    const auto relaxation = [](double um) { return dust::relaxation_time(um * 1.0_um, {}).si; };
    const auto diffusivity = [](double um) { return dust::brownian_diffusivity(um * 1.0_um, {}).si; };
    const auto schmidt = [](double um) { return dust::schmidt_number(um * 1.0_um, {}); };
    check({
        Row{"P-028 relaxation time at 1 um", relaxation(1), 3.53e-6, 0.01, stokes},
        Row{"P-028 relaxation time at 10 um", relaxation(10), 3.10e-4, 0.01, stokes},
        Row{"P-028 relaxation time at 100 um", relaxation(100), 3.06e-2, 0.01, stokes},
        Row{"P-029 Brownian diffusivity at 0.01 um", diffusivity(0.01), 5.30e-8, 0.01, einstein},
        Row{"P-029 Brownian diffusivity at 0.1 um", diffusivity(0.1), 6.73e-10, 0.01, einstein},
        Row{"P-029 Brownian diffusivity at 1 um", diffusivity(1), 2.73e-11, 0.01, einstein},
        Row{"P-029 Brownian diffusivity at 10 um", diffusivity(10), 2.40e-12, 0.01, einstein},
        Row{"P-030 Schmidt number at 0.1 um", schmidt(0.1), 2.24e4, 0.015, einstein},
        Row{"P-030 Schmidt number at 1 um", schmidt(1), 5.54e5, 0.015, einstein},
        Row{"P-030 Schmidt number at 10 um", schmidt(10), 6.30e6, 0.015, einstein},
    });
}
