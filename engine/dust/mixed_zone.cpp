#include "dust/mixed_zone.hpp"

#include "core/insist.hpp"
#include "core/steady.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::dust {

double still_airborne(Rate loss, Time time)
{
    insist(loss.si >= 0.0 && time.si >= 0.0, "dust is lost, and time runs forward");
    return steady::exp(-(loss * time));
}

Concentration build_up(MassRate source, Volume zone, Rate loss, Time time)
{
    insist(zone.si > 0.0 && loss.si > 0.0, "a zone has a volume and loses dust");
    return source / (zone * loss) * (1.0 - still_airborne(loss, time));
}

Rate settling_rate(Speed settling, Length ceiling)
{
    insist(ceiling.si > 0.0, "a room has a height");
    return settling / ceiling;
}

double share_leaving(Rate air_change, Speed settling, Length ceiling)
{
    const Rate all = air_change + settling_rate(settling, ceiling);
    insist(air_change.si >= 0.0 && all.si > 0.0, "dust goes somewhere");
    return air_change / all;
}

double settled_share(const Lognormal& cloud, Length ceiling, Time time, const Air& air)
{
    // Midpoint rule in standard deviations of ln d, out to five of them.
    constexpr int intervals = 400;
    constexpr double reach = 5.0;
    constexpr double step = 2.0 * reach / intervals;
    double settled = 0.0;
    double weights = 0.0;
    for (int i = 0; i < intervals; ++i) {
        const double z = -reach + (i + 0.5) * step;
        const Length diameter = std::clamp(cloud.median * steady::pow(cloud.gsd, z), 0.01_um, 2000.0_um);
        const double weight = steady::exp(-0.5 * z * z);
        settled += weight * (1.0 - still_airborne(settling_rate(settling_speed(diameter, air), ceiling), time));
        weights += weight;
    }
    return settled / weights;
}

namespace {

/// One stretch, short enough for the series: sum over n of P^n start, each weighted by the time that n or more events take.
std::vector<double> short_integrals(const CoupledZones& zones, const std::vector<double>& start, double fastest, double time)
{
    const std::size_t count = zones.loss.size();
    const double mean = fastest * time;
    std::vector<double> state = start;
    std::vector<double> next(count);
    std::vector<double> integrals(count, 0.0);
    double chance = steady::exp(-mean);      // of n events
    double more = -steady::expm1(-mean);     // of more than n
    const double least = 1e-14 * more;
    for (int n = 1; more > least; ++n) {
        for (std::size_t z = 0; z < count; ++z) integrals[z] += state[z] * (more / fastest);
        for (std::size_t to = 0; to < count; ++to) {
            double sum = state[to] * (1.0 - zones.loss[to].si / fastest);
            for (std::size_t from = 0; from < count; ++from) sum += state[from] * (zones.passing[to * count + from].si / fastest);
            next[to] = sum;
        }
        state.swap(next);
        chance *= mean / n;
        more -= chance;
    }
    return integrals;
}

}

std::vector<double> time_integrals(const CoupledZones& zones, const std::vector<double>& start, Time spell)
{
    const std::size_t count = zones.loss.size();
    insist(start.size() == count && zones.passing.size() == count * count && spell.si >= 0.0, "one mass and one row of rates per zone");
    double fastest = 0.0;
    for (std::size_t from = 0; from < count; ++from) {
        double passed = 0.0;
        for (std::size_t to = 0; to < count; ++to) passed += zones.passing[to * count + from].si;
        insist(passed <= zones.loss[from].si * (1.0 + 1e-12), "a zone passes on no more than it loses");
        fastest = std::max(fastest, zones.loss[from].si);
    }
    std::vector<double> sum(count, 0.0);
    if (!(fastest > 0.0)) {
        for (std::size_t z = 0; z < count; ++z) sum[z] = start[z] * spell.si;
        return sum;
    }
    // At most 16 events of the fastest rate on average in a stretch: the weights then span a range that rounding leaves alone.
    constexpr double most_events = 16.0;
    const double stretches = std::ceil(std::max(1.0, fastest * spell.si / most_events));
    const double stretch = spell.si / stretches;
    std::vector<double> state = start;
    for (double done = 0.0; done < stretches; done += 1.0) {
        const std::vector<double> part = short_integrals(zones, state, fastest, stretch);
        for (std::size_t to = 0; to < count; ++to) {
            double change = -zones.loss[to].si * part[to];
            for (std::size_t from = 0; from < count; ++from) change += zones.passing[to * count + from].si * part[from];
            state[to] = std::max(0.0, state[to] + change);
            sum[to] += part[to];
        }
    }
    return sum;
}

}
