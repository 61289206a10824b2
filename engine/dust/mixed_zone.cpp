#include "dust/mixed_zone.hpp"

#include "core/insist.hpp"
#include "core/steady.hpp"

#include <algorithm>

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

}
