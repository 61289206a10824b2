#pragma once

#include "mechanics/gravity.hpp"

#include <optional>

namespace flapdoor::mechanics {

using LengthDensity = Quantity<-2, 2, 1>;   ///< kg/m

/// Film that hangs from its upper edge, as a vertical section sees it: everything per meter of its length.
struct HangingSheet {
    Length top{};                           ///< height of the upper edge above the floor
    Length length{};                        ///< upper edge to hem; above 0
    LengthDensity film{};                   ///< has weight and inertia; above 0
    LengthDensity air{};                    ///< moved along with it: inertia without weight
    Length pressed_width{};                 ///< a pressure difference pushes on this width
    Loading drag{};                         ///< quadratic drag: force per meter of length = drag |v| v, v across the film
    Mass dowel{};                           ///< in the hem; 0 when it is missing
    std::optional<Length> foot_slack;       ///< hem held where it hangs, by film folded in that pays out this far; nothing: it hangs free
    int links = 12;                         ///< rigid pieces; 1 is a rigid pendulum
};

/// How the film of a flap door is usually made and how air acts on it.
/// Added mass of a flat plate that moves across itself, per length: (pi/4) rho W^2 (potential flow, long plate; memory).
LengthDensity air_moved(Length width, Density air);

/// 1/2 rho Cd W, the drag of a plate across the flow. A plate that swings a few of its widths drags more than one in a steady
/// stream (1.2): Cd = 8 KC^(-1/3), KC = 2 pi amplitude/width (Graham 1980; memory), about 4 for a sheet pushed aside.
Loading plate_drag(Length width, Density air);

/// A whole sheet that swings about its upper edge.
HangingSheet whole_sheet(Length top, Length length, Length width, Loading film, Mass dowel, Density air);

/// The two edges of a slit in a sheet that is held at both sides, as one: the film between each side and the slit moves as
/// a leaf that turns about its side, so that motion falls linearly from the slit to nothing. Such a leaf has 1/3 of the
/// inertia and weight, 1/2 of the pressure force and 1/4 of the quadratic drag of film that moves as a whole.
HangingSheet slit_edges(Length top, Length length, Length sheet_width, Loading film, Length slack, Density air);

}
