#include "dust/mopping.hpp"

#include "core/insist.hpp"
#include "core/steady.hpp"

#include <algorithm>

namespace flapdoor::dust {

Mopped mop(const Mopping& job)
{
    insist(job.removed >= 0.0 && job.removed <= 1.0 && job.into_water >= 0.0 && job.into_water <= 1.0, "a mop lifts and loses shares");
    insist(job.film.si > 0.0 && job.floor.si > 0.0 && job.water.si > 0.0, "mopping needs water, a film of it and a floor");
    const double x = job.film * job.floor / job.water;
    const double kept = -steady::expm1(-x) / x;   // share of what got into the water that is still there at the end
    const double into_water = job.removed * job.into_water;
    return {.floor = (1.0 - job.removed) + into_water * (1.0 - kept), .water = into_water * kept, .rinsed = job.removed - into_water};
}

double brought_back(Length film, Area area, Volume water)
{
    insist(water.si > 0.0, "a bucket holds water");
    return std::min(1.0, film * area / water);
}

Rate misting_rate(AirFlow clears, Volume room)
{
    insist(room.si > 0.0, "a room has a volume");
    return clears / room;
}

}
