#pragma once

namespace flapdoor::dust {

/// Drag coefficient of a sphere, the standard curve in three pieces (Re up to 20, 260, 1500).
/// Source: Clift, Grace & Weber 1978, ch. 5 (from memory); checked against measured points in tests/published.
/// @param reynolds  above 0, at most 1500; insists
double drag_coefficient(double reynolds);

/// The short form 24/Re (1 + 0.15 Re^0.687) of Schiller & Naumann 1933 (from memory), for comparison: within 2 % of the
/// curve above in settling speed up to 200 um.
/// @param reynolds  above 0, at most 800; insists
double drag_coefficient_schiller_naumann(double reynolds);

}
