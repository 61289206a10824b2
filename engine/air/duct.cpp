#include "air/duct.hpp"

#include "core/insist.hpp"
#include "core/steady.hpp"

namespace flapdoor::air {

double duct_settled_share(Speed settling, Area floor, AirFlow air)
{
    insist(settling.si >= 0.0 && floor.si >= 0.0 && air.si > 0.0, "dust settles from air that moves");
    return -steady::expm1(-(settling * floor / air));
}

}
