#include "dust/vacuuming.hpp"

#include "core/insist.hpp"
#include "core/steady.hpp"

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

double worked_loose(SurfaceKind surface, const Nozzle& nozzle, Exposure exposure)
{
    if (!surface_traits(surface).is_carpet) return 0.0;
    const CleaningRate upward = per_minute_per_m2(nozzle.has_beater ? 0.05 : 0.01);
    return 1.0 - vacuum_residual(upward, exposure);
}

double coverage_of(double per_pass, int passes)
{
    insist(per_pass >= 0.0 && per_pass <= 1.0 && passes >= 0, "a pass meets a share of the area");
    double missed = 1.0;
    for (int i = 0; i < passes; ++i) missed *= 1.0 - per_pass;
    return 1.0 - missed;
}

}
