#pragma once

#include "core/quantity.hpp"
#include "plan/rect.hpp"

namespace flapdoor::rules {

/// How far floor sheeting reaches beyond what is worked on, at least. Source: 40 CFR 745.85(a)(2)(i)(D).
inline constexpr Length least_reach = 6.0_ft;

/// The rectangle of floor sheeting that always suffices: the outline of what is worked on grown by the reach on every side,
/// up to the walls, or up to a sealed barrier from floor to ceiling. The text asks for no corner farther than the reach, so
/// sheeting with rounded corners would do with less.
/// @param worked  outline on the plan; a window is a line in its wall
/// @param up_to   the floor between walls and barriers
plan::Rect least_sheeting(const plan::Rect& worked, const plan::Rect& up_to);

/// Does sheeting of that reach, measured on the plan, suffice on a side on which the floor ends after `floor`?
bool is_reach_enough(Length reach, Length floor);

}
