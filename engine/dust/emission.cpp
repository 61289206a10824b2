#include "dust/emission.hpp"

#include "core/insist.hpp"
#include "core/steady.hpp"

#include <algorithm>

namespace flapdoor::dust {

namespace {

// Typical figures are the geometric means of their bands.
constexpr std::array<EmissionTraits, activity_count> activities = {{
    {.per = YieldPer::square_meter, .debris_grams = {45, 20, 100}, .dust_share = {0.95, 0.9, 1}, .airborne_share = {0.1, 0.05, 0.2},
     .cloud = {{12e-6}, 2.2}, .cloud_median_um = {12, 8, 25}, .fall = {{60e-6}, 2.2}},
    {.per = YieldPer::square_meter, .debris_grams = {120, 50, 300}, .dust_share = {1, 1, 1}, .airborne_share = {0.32, 0.2, 0.5},
     .cloud = {{10e-6}, 2.2}, .cloud_median_um = {10, 8, 15}, .fall = {{50e-6}, 2.2}},
    {.per = YieldPer::square_meter, .debris_grams = {320, 100, 1000}, .dust_share = {0.022, 0.01, 0.05}, .airborne_share = {0.1, 0.05, 0.2},
     .cloud = {{20e-6}, 2.5}, .cloud_median_um = {20, 10, 40}, .fall = {{120e-6}, 2.5}},
    {.per = YieldPer::square_meter, .debris_grams = {28000, 20000, 40000}, .dust_share = {0.0032, 0.001, 0.01},
     .airborne_share = {0.1, 0.05, 0.2}, .cloud = {{25e-6}, 3.0}, .cloud_median_um = {25, 15, 40}, .fall = {{150e-6}, 2.5}},
    {.per = YieldPer::meter, .debris_grams = {24, 12, 48}, .dust_share = {0.5, 0.3, 0.8}, .airborne_share = {0.1, 0.05, 0.2},
     .cloud = {{30e-6}, 2.5}, .cloud_median_um = {30, 10, 70}, .fall = {{150e-6}, 2.0}},
    {.per = YieldPer::piece, .debris_grams = {16, 5, 50}, .dust_share = {0.12, 0.05, 0.3}, .airborne_share = {0.05, 0.02, 0.1},
     .cloud = {{30e-6}, 2.8}, .cloud_median_um = {30, 15, 60}, .fall = {{120e-6}, 2.5}},
    {.per = YieldPer::piece, .debris_grams = {2.2, 0.5, 10}, .dust_share = {0.2, 0.1, 0.4}, .airborne_share = {0.05, 0.02, 0.1},
     .cloud = {{30e-6}, 2.8}, .cloud_median_um = {30, 15, 60}, .fall = {{120e-6}, 2.5}},
    {.per = YieldPer::piece, .debris_grams = {2.2, 0.5, 10}, .dust_share = {0.2, 0.1, 0.4}, .airborne_share = {0.05, 0.02, 0.1},
     .cloud = {{30e-6}, 2.8}, .cloud_median_um = {30, 15, 60}, .fall = {{120e-6}, 2.5}},
}};

constexpr Band unchanged{1, 1, 1};

constexpr std::array<ControlTraits, 3> controls = {{
    {.dust_share = unchanged, .airborne_share = unchanged, .escaping = unchanged},
    {.dust_share = {0.3, 0.1, 0.7}, .airborne_share = {0.5, 0.25, 1}, .escaping = unchanged},
    {.dust_share = unchanged, .airborne_share = unchanged, .escaping = {0.1, 0.03, 0.2}},
}};

}

const EmissionTraits& emission_traits(Activity activity) { return activities[static_cast<std::size_t>(activity)]; }

const ControlTraits& control_traits(DustControl control) { return controls[static_cast<std::size_t>(control)]; }

Release release(Activity activity, DustControl control, double units, const EmissionDraw& draw)
{
    insist(units >= 0.0 && draw.yield >= 0.0 && draw.airborne >= 0.0, "work is not undone");
    const EmissionTraits& work = emission_traits(activity);
    const ControlTraits& kept = control_traits(control);

    const Mass typical{work.debris_grams.typical * 1e-3 * units};
    const Mass dust = typical * (std::min(1.0, work.dust_share.typical * kept.dust_share.typical) * draw.yield);
    const Mass debris = std::max(typical, dust);
    const Mass escaping = dust * kept.escaping.typical;
    const Mass cloud = escaping * std::min(1.0, work.airborne_share.typical * kept.airborne_share.typical * draw.airborne);
    return {.chips = debris - dust, .fallen = escaping - cloud, .cloud = cloud, .captured = dust - escaping};
}

Lognormal cloud_sizes(Activity activity, const EmissionDraw& draw)
{
    insist(draw.cloud_median > 0.0, "a cloud has a size");
    Lognormal sizes = emission_traits(activity).cloud;
    sizes.median = sizes.median * draw.cloud_median;
    return sizes;
}

double lead_fraction(Loading lead, Loading material)
{
    insist(lead.si >= 0.0 && material.si > 0.0, "lead is a share of something that weighs something");
    return std::min(1.0, lead / material);
}

Length throw_distance(double draw)
{
    insist(draw >= 0.0 && draw < 1.0, "a draw is in [0, 1)");
    constexpr Length fade{0.5};
    constexpr Length farthest{1.5};
    const double inside = -steady::expm1(-(farthest / fade));
    return -(fade * steady::log(1.0 - draw * inside));
}

}
