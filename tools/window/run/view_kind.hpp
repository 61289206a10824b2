#pragma once

namespace flapdoor::window {

/// The three ways to look at the dust.
enum class ViewKind : int {
    there,   ///< lead lying on each surface, as heat map
    seen,    ///< what an eye could see of it, as grain
    airborne ///< lead in the air: concentration of each zone, and the young clouds as points
};

}
