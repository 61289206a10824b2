#include "air/gusts.hpp"

#include "core/insist.hpp"
#include "core/steady.hpp"

#include <algorithm>

namespace flapdoor::air {

TwoWayFlow gust_flow(const Leak& leak, Pressure mean, Pressure rms)
{
    insist(rms.si >= 0.0, "a spread is not negative");
    constexpr int intervals = 800;
    constexpr double reach = 8.0;
    constexpr double step = 2.0 * reach / intervals;

    TwoWayFlow sum;
    double weights = 0.0;
    for (int i = 0; i <= intervals; ++i) {
        const double z = -reach + step * i;
        const double weight = steady::exp(-0.5 * z * z);
        const AirFlow now = flow(leak, mean + rms * z);
        sum.out += std::max(now, AirFlow{}) * weight;
        sum.in += std::max(-now, AirFlow{}) * weight;
        weights += weight;
    }
    return {.out = sum.out / weights, .in = sum.in / weights};
}

}
