#include "dust/wiping.hpp"

#include "core/insist.hpp"

#include <algorithm>

namespace flapdoor::dust {

Band fresh_wipe(Cloth cloth) { return cloth == Cloth::wet ? Band{0.9, 0.8, 0.97} : Band{0.8, 0.6, 0.95}; }

Mass face_capacity(Cloth cloth) { return cloth == Cloth::wet ? 2.0_g : 1.0_g; }

double wipe_share(Cloth cloth, SizeClass size, double fresh, Mass carried)
{
    insist(fresh >= 0.0 && fresh <= 1.0 && carried.si >= 0.0, "a face takes a share and carries what it took");
    if (cloth == Cloth::electrostatic_dry && size < SizeClass::um_2_5) return 0.0;
    return fresh * std::max(0.0, 1.0 - carried / face_capacity(cloth));
}

double wipe_bound_share(Cloth cloth, SurfaceKind surface) { return cloth == Cloth::wet ? surface_traits(surface).wet_bound : 0.0; }

}
