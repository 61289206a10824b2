#include "dust/vacuuming.hpp"

#include "core/insist.hpp"
#include "core/steady.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::dust {

namespace {

constexpr Speed fast_stroke{0.6};
constexpr double fast_factor = 0.6;
constexpr double beater_factor = 2.0;

double class_factor(SizeClass size)
{
    constexpr PerClass<double> factors = {{0.5, 0.5, 0.5, 0.8, 0.8, 1.0, 1.0, 1.0, 1.0, 1.5}};
    return factors[size];
}

}

Exposure exposure_of_stroke(const Nozzle& nozzle)
{
    insist(nozzle.width.si > 0.0 && nozzle.speed.si > 0.0, "a nozzle has a width and moves");
    return 1.0 / (nozzle.width * nozzle.speed);
}

double strokes_for(Exposure exposure, const Nozzle& nozzle) { return exposure / exposure_of_stroke(nozzle); }

CleaningRate vacuum_rate(SurfaceKind surface, SizeClass size, const Nozzle& nozzle, bool is_edge, double edge_divisor)
{
    insist(edge_divisor >= 1.0, "an edge is no easier than the middle");
    const SurfaceTraits& traits = surface_traits(surface);
    CleaningRate rate = traits.vacuum * class_factor(size);
    if (nozzle.speed > fast_stroke) rate = rate * fast_factor;
    if (nozzle.has_beater && traits.is_carpet) rate = rate * beater_factor;
    return is_edge ? rate / edge_divisor : rate;
}

double vacuum_residual(CleaningRate rate, Exposure exposure)
{
    insist(rate.si >= 0.0 && exposure.si >= 0.0, "cleaning takes dust away");
    return steady::exp(-(rate * exposure));
}

double vacuum_removed(SurfaceKind surface, CleaningRate rate, Exposure exposure)
{
    return (1.0 - surface_traits(surface).bound_share.typical) * (1.0 - vacuum_residual(rate, exposure));
}

CleaningRate loosening_rate(SurfaceKind surface, const Nozzle& nozzle)
{
    if (!surface_traits(surface).is_carpet) return {};
    return per_minute_per_m2(nozzle.has_beater ? 0.05 : 0.01);
}

Suction suction(CleaningRate rate, CleaningRate loosening, Exposure exposure)
{
    const double still_bound = vacuum_residual(loosening, exposure);
    const double faster = (rate - loosening) * exposure;
    // What came up and lies free at the end: u t exp(-u t) (1 - exp(-x))/x with x = (k - u) t.
    const double spread = std::abs(faster) < 1e-6 ? 1.0 - 0.5 * faster : -steady::expm1(-faster) / faster;
    const double on_top = loosening * exposure * still_bound * spread;
    return {.of_free = 1.0 - vacuum_residual(rate, exposure), .loosened = 1.0 - still_bound, .of_bound = std::max(0.0, 1.0 - still_bound - on_top)};
}

double bound_at_edge(double bound_share, double edge_divisor)
{
    insist(bound_share >= 0.0 && bound_share <= 1.0 && edge_divisor >= 1.0, "a strip along a wall holds a share, and no less than the middle");
    return 1.0 - steady::pow(1.0 - bound_share, edge_divisor);
}

double coverage_of(double per_pass, int passes)
{
    insist(per_pass >= 0.0 && per_pass <= 1.0 && passes >= 0, "a pass meets a share of the area");
    double missed = 1.0;
    for (int i = 0; i < passes; ++i) missed *= 1.0 - per_pass;
    return 1.0 - missed;
}

}
