#pragma once

#include "site/site.hpp"

namespace flapdoor::site {

/// Goes out through the entrance: the flap swings, soles meet the tack pad, the passage floor takes what falls off.
/// @param is_carrying  a bag or a sheet in the arms moves more air
void leave(Site& site, Worker& who, bool is_carrying);

/// Comes in through the entrance.
void enter(Site& site, Worker& who, bool is_carrying);

/// Clothes and soles as they are on the way out: measures for the log.
void note_exit(Site& site, const Worker& who);

}
