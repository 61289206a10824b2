#include "dust/soles.hpp"
#include "dust/tack_pad.hpp"
#include "row.hpp"

using namespace flapdoor;
using published::check;
using published::RangeRow;
using published::Row;

namespace {

constexpr auto footwear = "recomputed from the fit to a footwear study (US Office of Justice Programs record)";
constexpr auto traffic = "Sippola, Sextro & Thatcher 2014, abstract";
constexpr auto mats = "recomputed from 20 to 50 % per contact (encyclopaedia entry citing a 2012 study)";

/// What a sole carries, as a share of what the contacted area carries, after steps that all meet the same loading.
double after_dusty_steps(int steps)
{
    double carried = 0.0;
    for (int i = 0; i < steps; ++i)
        carried += dust::sole_pickup(dust::SizeClass::um_10, dust::SoleKind::smooth) - carried * dust::sole_loss(0);
    return carried;
}

}

TEST_CASE("clean steps walk dust off a sole")
{
    check({
        Row{"P-101 before any clean step", dust::sole_remaining(0), 1.0, 1e-12, footwear},
        Row{"P-101 after 5", dust::sole_remaining(5), 0.349, 5e-3, footwear},
        Row{"P-101 after 10", dust::sole_remaining(10), 0.211, 5e-3, footwear},
        Row{"P-101 after 25", dust::sole_remaining(25), 0.0968, 5e-3, footwear},
        Row{"P-101 after 50", dust::sole_remaining(50), 0.0509, 5e-3, footwear},
    });
}

TEST_CASE("a sole fills to the measured share of what it treads on")
{
    check({
        RangeRow{"P-102 one step onto a clean sole", after_dusty_steps(1), 0.02, 0.22, traffic},
        RangeRow{"P-102 after many steps", after_dusty_steps(30), 0.10, 0.40, traffic},
        RangeRow{"P-102 lost on the third clean step", dust::sole_loss(2), 0.02, 0.22, traffic},
    });
}

TEST_CASE("two contacts with a tack pad leave dust on the sole (P-103)")
{
    check({
        Row{"P-103 0.2 each", dust::captured_in(0.2, 2), 0.36, 1e-12, mats},
        Row{"P-103 0.35 each", dust::captured_in(0.35, 2), 0.5775, 1e-12, mats},
        Row{"P-103 0.5 each", dust::captured_in(0.5, 2), 0.75, 1e-12, mats},
    });
    check({RangeRow{"per contact, fresh pad", dust::pad_capture.typical, 0.20, 0.50, mats}});
}
