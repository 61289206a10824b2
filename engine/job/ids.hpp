#pragma once

#include "core/id.hpp"

namespace flapdoor::job {

using ZoneId = Id<struct ZoneKind>;             ///< a body of air: bedroom, hall
using CarpetId = Id<struct CarpetKind>;         ///< a fitted carpet that leaves part of a floor bare
using OpeningId = Id<struct OpeningKind>;       ///< a door, window or register
using ObjectId = Id<struct ObjectKind>;         ///< furniture and fixed things that stand in a zone
using SillId = Id<struct SillKind>;
using CounterId = Id<struct CounterKind>;
using ComponentId = Id<struct ComponentKind>;   ///< a painted part that is worked on
using PersonId = Id<struct PersonKind>;
using SupplyId = Id<struct SupplyKind>;
using BagId = Id<struct BagKind>;               ///< a waste bag; the plan names them as it fills them

}
