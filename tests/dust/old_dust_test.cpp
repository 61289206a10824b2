#include "dust/old_dust.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor;
using namespace flapdoor::dust;

TEST_CASE("old dust is trodden in deeper than fresh dust, on every kind of surface")
{
    for (std::size_t i = 0; i < surface_kind_count; ++i) {
        const auto kind = static_cast<SurfaceKind>(i);
        const Band old = old_bound_share(kind);
        CHECK(old.holds(old.typical));
        CHECK(old.typical >= surface_traits(kind).bound_share.typical);
        CHECK(old.most < 1.0);
    }
    CHECK(old_bound_share(SurfaceKind::deteriorated).typical > old_bound_share(SurfaceKind::smooth_sealed).typical);
}

TEST_CASE("about a tenth of old dust is finer than 10 um")
{
    CHECK(share_below(old_dust, 10.0_um) == Approx(0.10).margin(0.02));
}
