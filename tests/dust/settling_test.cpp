#include "dust/settling.hpp"

#include "core/insist.hpp"
#include "dust/drag.hpp"
#include "dust/slip.hpp"

#include <catch2/catch.hpp>

#include <cmath>

using namespace flapdoor;
using namespace flapdoor::dust;

TEST_CASE("larger dust settles faster, and never faster than Stokes")
{
    Speed before{};
    for (double um = 0.01; um <= 2000.0; um *= 1.07) {
        const Speed now = settling_speed(um * 1.0_um, {});
        CHECK(now > before);
        CHECK(now.si <= stokes_speed(um * 1.0_um, {}).si * (1.0 + 1e-12));
        before = now;
    }
}

TEST_CASE("a settling sphere carries its weight by drag")
{
    for (const double um : {20.0, 100.0, 300.0, 1000.0}) {
        const double d = um * 1e-6;
        const double v = settling_speed(um * 1.0_um, {}).si;
        const double reynolds = v * d / air::kinematic_viscosity({}).si;
        const double weight = 1000.0 * d * 9.80665 / 6.0;   // per pi d^2
        const double drag =
            drag_coefficient(reynolds) * air::density({}).si * v * v / 8.0 / slip_correction(d * 1.0_m, air::mean_free_path({}));
        CHECK(drag == Approx(weight).epsilon(1e-6));
    }
}

TEST_CASE("either drag form gives the same settling up to 200 um")
{
    for (const double reynolds : {0.1, 1.0, 5.0, 9.0})
        CHECK(drag_coefficient_schiller_naumann(reynolds) == Approx(drag_coefficient(reynolds)).epsilon(0.04));
}

TEST_CASE("class speeds are those of the typical diameters")
{
    const PerClass<Speed> speeds = settling_speeds({});
    for (const SizeClass size : all_classes()) CHECK(speeds[size] == settling_speed(typical_diameter(size), {}));
}

TEST_CASE("heavy grains act like larger ones of unit density")
{
    CHECK(aerodynamic_diameter(10.0_um, unit_density, 1.0, {}) == 10.0_um);
    const Length paint = aerodynamic_diameter(10.0_um, 2500.0_kgpm3, 1.2, {});
    CHECK(paint.si == Approx(10e-6 * std::sqrt(2.5 / 1.2)).epsilon(0.01));
    const Speed by_stokes = stokes_speed(10.0_um, {}) * (2.5 / 1.2);
    CHECK(stokes_speed(paint, {}).si == Approx(by_stokes.si).epsilon(1e-9));
}

TEST_CASE("sizes outside the drag curve break a promise")
{
    CHECK_THROWS_AS(settling_speed(3.0_mm, {}), BrokenPromise);
    CHECK_THROWS_AS(settling_speed({}, {}), BrokenPromise);
    CHECK_THROWS_AS(drag_coefficient(2000.0), BrokenPromise);
}
