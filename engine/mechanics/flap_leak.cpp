#include "mechanics/flap_leak.hpp"

#include "core/insist.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::mechanics {

namespace {

/// Between the pressures for which a sheet was settled, straight.
Area at(const std::vector<Lean>& leans, Area Lean::*hole, Pressure across)
{
    if (across >= leans.back().across) return leans.back().*hole;
    const auto above = std::find_if(leans.begin(), leans.end(), [&](const Lean& lean) { return lean.across > across; });
    const Lean& low = *std::prev(above);
    return low.*hole + (*above.*hole - low.*hole) * ((across - low.across) / (above->across - low.across));
}

double flow_square(Area hole, Pressure across) { return hole.si * hole.si * across.si; }

/// The one hole that passes at `whole` what slit and second sheet pass in a row.
Area in_a_row(const std::vector<Lean>& leans, double covered, Pressure whole)
{
    Pressure low{};
    Pressure high = whole;
    for (int i = 0; i < 50; ++i) {
        const Pressure on_second = (low + high) * 0.5;
        const double through_slit = flow_square(at(leans, &Lean::slit, whole - on_second) * covered, whole - on_second);
        (flow_square(at(leans, &Lean::beside_second, on_second), on_second) < through_slit ? low : high) = on_second;
    }
    const Pressure on_slit = whole - low;
    return at(leans, &Lean::slit, on_slit) * (covered * std::sqrt(std::max(0.0, on_slit / whole)));
}

}

Area leak_area(const FlapDoor& door, const std::vector<Lean>& leans, Pressure toward_room)
{
    insist(!leans.empty() && leans.front().across == Pressure{}, "a door was settled at rest first");
    const Pressure size{std::fabs(toward_room.si)};
    if (door.sheets < 2) return at(leans, &Lean::slit, size);
    const double bare = uncovered_share(door);
    const Area uncovered = at(leans, &Lean::slit, size) * bare;
    // A slit sheet that is not held is pushed about under the second one, whichever way the air pushes.
    const Area slit_under_cover = door.is_taped ? leans.front().slit : at(leans, &Lean::slit, size);
    const Area shut = slit_under_cover * ((1.0 - bare) * sealed_share(door));
    if (toward_room <= Pressure{}) return uncovered + shut;
    return uncovered + std::max(shut, in_a_row(leans, 1.0 - bare, toward_room));
}

}
