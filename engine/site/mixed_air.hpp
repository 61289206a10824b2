#pragma once

#include "site/site.hpp"

namespace flapdoor::site {

/// The well-mixed dust of all zones through a spell: it settles, goes to the work room's walls and rides with the air from
/// zone to zone. Exact for rates that hold through the spell, to a picogram for each way out of a zone.
void move_mixed(Site& site, Time spell);

/// Shares out among the cells and wall panels what the mixed air has let go, once there is enough of a class to tell. Cell by
/// cell it costs more than the balance, so it is done once a minute.
void share_out(Site& site);

}
