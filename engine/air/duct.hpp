#pragma once

#include "core/quantity.hpp"

namespace flapdoor::air {

/// Share of the dust in a duct's air that settles on its level floor: 1 - exp(-v_s A/Q). It stays there: duct air at
/// 4-9 m/s lifts only 1e-10 to 4e-9 of it per second (Wang et al. 2012, abstract).
/// @param floor  level area of the duct run
/// @param air    above 0; insists
double duct_settled_share(Speed settling, Area floor, AirFlow air);

/// Flow into a residential return when it is open: usual, and its band (judgment).
inline constexpr AirFlow open_return{170.0 / 3600.0};
inline constexpr AirFlow open_return_least{100.0 / 3600.0};
inline constexpr AirFlow open_return_most{250.0 / 3600.0};

}
