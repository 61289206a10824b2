#include "window/base/theme.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor::window;

TEST_CASE("contrast is what the accessibility guidelines compute")
{
    // WCAG 2.2, "contrast ratio"; the grays are the well-known edge cases around 4.5 and 3 on white.
    const Color white = color(0xFFFFFF);
    CHECK(contrast(color(0x000000), white) == Approx(21.0));
    CHECK(contrast(color(0x767676), white) == Approx(4.5422).margin(5e-5));
    CHECK(contrast(color(0x777777), white) == Approx(4.4781).margin(5e-5));
    CHECK(contrast(color(0x949494), white) == Approx(3.0335).margin(5e-5));
    CHECK(contrast(color(0x959595), white) == Approx(2.9953).margin(5e-5));
    CHECK(contrast(white, color(0x767676)) == contrast(color(0x767676), white));
}

TEST_CASE("every pair of colors that the window lays on each other keeps its contrast")
{
    for (const ContrastPromise& promise : contrast_promises(drafting_theme())) {
        INFO(promise.what << " has " << contrast(promise.front, promise.ground) << ", owes " << promise.least);
        CHECK(promise.front.a == 255);
        CHECK(contrast(promise.front, promise.ground) >= promise.least);
    }
}

TEST_CASE("a pair that is too pale breaks its promise")
{
    Theme pale = drafting_theme();
    pale.muted = color(0xA9B0B5);
    bool is_caught = false;
    for (const ContrastPromise& promise : contrast_promises(pale))
        is_caught = is_caught || contrast(promise.front, promise.ground) < promise.least;
    CHECK(is_caught);
}

TEST_CASE("colors mix and lie over each other between their ends")
{
    const Color ink = color(0x102030);
    const Color paper = color(0xF0E0D0);
    CHECK(mixed(ink, paper, 0.0) == ink);
    CHECK(mixed(ink, paper, 1.0) == paper);
    CHECK(mixed(ink, paper, 7.0) == paper);
    CHECK(mixed(ink, paper, 0.5) == color(0x808080));
    CHECK(laid_over(faded(ink, 0.0), paper) == paper);
    CHECK(laid_over(ink, paper) == ink);
}
