#include "dust/soles.hpp"

#include "core/insist.hpp"
#include "dust/clothing.hpp"
#include "dust/tack_pad.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;
using namespace flapdoor::dust;

TEST_CASE("step by step a sole keeps what the closed form says")
{
    double kept = 1.0;
    for (int step = 0; step < 100; ++step) {
        CHECK(kept == Approx(sole_remaining(step)).epsilon(1e-12));
        kept *= 1.0 - sole_loss(step);
    }
    CHECK_THROWS_AS(sole_loss(-1), BrokenPromise);
}

TEST_CASE("a sole in dust ends at its equilibrium")
{
    for (const double equilibrium : {0.10, 0.22, 0.40})
        CHECK(sole_pickup(SizeClass::um_10, SoleKind::smooth, equilibrium) / sole_loss(0) == Approx(equilibrium));
}

TEST_CASE("soles take fine dust best, and only treads take chips")
{
    for (const SoleKind kind : {SoleKind::smooth, SoleKind::treaded}) {
        CHECK(sole_pickup(SizeClass::um_10, kind) > sole_pickup(SizeClass::um_80, kind));
        CHECK(sole_pickup(SizeClass::um_80, kind) > sole_pickup(SizeClass::um_160, kind));
    }
    CHECK(sole_pickup(SizeClass::chips, SoleKind::smooth) == 0.0);
    CHECK(sole_pickup(SizeClass::chips, SoleKind::treaded) == 0.1);
}

TEST_CASE("a tack pad fills up")
{
    CHECK(pad_capture_at(0.35, {}) == 0.35);
    CHECK(pad_capture_at(0.35, pad_full * 0.5) == Approx(0.175));
    CHECK(pad_capture_at(0.35, pad_full) == 0.0);
    CHECK(pad_capture_at(0.35, pad_full * 3.0) == 0.0);
}

TEST_CASE("two contacts with any pad in its band never clean a sole")
{
    for (const double each : {pad_capture.least, pad_capture.typical, pad_capture.most}) {
        CHECK(captured_in(each, contacts_per_foot) >= 0.20);
        CHECK(captured_in(each, contacts_per_foot) <= 0.75);
    }
    CHECK(captured_in(0.35, 0) == 0.0);
}

TEST_CASE("clothes gather dust within the measured span and lose half of it in an hour")
{
    CHECK(clothing_gain(Stirring::walking, false, false, 20.0_min) == Approx(0.0007));
    CHECK(clothing_gain(Stirring::vacuuming, true, true, 20.0_min) == Approx(0.066));
    CHECK(clothing_gain(Stirring::working, false, false, 20.0_min) > clothing_gain(Stirring::walking, false, false, 20.0_min));
    CHECK(clothing_gain(Stirring::vacuuming, true, true, Time{1e9}) == 1.0);
    CHECK(clothing_loss(1.0_h) == Approx(0.47));
    CHECK(clothing_loss(2.0_h) == Approx(1.0 - 0.53 * 0.53));
    CHECK(clothing_loss({}) == 0.0);
}
