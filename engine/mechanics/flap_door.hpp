#pragma once

#include "core/quantity.hpp"

#include <compare>

namespace flapdoor::mechanics {

/// How a flap door is made and hung: a slit sheet held in the frame, and a second sheet that hangs over it on the work
/// room's side, held at its upper edge only. Two doors that are equal here behave alike.
struct FlapDoor {
    Length width = 0.91_m;          ///< of the doorway, 0.5 to 3 m
    Length height = 2.03_m;         ///< of the doorway, 1.5 to 3 m
    Loading film{0.14};             ///< kg/m2; 6 mil polyethylene, 0.152 mm of 920 kg/m3
    Mass dowel = 0.25_kg;           ///< in the hem of the second sheet; 0 when it is missing
    int sheets = 2;                 ///< 1: the slit sheet alone
    bool is_taped = true;           ///< the slit sheet's sides and foot are held; otherwise its upper edge alone
    bool has_folds = true;          ///< slack is folded in at the slit sheet's head and foot
    Length hem_height = 7.5_cm;     ///< hem of the second sheet above the floor
    Length slit_length = 1.70_m;
    Length slit_foot = 0.15_m;      ///< lower end of the slit above the floor
    bool is_slit_through = false;   ///< the slit was cut through both sheets: the second one covers nothing of it

    friend auto operator<=>(const FlapDoor&, const FlapDoor&) = default;
};

}
