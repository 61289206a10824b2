#include "dust/clothing.hpp"

#include "core/insist.hpp"
#include "core/steady.hpp"

#include <algorithm>

namespace flapdoor::dust {

double clothing_gain(Stirring stirring, bool on_carpet, bool is_dirty, Time time)
{
    insist(time.si >= 0.0, "time runs forward");
    constexpr double walking = 0.0007;
    constexpr double carpet = 2.7;
    constexpr double dirty = 2.4;
    constexpr double vacuuming = 0.066 / (carpet * dirty);
    constexpr double working = 0.0027;   // geometric mean of the two
    const double in_20_min = stirring == Stirring::walking ? walking : (stirring == Stirring::working ? working : vacuuming);
    return std::min(1.0, in_20_min * (on_carpet ? carpet : 1.0) * (is_dirty ? dirty : 1.0) * (time / 20.0_min));
}

double clothing_loss(Time walking)
{
    insist(walking.si >= 0.0, "time runs forward");
    return 1.0 - steady::pow(1.0 - 0.47, walking / 1.0_h);
}

}
